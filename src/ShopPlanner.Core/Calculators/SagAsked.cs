using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a shelf.</summary>
internal sealed record SagAsked(
    Working<double> Elasticity,
    Strength? Material,
    Working<Length> Span,
    Working<Length> Depth,
    Working<Length> Thickness,
    Working<double> Load,
    Length Strip,
    Working<Length> StripThickness,
    bool IsFixed
)
{
    /// <summary>How many times stiffer an edge strip makes the shelf.</summary>
    public Working<double> Stiffer =>
        Strip.IsPositive
            ? Sag.EdgeStrip(Depth, Thickness, Working.Given("Strip height", Strip), StripThickness)
            : Working.Given("Edge strip", 1, QuantityKind.Bare, 0);

    public static SagAsked Read(FormReader reader)
    {
        var row = StrengthTable.Find(reader.Choice("species"))!;
        var given = reader.MaybeGivenQuantity("Modulus of elasticity", "modulus", 2);
        var (span, depth) = (reader.Given("Span", "span"), reader.Given("Depth", "depth"));
        return new(
            given ?? StrengthTable.Elasticity(row),
            given is null ? row : null,
            span,
            depth,
            reader.Given("Thickness", "thickness"),
            ReadLoad(reader, span.Value),
            reader.Length("edge-strip"),
            reader.Given("Strip thickness", "strip-thickness"),
            reader.Choice("support") == "fixed"
        );
    }

    private static Working<double> ReadLoad(FormReader reader, Length span)
    {
        var text = reader.Text("load") ?? "0";
        if (QuantityText.TryNumber(text, out _))
            return Ask(reader, text);
        if (QuantityText.Read(text, QuantityKind.Mass, reader.Unit) is { } total)
            return Within(reader, Working.Given("Load", total, QuantityKind.Mass, 0));
        if (QuantityText.Read(text, QuantityKind.LineLoad, reader.Unit) is { } each)
            return Within(reader, Total(each, span));
        reader.Refuse("load", "is not a load: write a total like 75 lb or 34 kg, or a load per length like 25 lb/ft or 37 kg/m");
        return None;
    }

    private static Working<double> None => Working.Given("Load", 0, QuantityKind.Mass, 0);

    // A bare number may be the load in all or of each foot, several times as much: a guess could break a shelf.
    private static Working<double> Ask(FormReader reader, string text)
    {
        var (each, total) = (QuantityKind.LineLoad.Name(reader.Unit), QuantityKind.Mass.Name(reader.Unit));
        var foot = reader.Unit == LengthUnit.Inch ? "foot" : "meter";
        reader.Refuse("load", $"could be {text} {each} (each {foot} of shelf) or {text} {total} (the whole shelf): add the unit");
        return None;
    }

    private static Working<double> Total(double each, Length span) =>
        Working.Of(
            "Load",
            each * (double)span.ToMillimetres() / 1000,
            QuantityKind.Mass,
            0,
            "{each} × {span}",
            Working.Geometry,
            ("each", Working.Given("Load per length", each, QuantityKind.LineLoad, 0)),
            ("span", Working.Given("Span", span))
        );

    private static Working<double> Within(FormReader reader, Working<double> load)
    {
        if (load.Value is <= 0 or > 5000)
            reader.Refuse("load", "is out of range: more than 0, at most 11,000 lb (5,000 kg)");
        return load;
    }
}
