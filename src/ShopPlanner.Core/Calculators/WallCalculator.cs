using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Pieces that hang on a wall.</summary>
internal static class WallCalculator
{
    private const string Anchor = "anchor";

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Quantity("weight", "Weight of the piece", QuantityKind.Mass, null, "1 lb", "500 lb"),
        Key.Quantity("load", "What goes in it, at most", QuantityKind.Mass, null, "0 lb", "1000 lb")
            .Hint("A full kitchen wall cabinet weighs 250 to 300 lb (115 to 135 kg) in total"),
        Key.Length("width", "Width", least: "2 in", most: "20 ft"),
        Key.Length("depth", "Depth, out from the wall", most: "4 ft"),
        Key.Length("height", "From the top fasteners to the bottom edge", least: "1 in", most: "8 ft")
            .Hint("A shelf on a cleat: the height of its cleat or bracket"),
        Key.Choice(
            "fixing",
            "Fasteners",
            "screw-10",
            [.. WallFixings.Fixings.Select(one => new FormChoice(one.Word, one.Name)), new(Anchor, "anchors, not in studs")]
        ),
        Key.Quantity("each", "Working load of one anchor", QuantityKind.Mass, null, "1 lb", "2000 lb")
            .Optional()
            .Hint("The anchor maker's figure for your wall, not its breaking load"),
        Key.Choice("spacing", "Studs apart", "16", new("16", "16 in"), new("24", "24 in")),
        Key.Choice(
            "stud",
            "Studs of",
            "unknown",
            new("unknown", "not known, the lightest"),
            new("spf", "spruce-pine-fir"),
            new("df", "Douglas-fir")
        ),
        Key.Length("thread", "Thread in the stud", "1 1/2 in", "1/4 in", "6 in")
            .Hint("Without the tip, and behind the piece and the drywall"),
        Key.Count("rows", "Fasteners in each stud, at the top", "1", "1", "3"),
    ];

    private static readonly ImmutableArray<Refusal<WallAsked>> Refusals =
    [
        new(
            "each",
            asked => asked is { IsAnchor: true, Each: null },
            "is missing: the anchor maker's working load for your wall"
        ),
    ];

    private static readonly ImmutableArray<Remark<WallMade>> Verdicts =
    [
        new(
            Fails,
            made => made.Reached is { } reached && reached < made.Needed.Value,
            made =>
                "The studs behind it take "
                + $"{made.Reached:0} {(made.Reached == 1 ? "fastener" : "fasteners")} for certain and it needs "
                + $"{made.Needed.Value:0}. Screw a cleat across more studs "
                + "first and hang the piece on it, use stronger fasteners, or "
                + "hang less."
        ),
        new(
            Fails,
            made => made is { Reached: not null, Studs.Value: < 2 },
            "A piece on one stud swings on it. Hang it on a cleat that reaches two, or use anchors made for the wall as well."
        ),
        new(
            Watch,
            made => !made.Asked.IsAnchor && made.Asked.Thread.Value < LeastThread,
            made => $"Use longer screws: at least {made.Asked.Say(LeastThread)} of thread belongs in the stud."
        ),
        new(
            Watch,
            made => made.Asked.Rows > 1,
            "Keep fasteners in one stud at least 3 in (75 mm) apart, and not "
                + "above each other on one line of grain, or the stud splits."
        ),
        new(
            Watch,
            made => made.Asked.IsAnchor,
            "Drywall alone carries no cabinet. Only the anchor maker's own "
                + "figure for your wall counts, and an old or damp wall holds "
                + "less."
        ),
        new(
            Watch,
            "Pilot holes belong in the middle of each stud. Put fasteners along the bottom too: they keep the piece from "
                + "lifting. Nobody may climb or hang on it."
        ),
    ];

    private static Length LeastThread => Length.FromInches(1.5m);

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<WallAsked, WallMade>(
        "wall",
        "Hang it on a wall",
        "How many fasteners a cabinet or shelf needs in the wall, and whether the studs behind it are enough."
    )
    {
        Keys = Keys,
        Read = WallAsked.Read,
        Refusals = Refusals,
        Make = asked => new(asked),
        Results = made => made.Figures,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [Cautions.WallFixing, ShopCautions.HangingLoad],
    }.Form;

    private sealed record WallAsked(
        LengthUnit Unit,
        Working<double> Load,
        Working<Length> Width,
        Working<Length> Depth,
        Working<Length> Height,
        StudFixing? Fixing,
        Working<double>? Each,
        Working<Length> Spacing,
        Working<double> Gravity,
        Working<Length> Thread,
        int Rows
    ) : Question(Unit)
    {
        private static readonly SourceNote Lightest = new(
            "National Design Specification, Table 12.3.3A, eastern white pine and western woods, as quoted in open code",
            Certainty.Quoted
        );

        public bool IsAnchor => Fixing is null;

        public static WallAsked Read(FormReader reader)
        {
            var (weight, load) = (reader.GivenQuantity("Piece", "weight", 0), reader.GivenQuantity("Contents", "load", 0));
            var fixing = reader.Choice("fixing");
            return new(
                reader.Unit,
                Working.Of(
                    "Load on the wall",
                    weight.Value + load.Value,
                    QuantityKind.Mass,
                    0,
                    "{weight} + {load}",
                    Working.Geometry,
                    ("weight", weight),
                    ("load", load)
                ),
                reader.Given("Width", "width"),
                reader.Given("Depth", "depth"),
                reader.Given("Height", "height"),
                WallFixings.Fixings.FirstOrDefault(one => one.Word == fixing),
                reader.MaybeGivenQuantity("Working load of one anchor", "each", 0),
                Working.Given("Studs apart", Length.FromInches(reader.Choice("spacing") == "24" ? 24 : 16)),
                GravityOf(reader.Choice("stud")),
                reader.Given("Thread in the stud", "thread"),
                reader.Count("rows")
            );
        }

        private static Working<double> GravityOf(string stud)
        {
            var value = stud switch
            {
                "spf" => 0.42,
                "df" => 0.50,
                _ => 0.36,
            };
            return Working.Looked("Specific gravity of the studs", value, QuantityKind.Bare, 2, Lightest);
        }
    }

    private sealed record WallMade(WallAsked Asked)
    {
        public Working<double> Studs => WallFixings.Studs(Asked.Width, Asked.Spacing);

        // Fixings that find a stud; null for anchors, which need none.
        public double? Reached => Asked.IsAnchor ? null : Studs.Value * Asked.Rows;

        public Working<double> Needed =>
            Asked.Fixing is { } fixing
                ? WallFixings.Count(
                    Asked.Load,
                    Pull,
                    WallFixings.Shear(fixing),
                    WallFixings.Withdrawal(fixing, Asked.Gravity, Asked.Thread)
                )
                : WallFixings.Anchors(Asked.Load, Pull, Asked.Each!);

        public IEnumerable<Working?> Figures =>
            [
                Needed,
                Asked.IsAnchor ? null : Studs,
                Asked.Load,
                Pull,
                Asked.Fixing is { } lag ? WallFixings.Withdrawal(lag, Asked.Gravity, Asked.Thread) : null,
                Asked.Fixing is { } side ? WallFixings.Shear(side) : null,
            ];

        private Working<double> Pull => WallFixings.Pull(Asked.Load, Asked.Depth, Asked.Height);
    }
}
