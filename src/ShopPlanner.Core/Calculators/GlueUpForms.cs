using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Panels glued up from strips.</summary>
internal static class GlueUpForms
{
    public static readonly ImmutableArray<WorkingForm> All = [GlueUpForm()];

    private const int MostStrips = 40;
    private const int StripsAtOnce = 5;

    private static readonly Length WideStrip = Length.FromInches(6);

    private static WorkingForm GlueUpForm() =>
        new(
            "glue-up",
            "Glue-up",
            "Strips, clamps, pressure and glue for a wide panel.",
            [
                new("width", "Width of the panel", KeyKind.Length) { Most = "8 ft" },
                new("length", "Length of the panel", KeyKind.Length) { Most = "16 ft" },
                new("thickness", "Thickness", KeyKind.Length) { Default = "3/4 in", Most = "6 in" },
                new("board", "Usable width of a board", KeyKind.Length) { Default = "5 1/2 in", Most = "24 in" },
                new("joints", "Joints", KeyKind.Choice)
                {
                    Default = "butt",
                    Choices = [new("butt", "edge to edge"), new("tongue", "tongue and groove"), new("spline", "with a spline")],
                },
                new("species", "Wood", KeyKind.Choice) { Default = "softwood", Choices = Woods },
                new("jointing", "Jointed off each edge", KeyKind.LengthOrZero) { Default = "1/16 in", Most = "1 in" },
                new("tongue", "Length of a tongue, or of a spline in each strip", KeyKind.Length)
                {
                    Default = "1/4 in",
                    Most = "1 in",
                },
                new("caul", "Width of the cauls", KeyKind.LengthOrZero) { Default = "1 in", Most = "12 in" },
                new("oversize", "Left on length and width, to trim", KeyKind.LengthOrZero) { Default = "1/2 in", Most = "3 in" },
                new("clamps", "Clamps at hand", KeyKind.Count)
                {
                    Optional = true,
                    Least = "1",
                    Most = "200",
                },
                new("clamp-force", "What one clamp presses with", KeyKind.Quantity)
                {
                    Optional = true,
                    Quantity = QuantityKind.Force,
                    Least = "10 lbf",
                    Most = "10000 lbf",
                    Hint = "By its maker's sheet",
                },
                new("spread", "What the glue's label says it covers", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Coverage,
                    Default = "250 ft²/gal",
                    Least = "20 ft²/gal",
                    Most = "2000 ft²/gal",
                    Hint = "The default is common practice: the label wins",
                },
            ],
            reader =>
            {
                var asked = GlueUpAsked.Read(reader);
                return () => Answer(asked, reader);
            }
        );

    private static ImmutableArray<FormChoice> Woods =>
        [
            new("softwood", "any softwood"),
            new("hardwood", "any hardwood"),
            .. MaterialCatalogue.Species.Select(one => new FormChoice(one.Id, one.Name)),
        ];

    private static FormOutcome Answer(GlueUpAsked asked, FormReader reader)
    {
        if (Refused(asked, reader) is { } fault)
            return fault;
        var strips = GlueUp.Strips(asked.Width, asked.Board, asked.Lost);
        if (strips.Value > MostStrips)
            return Fault.Of(
                "board",
                reader.Text("board"),
                $"makes {strips.Value} strips: at most {MostStrips}, so a wider board is wanted"
            );
        var strip = GlueUp.StripWidth(asked.Width, strips, asked.Lost, reader.Unit, asked.Board.Value);
        var clamping = Clamping.Of(asked, strip);
        var glued = strips.Value == 1 ? [] : clamping.Results.AddRange(Glue(asked, strips));
        return new Answer([.. Sizes(asked, strips, strip), .. glued])
        {
            Verdicts = [.. GlueUpVerdicts.Of(asked, strips, strip, clamping, reader.Unit).OrderByDescending(one => one.Severity)],
            Cautions = Cautioned(asked, strip),
            Parts =
            [
                new("Panel strip", asked.Finished, strip.Value, asked.Thickness.Value, strips.Value)
                {
                    CutLongBy = asked.Oversize,
                    CutWideBy = asked.Jointing.Value * 2,
                },
            ],
        };
    }

    private static IEnumerable<Working> Sizes(GlueUpAsked asked, Working<int> strips, Working<Length> strip)
    {
        var glued = GlueUp.Glued(strip, strips, asked.Lost);
        var (jointing, panel) = (asked.Jointing, Working.Given("Width of the panel", asked.FinishedWidth));
        return
        [
            strips,
            strip,
            Working.Of(
                "Rip each strip at",
                strip.Value + (jointing.Value * 2),
                "{strip} + 2 × {jointing}",
                GlueUp.Jointing,
                ("strip", strip),
                ("jointing", jointing)
            ),
            glued,
            Working.Of(
                "Trimmed off the width",
                glued.Value - panel.Value,
                "{glued} − {panel}",
                Working.Geometry,
                ("glued", glued),
                ("panel", panel)
            ),
        ];
    }

    private static IEnumerable<Working> Glue(GlueUpAsked asked, Working<int> strips)
    {
        var area = GlueUp.GluedArea(strips, asked.Length, asked.Thickness, asked.Joint, asked.Tongue);
        return [area, GlueUp.Glue(area, asked.Spread)];
    }

    private static ImmutableArray<Caution> Cautioned(GlueUpAsked asked, Working<Length> strip) =>
        [
            Cautions.Guards,
            Cautions.TrappedCutoff,
            .. asked.Joint == EdgeJoint.Butt ? Array.Empty<Caution>() : [Cautions.GrooveWithoutGuard],
            .. strip.Value < Length.FromInches(3) ? new[] { Cautions.SmallParts } : [],
            Cautions.Dust,
        ];

    private static Fault? Refused(GlueUpAsked asked, FormReader reader)
    {
        string Say(Length length) => LengthFormat.WithUnit(length, reader.Unit);
        var least = asked.Lost.Value + (asked.Jointing.Value * 2);
        return Check.First(
            reader,
            new(asked.Board.Value <= asked.Lost.Value, "board", $"is all joint: more than {Say(least)} is wanted"),
            new(
                asked.Joint != EdgeJoint.Butt && asked.Tongue.Value * 2 >= asked.Board.Value,
                "tongue",
                $"is half the board or more: less than {Say(Length.FromTicks(asked.Board.Value.Ticks / 2))} is wanted"
            )
        );
    }

    /// <summary>Whether more strips than this are too many for the glue's open time, and which are too wide to lie
    /// still.</summary>
    internal static bool IsMuch(int strips) => strips > StripsAtOnce;

    internal static bool IsWide(Length strip) => strip > WideStrip;
}

/// <summary>What is asked of a glue-up.</summary>
internal sealed record GlueUpAsked(
    Length FinishedWidth,
    Length Finished,
    Length Oversize,
    Working<Length> Width,
    Working<Length> Length,
    Working<Length> Thickness,
    Working<Length> Board,
    EdgeJoint Joint,
    Working<Length> Tongue,
    Working<Length> Lost,
    Working<Length> Jointing,
    ClampPressure Pressure,
    Working<Length> Caul,
    int? Clamps,
    Working<double>? ClampForce,
    Working<double> Spread
)
{
    public static GlueUpAsked Read(FormReader reader)
    {
        var (width, length, oversize) = (reader.Length("width"), reader.Length("length"), reader.Length("oversize"));
        var joint = Enum.Parse<EdgeJoint>(reader.Choice("joints"), true);
        var (tongue, jointing) = (
            Working.Given("Tongue", reader.Length("tongue")),
            Working.Given("Jointing", reader.Length("jointing"))
        );
        var board = Working.Given("Board", reader.Length("board"));
        return new(
            width,
            length,
            oversize,
            With("Rough width", "Width", width, oversize),
            With("Rough length", "Length", length, oversize),
            Working.Given("Thickness", reader.Length("thickness")),
            Working.Of(
                "Jointed board",
                board.Value - (jointing.Value * 2),
                "{board} − 2 × {jointing}",
                GlueUp.Jointing,
                ("board", board),
                ("jointing", jointing)
            ),
            joint,
            tongue,
            joint == EdgeJoint.Tongue ? tongue : Working.Given("Joint", Measures.Length.Zero),
            jointing,
            Press(reader.Choice("species")),
            Working.Given("Caul", reader.Length("caul")),
            reader.MaybeCount("clamps"),
            reader.MaybeQuantity("clamp-force") is { } force
                ? Working.Given("Force of one clamp", force, QuantityKind.Force, 0)
                : null,
            Working.Given("Spread", reader.Quantity("spread"), QuantityKind.Coverage, 1)
        );
    }

    private static Working<Length> With(string name, string plain, Length finished, Length oversize) =>
        Working.Of(
            name,
            finished + oversize,
            "{finished} + {oversize}",
            Working.Geometry,
            ("finished", Working.Given(plain, finished)),
            ("oversize", Working.Given("Oversize", oversize))
        );

    private static ClampPressure Press(string species) =>
        species switch
        {
            "softwood" => ClampPressure.Softwood,
            "hardwood" => ClampPressure.Hardwood,
            _ => MaterialCatalogue.TryFindSpecies(species, out var wood)
                ? ClampPressure.For(wood.Kind, StrengthTable.Find(wood.Id)?.Gravity)
                : ClampPressure.Hardwood,
        };
}

/// <summary>The clamps of a glue-up.</summary>
internal sealed record Clamping(Working<double> Clamps, Working<double> Least, ImmutableArray<Working> Results)
{
    public static Clamping Of(GlueUpAsked asked, Working<Length> strip)
    {
        var spacing = GlueUp.Spacing(strip, asked.Caul);
        var clamps = GlueUp.Clamps(asked.Length, spacing);
        var total = GlueUp.Total(asked.Pressure.Least, asked.Length, asked.Thickness);
        if (asked.ClampForce is { } each && GlueUp.ClampsByForce(total, each) is { } strong && strong.Value > clamps.Value)
            clamps = strong;
        var (least, most) = (Force(asked.Pressure.Least, "least"), Force(asked.Pressure.Most, "most"));
        return new(
            clamps,
            least,
            [clamps, spacing, GlueUp.Places(asked.Length, clamps), asked.Pressure.Least, asked.Pressure.Most, total, least, most]
        );

        Working<double> Force(Working<double> pressure, string which)
        {
            var force = GlueUp.Force(pressure, asked.Length, asked.Thickness, clamps);
            return Working.Of(
                "Force of each clamp, " + which,
                force.Value,
                QuantityKind.Force,
                0,
                force.Template,
                force.Source,
                [.. force.Inputs.Select(input => (input.Key, input.Working))]
            );
        }
    }
}
