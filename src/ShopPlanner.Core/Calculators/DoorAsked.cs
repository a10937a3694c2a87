using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a door.</summary>
internal sealed record DoorAsked(
    LengthUnit Unit,
    Working<Length> Width,
    Working<Length> Height,
    int Leaves,
    bool IsOverlay,
    Working<Length> Gap,
    Working<Length>? Middle,
    Working<Length> Overlay,
    Working<Length> Stile,
    Working<Length>? OwnRail,
    Working<Length> Groove,
    Length Panel,
    Working<Length> Across,
    Working<Length> Along,
    Working<Length> Oversize,
    Length Thickness,
    string? Species,
    double BuiltAt,
    double Dampest,
    double Driest,
    Working<Length> Shim
) : Question(Unit)
{
    /// <summary>Width of a rail: as the stiles where none is given.</summary>
    public Working<Length> Rail => OwnRail ?? Working.Given("Rail", Stile.Value);

    /// <summary>The narrower of stile and rail.</summary>
    public Length Narrowest => Length.Min(Stile.Value, Rail.Value);

    /// <summary>Size of a leaf.</summary>
    public DoorSizes Door =>
        field ??= IsOverlay
            ? DoorSizes.Overlay(Width, Height, Leaves, Overlay, Gap, Middle)
            : DoorSizes.Inset(Width, Height, Leaves, Gap, Middle);

    public static DoorAsked Read(FormReader reader)
    {
        var (stile, across) = (reader.Given("Stile", "stile"), reader.Given("Clearance at each side", "clearance"));
        var along = reader.MaybeLength("clearance-along") ?? Length.FromTicks(across.Value.Ticks / 2);
        return new(
            reader.Unit,
            reader.Given("Opening width", "opening-width"),
            reader.Given("Opening height", "opening-height"),
            reader.Count("leaves"),
            reader.Choice("fit") == "overlay",
            reader.Given("Gap", "gap"),
            reader.MaybeGiven("Middle gap", "middle"),
            reader.Given("Overlay", "overlay"),
            stile,
            reader.MaybeGiven("Rail", "rail"),
            reader.Given("Groove", "groove"),
            reader.Length("panel"),
            across,
            Working.Given("Clearance above and below", along),
            reader.Given("Oversize", "oversize"),
            reader.Length("thickness"),
            reader.MaybeChoice("species"),
            reader.Number("built-at"),
            reader.Number("dampest"),
            reader.Number("driest"),
            Fine("Card", reader.Length("shim"))
        );
    }

    // A card is thinner than a rule shows.
    private static Working<Length> Fine(string name, Length length) =>
        Working.Looked(name, length, new FineLengthFigure(length), Working.AsGiven);
}
