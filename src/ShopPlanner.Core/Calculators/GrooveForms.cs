using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Grooves.</summary>
internal static class GrooveForms
{
    public static readonly ImmutableArray<WorkingForm> All = [GrooveForm()];

    private const int ManySettings = 3;

    private static readonly Length Whisker = Length.FromInches(1m / 64);
    private static readonly Length ThinWall = Length.FromInches(0.125m);

    private static WorkingForm GrooveForm() =>
        new(
            "groove",
            "Centred groove and tongue",
            "Fence settings for a groove in the middle of an edge, and the tongue that fits it.",
            [
                new("stock", "Thickness of the piece", KeyKind.Length) { Most = "6 in" },
                new("groove", "Width of the groove, or of the blade that cuts it", KeyKind.Length)
                {
                    Optional = true,
                    Least = "1/64 in",
                    Most = "3 in",
                    Hint =
                        "Left out, the panel decides, or a third of the piece; where a panel is thicker than this, it is the "
                        + "blade",
                },
                new("panel", "Thickness of the panel", KeyKind.Length)
                {
                    Optional = true,
                    Least = "1/64 in",
                    Most = "3 in",
                    Hint = "As measured",
                },
                new("cutter", "Kerf of the blade", KeyKind.Length)
                {
                    Optional = true,
                    Least = "1/64 in",
                    Most = "3 in",
                    Hint = "Where it is narrower than the groove; left out, one blade or bit fills it",
                },
                new("depth", "Depth of the groove", KeyKind.Length)
                {
                    Optional = true,
                    Most = "3 in",
                    Hint = "As deep as wide where left out",
                },
                new("fit", "Room in the groove, in all", KeyKind.LengthOrZero)
                {
                    Default = "0.2 mm",
                    Most = "1/8 in",
                    Hint = "Common practice: what slides together by hand, about 0.008 in",
                },
                new("practice", "Practice pieces", KeyKind.Count)
                {
                    Default = "2",
                    Least = "0",
                    Most = "20",
                },
            ],
            reader =>
            {
                var asked = GrooveAsked.Read(reader);
                return () => Answer(asked, reader);
            }
        );

    private static FormOutcome Answer(GrooveAsked asked, FormReader reader)
    {
        if (Refused(asked, reader) is { } fault)
            return fault;
        var groove = CentredGroove.Of(asked.Stock, asked.Blade, asked.Width, asked.Fit);
        var practice = Working.Given("Practice pieces", asked.Practice, QuantityKind.Bare, 0);
        return new Answer([
            groove.Fence,
            asked.Width,
            groove.Passes,
            groove.Settings,
            groove.Reached,
            asked.Depth,
            groove.Tongue,
            groove.Cheek,
            Working.Of("Tongue length", asked.Depth.Value, "{depth}", Working.Geometry, ("depth", asked.Depth)),
            practice,
        ])
        {
            Verdicts = [.. Verdicts(asked, groove, reader.Unit).OrderByDescending(one => one.Severity)],
            Cautions = [Cautions.GrooveWithoutGuard, Cautions.SmallParts, Cautions.Guards],
            Parts =
                asked.Practice == 0
                    ? []
                    : [new("Practice piece", Length.FromInches(12), Length.FromInches(3), asked.Stock.Value, asked.Practice)],
        };
    }

    private static Fault? Refused(GrooveAsked asked, FormReader reader)
    {
        string Say(Length length) => LengthFormat.WithUnit(length, reader.Unit);
        var (stock, width) = (asked.Stock.Value, asked.Width.Value);
        return Check.First(
            reader,
            new(
                width >= stock,
                asked.WidthKey,
                $"makes a groove of {Say(width)}: less than the piece's {Say(stock)} is wanted, " + "best a third of it"
            ),
            new(asked.Blade.Value > width, "cutter", $"cuts wider than the groove: at most {Say(width)}"),
            new(asked.Fit.Value >= width, "fit", $"leaves no tongue: less than the groove's {Say(width)} is wanted")
        );
    }

    private static IEnumerable<Verdict> Verdicts(GrooveAsked asked, CentredGroove groove, LengthUnit unit)
    {
        string Say(Length length) => LengthFormat.WithUnit(length, unit);
        var (passes, settings) = ((int)groove.Passes.Value, groove.Settings.Value.Length);
        if (asked.Panel is { } panel && panel.Value > asked.Width.Value)
            yield return new(
                Severity.Watch,
                $"The panel does not go in: thin its edges to "
                    + $"{Say(asked.Width.Value - asked.Fit.Value)}, or make the groove wider."
            );
        else if (asked.Panel is { } snug && snug.Value + asked.Fit.Value > asked.Width.Value)
            yield return new(Severity.Watch, "The panel has hardly any room in the groove: try it in the practice piece first.");
        if (groove.Fence.Value < ThinWall || asked.Width.Value * 2 > asked.Stock.Value)
            yield return new(
                Severity.Watch,
                $"Walls of {Say(groove.Fence.Value)} split easily: a third of the piece for groove "
                    + "and each wall is best (Handwork in Wood)."
            );
        if (asked.Depth.Value * 2 > asked.Stock.Value * 3)
            yield return new(Severity.Watch, "The groove is deep for its piece: cut it in several heights of the blade.");
        if (passes > 1 && (asked.Blade.Value * (2 * settings)) - groove.Reached.Value < Whisker)
            yield return new(
                Severity.Watch,
                "The cuts only just meet: a whisker may stand in the middle. Clear it with one more " + "pass there."
            );
        if (settings > ManySettings)
            yield return new(Severity.Watch, $"{settings} settings are many: a wider cutter does it in fewer.");
        yield return passes == 1
            ? new(
                Severity.Fine,
                "One pass cuts the width. Turned end for end for a second one, the groove lies in the middle "
                    + "even where the fence is off, wider by twice that."
            )
            : new(
                Severity.Fine,
                "At each setting push the piece once with each face to the fence, turned end for end: the "
                    + "groove lies in the middle even where the fence is a little off, and only its width changes, by twice that: "
                    + $"{Say(Whisker)} off makes it {Say(Whisker * 2)} wider or narrower."
            );
        yield return new(
            Severity.Fine,
            "Set the fence on practice pieces of the same stock, groove in one, tongue on the other, "
                + "until they slide together by hand. "
                + $"Cut the groove about {Say(Whisker * 2)} deeper than the tongue is long, so that the shoulders close."
        );
    }
}

/// <summary>What is asked of a groove.</summary>
internal sealed record GrooveAsked(
    Working<Length> Stock,
    Working<Length> Width,
    string WidthKey,
    Working<Length> Blade,
    Working<Length>? Panel,
    Working<Length> Depth,
    Working<Length> Fit,
    int Practice
)
{
    public static GrooveAsked Read(FormReader reader)
    {
        var (stock, room) = (Working.Given("Piece", reader.Length("stock")), reader.Length("fit"));
        var fit = Working.Looked("Room", room, new FineLengthFigure(room), Working.AsGiven);
        var (groove, panel, cutter) = (reader.MaybeLength("groove"), reader.MaybeLength("panel"), reader.MaybeLength("cutter"));
        var thick = panel is { } p ? Working.Given("Panel", p) : null;
        var isBlade = cutter is null && groove < panel;
        var (width, key) = (groove, thick) switch
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
        return new(stock, width, key, blade, thick, depth, fit, reader.Count("practice"));
    }
}
