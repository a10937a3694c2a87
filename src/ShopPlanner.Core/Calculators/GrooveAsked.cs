using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a groove.</summary>
internal sealed record GrooveAsked(
    LengthUnit Unit,
    Working<Length> Stock,
    Working<Length> Width,
    string WidthKey,
    Working<Length> Blade,
    Working<Length>? Panel,
    Working<Length> Depth,
    Working<Length> Fit,
    int Practice
) : Question(Unit)
{
    public static GrooveAsked Read(FormReader reader)
    {
        var (stock, room) = (reader.Given("Piece", "stock"), reader.Length("fit"));
        var fit = Working.Looked("Clearance", room, new FineLengthFigure(room), Working.AsGiven);
        var groove = reader.MaybeLength("groove");
        var (panel, cutter) = (reader.MaybeGiven("Panel", "panel"), reader.MaybeLength("cutter"));
        var isBlade = cutter is null && groove < panel?.Value;
        var (width, key) = (groove, panel) switch
        {
            ({ } wanted, _) when !isBlade => (Working.Given("Groove width", wanted), "groove"),
            (_, { } edge) => (CentredGroove.For(edge, fit), "panel"),
            _ => (CentredGroove.Usual(stock, reader.Unit), "stock"),
        };
        var blade = Working.Given("Blade", cutter ?? (isBlade ? groove!.Value : width.Value));
        var depth = reader.MaybeLength("depth") is { } deep
            ? Working.Given("Groove depth", deep)
            : Working.Of(
                "Groove depth",
                width.Value,
                "as deep as the {groove} is wide",
                CentredGroove.AsDeepAsWide,
                ("groove", width)
            );
        return new(reader.Unit, stock, width, key, blade, panel, depth, fit, reader.Count("practice"));
    }
}
