using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What stands on a shelf: in all, on each length of it, or on each area.</summary>
/// <param name="Value">In the metric unit of its kind.</param>
/// <param name="Kind">Mass, line load or area load.</param>
internal sealed record ShelfLoad(double Value, QuantityKind Kind)
{
    // Kilograms on a whole shelf.
    private const double Most = 5000;

    /// <summary>Reads a load. A bare number is asked about: it may be the load in all or of each foot, several times as much, and
    /// a guess could break a shelf.</summary>
    public static ShelfLoad Read(FormReader reader, Working<Length> span, Working<Length> depth)
    {
        var text = reader.Text("load") ?? "0";
        if (QuantityText.TryNumber(text, out _))
            return Ask(reader, text);
        foreach (var kind in new[] { QuantityKind.Mass, QuantityKind.LineLoad, QuantityKind.AreaLoad })
            if (QuantityText.Read(text, kind, reader.Unit) is { } value)
                return Within(reader, new(value, kind), span, depth);
        reader.Refuse(
            "load",
            "is not a load: write a total like 75 lb or 34 kg, a load per length like 25 lb/ft or 37 kg/m, or one per area like "
                + "40 lb/ft² or 195 kg/m²"
        );
        return None;
    }

    /// <summary>The load on a shelf of this span and depth, kg.</summary>
    public Working<double> On(Working<Length> span, Working<Length> depth)
    {
        if (Kind == QuantityKind.Mass)
            return Working.Given("Load", Value, Kind, 0);
        var each = Working.Given(Kind == QuantityKind.LineLoad ? "Load per length" : "Load per area", Value, Kind, 0);
        return Kind == QuantityKind.LineLoad
            ? Total(Value * Metres(span.Value), "{each} × {span}", ("each", each), ("span", span))
            : Total(
                Value * Metres(span.Value) * Metres(depth.Value),
                "{each} × {span} × {depth}",
                ("each", each),
                ("span", span),
                ("depth", depth)
            );
    }

    private static ShelfLoad None => new(0, QuantityKind.Mass);

    private static Working<double> Total(double kg, string template, params (string, Working)[] inputs) =>
        Working.Of("Load", kg, QuantityKind.Mass, 0, template, Working.Geometry, inputs);

    private static ShelfLoad Ask(FormReader reader, string text)
    {
        var (each, total) = (QuantityKind.LineLoad.Name(reader.Unit), QuantityKind.Mass.Name(reader.Unit));
        var foot = reader.Unit == LengthUnit.Inch ? "foot" : "meter";
        reader.Refuse("load", $"could be {text} {each} (each {foot} of shelf) or {text} {total} (the whole shelf): add the unit");
        return None;
    }

    private static ShelfLoad Within(FormReader reader, ShelfLoad load, Working<Length> span, Working<Length> depth)
    {
        if (load.On(span, depth).Value is <= 0 or > Most)
            reader.Refuse("load", "is out of range: more than 0, at most 11,000 lb (5,000 kg)");
        return load;
    }

    private static double Metres(Length length) => (double)length.ToMillimetres() / 1000;
}
