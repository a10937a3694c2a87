using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Stability;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a piece that stands.</summary>
/// <param name="Unit">Of what is told.</param>
/// <param name="Depth">Of the case.</param>
/// <param name="Toe">How far what touches the floor lies behind the front.</param>
/// <param name="Height">Of the piece.</param>
/// <param name="Weight">Of all of it, empty, kg.</param>
/// <param name="Doors">How many doors or drawers stand open.</param>
/// <param name="Reach">How far each reaches out; nothing where none is open.</param>
/// <param name="Each">Weight of one that stands open, kg.</param>
/// <param name="Leaning">Load at the end of the reach, kg.</param>
/// <param name="Sinks">How far the edge it tips over lies in from the base's own.</param>
internal sealed record StabilityAsked(
    LengthUnit Unit,
    Working<Length> Depth,
    Working<Length> Toe,
    Length Height,
    Working<double> Weight,
    Working<double> Doors,
    Working<Length> Reach,
    Working<double> Each,
    Working<double> Leaning,
    Working<Length> Sinks
) : Question(Unit)
{
    /// <summary>What stands open, kg.</summary>
    public Working<double> Open =>
        Working.Of(
            "Weight of what is open",
            Doors.Value * Each.Value,
            QuantityKind.Mass,
            0,
            "{doors} × {each}",
            Working.Geometry,
            ("doors", Doors),
            ("each", Each)
        );

    /// <summary>What stays closed, kg.</summary>
    public Working<double> Closed =>
        Working.Of(
            "Weight of the rest",
            Weight.Value - Open.Value,
            QuantityKind.Mass,
            0,
            "{weight} − {open}",
            Tipping.Statics,
            ("weight", Weight),
            ("open", Open)
        );

    /// <summary>Whether the rest's center of gravity, in the middle of the depth, lies behind the edge it tips over.</summary>
    public bool HasWeightBehind => Inset.Value * 2 < Depth.Value;

    private Working<Length> Inset =>
        Working.Of(
            "Edge behind the front",
            Toe.Value + Sinks.Value,
            "{toe} + {sinks}",
            Tipping.Statics,
            ("toe", Toe),
            ("sinks", Sinks)
        );

    /// <summary>Righting moment over tipping moment.</summary>
    public Working<double> Factor => Tipping.Factor(Depth, Closed, Reach, Open, Leaning, Inset);

    public static StabilityAsked Read(FormReader reader)
    {
        var (depth, doors) = (reader.Given("Depth", "depth"), reader.Count("doors"));
        var reach = reader.MaybeLength("reach") ?? depth.Value;
        // The width is drawn; nothing tips over its ends.
        _ = reader.Length("width");
        return new(
            reader.Unit,
            depth,
            reader.Given("Toe space", "toe"),
            reader.Length("height"),
            reader.GivenQuantity("Weight, empty", "weight", 0),
            Working.Given("Open at once", doors, QuantityKind.Bare, 0),
            Working.Given("Reach", doors > 0 ? reach : Length.Zero),
            reader.GivenQuantity("Weight of each that is open", "open-weight", 0),
            reader.GivenQuantity("Load leaning", "leaning", 0),
            Tipping.OnFloor(reader.Choice("floor") == "carpet")
        );
    }
}
