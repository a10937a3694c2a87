using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>How shelves bend.</summary>
internal static class ShelfForms
{
    public static readonly ImmutableArray<WorkingForm> All = [SagForm()];

    private static WorkingForm SagForm() =>
        new(
            "sag",
            "Sag of a shelf",
            "How much a shelf bends under its load, now and in years, against the usual limit.",
            [
                new("species", "Wood or sheet", KeyKind.Choice) { Default = "pine-eastern-white", Choices = WoodForms.Strong },
                new("modulus", "Or its modulus of elasticity", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Modulus,
                    Optional = true,
                    Least = "0.01 GPa",
                    Most = "100 GPa",
                    Hint = "In million psi or GPa, where you know it",
                },
                new("span", "Span between supports", KeyKind.Length) { Most = "20 ft" },
                new("depth", "Depth, front to back", KeyKind.Length) { Default = "11 1/4 in", Most = "5 ft" },
                new("thickness", "Thickness", KeyKind.Length)
                {
                    Default = "3/4 in",
                    Least = "1/16 in",
                    Most = "6 in",
                },
                new("load", "Load", KeyKind.Text)
                {
                    Default = "25 lb/ft",
                    Hint = "write a total, 75 lb or 34 kg, or for each length, 25 lb/ft or 37 kg/m",
                },
                new("support", "Ends", KeyKind.Choice)
                {
                    Default = "pinned",
                    Choices = [new("pinned", "resting on pins or cleats"), new("fixed", "clamped at both ends")],
                },
                new("edge-strip", "Height of an edge strip", KeyKind.LengthOrZero) { Default = "0", Most = "1 ft" },
                new("strip-thickness", "Thickness of the edge strip", KeyKind.Length) { Default = "3/4 in", Most = "3 in" },
            ],
            reader =>
            {
                var row = StrengthTable.Find(reader.Choice("species"))!;
                var elasticity = reader.MaybeQuantity("modulus") is { } gpa
                    ? Working.Given("Modulus of elasticity", gpa, QuantityKind.Modulus, 2)
                    : StrengthTable.Elasticity(row);
                var (span, depth, thickness) = (
                    Working.Given("Span", reader.Length("span")),
                    Working.Given("Depth", reader.Length("depth")),
                    Working.Given("Thickness", reader.Length("thickness"))
                );
                var load = Load(reader, span.Value);
                var (strip, stripThickness) = (
                    reader.Length("edge-strip"),
                    Working.Given("Strip thickness", reader.Length("strip-thickness"))
                );
                var isFixed = reader.Choice("support") == "fixed";
                return () =>
                {
                    var stiffer = strip.IsPositive
                        ? Sag.EdgeStrip(depth, thickness, Working.Given("Strip height", strip), stripThickness)
                        : Working.Given("Edge strip", 1, QuantityKind.Bare, 0);
                    return Bends(
                        Sag.Deflection(elasticity, span, depth, thickness, load, isFixed, stiffer),
                        span,
                        Sag.Creep(reader.Has("modulus") ? null : row)
                    );
                };
            }
        );

    private static Working<double> Load(FormReader reader, Length span)
    {
        var text = reader.Text("load") ?? "0";
        if (QuantityText.Read(text, QuantityKind.Mass, reader.Unit) is { } total)
            return Within(reader, Working.Given("Load", total, QuantityKind.Mass, 0));
        if (QuantityText.Read(text, QuantityKind.LineLoad, reader.Unit) is { } each)
            return Within(
                reader,
                Working.Of(
                    "Load",
                    each * (double)span.ToMillimetres() / 1000,
                    QuantityKind.Mass,
                    0,
                    "{each} × {span}",
                    Working.Geometry,
                    ("each", Working.Given("load for each length", each, QuantityKind.LineLoad, 0)),
                    ("span", Working.Given("Span", span))
                )
            );
        reader.Refuse("load", "is not a load: write a total, 75 lb or 34 kg, or for each length, 25 lb/ft or 37 kg/m");
        return Working.Given("Load", 0, QuantityKind.Mass, 0);
    }

    private static Working<double> Within(FormReader reader, Working<double> load)
    {
        if (load.Value is <= 0 or > 5000)
            reader.Refuse("load", "is outside what a shelf carries: more than 0 and at most 11,000 lb (5,000 kg)");
        return load;
    }

    private static FormOutcome Bends(Working<Length> first, Working<Length> span, Working<double> creep)
    {
        var years = Length.FromTicks((long)Math.Min(first.Value.Ticks * creep.Value, long.MaxValue / 4.0));
        var longTerm = Working.Of(
            "Deflection in years",
            years,
            new FineLengthFigure(years),
            "{first} × {creep}",
            creep.Source,
            ("first", first),
            ("creep", creep)
        ) with
        {
            OutsideRange = first.OutsideRange,
        };
        var limit = Working.Of(
            "Limit",
            Length.FromTicks(span.Value.Ticks / 144),
            new FineLengthFigure(Length.FromTicks(span.Value.Ticks / 144)),
            "{span} ÷ 144",
            Sag.Limit,
            ("span", span)
        );
        var foot = Length.FromTicks((long)(years.Ticks / Math.Max(1e-9, (double)span.Value.ToInches() / 12)));
        var perFoot = Working.Of(
            "For each foot, in years",
            foot,
            new FineLengthFigure(foot),
            "{years} ÷ {span} in feet",
            Working.Geometry,
            ("years", longTerm),
            ("span", span)
        );
        return new Answer([first, longTerm, perFoot, limit, Sag.LongestSpan(longTerm, span)])
        {
            Verdicts =
            [
                Judge(years, limit.Value, foot),
                new(Severity.Watch, "An estimate from averages of clear wood: knots, gaps and damp make it worse."),
            ],
            Cautions = [Cautions.ShelfLoad],
        };
    }

    private static Verdict Judge(Length years, Length limit, Length foot) =>
        years > limit
            ? new(
                Severity.Fails,
                "It bends more than the limit: a shorter span, a thicker shelf, an edge strip or a support in the middle."
            )
        : foot > Length.FromInches(0.02m)
            ? new(
                Severity.Watch,
                "It keeps to the limit, but the bend can be seen (more than 0.02 in for each foot; common practice)."
            )
        : new(Severity.Fine, "It keeps to the limit and looks straight.");
}
