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
            .Hint("A full kitchen wall cabinet weighs 250 to 300 lb (115 to 135 kg) in all"),
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
        Key.Count("studs", "Studs you found behind it", least: "1", most: "12")
            .Optional()
            .Hint("Blank = only those that lie behind it wherever it hangs"),
        Key.Choice(
            "stud",
            "Studs of",
            "unknown",
            new("unknown", "not known, the lightest"),
            new("spf", "spruce-pine-fir"),
            new("df", "Douglas fir")
        ),
        Key.Length("thread", "Thread in the stud", "1 1/2 in", "1/4 in", "6 in")
            .Hint("Without the tip, and behind the piece and the drywall"),
        Key.Count("rows", "Fasteners in each stud, at the top", "1", "1", "3"),
        Key.Count("bottom", "Fasteners in each stud, along the bottom", "1", "0", "3").Hint("A shelf on a cleat has none: 0"),
    ];

    private static readonly ImmutableArray<Refusal<WallAsked>> Refusals =
    [
        new(
            "each",
            asked => asked is { IsAnchor: true, Each: null },
            "is missing: the anchor maker's working load for your wall"
        ),
        new(
            "thread",
            asked => !asked.IsThreaded,
            asked =>
                "is too short to count: this fastener needs at least "
                + asked.Say(LengthSteps.ShownUp(WallFixings.LeastThread(asked.Fixing!), asked.Unit))
        ),
    ];

    private static readonly ImmutableArray<Remark<WallMade>> Verdicts =
    [
        new(
            Fails,
            made => IsTooWeak(made) && made.Reached < made.Needed.Value,
            made =>
                $"It needs {Count(made.Needed.Value, "fastener")} in the top row, and {Taken(made)}. "
                + (
                    made.Ways.Length > 0
                        ? $"It holds with {made.Ways}."
                        : "Hang less on this wall, or stand the piece on the floor."
                )
        ),
        new(
            Fails,
            made => IsTooWeak(made) && made.Asked.Found < 2,
            "A piece on one stud swings on it. Hang it on a cleat that reaches two, or use anchors made for the wall as well."
        ),
        new(
            Watch,
            made => made.HoldsIfFound,
            made =>
                $"Only {Count(made.Studs, "stud")} is certain behind this width, and it needs {made.Studs + 1}. Find the "
                + $"studs where "
                + $"it will hang: if you find {made.Studs + 1}, it holds. Enter how many you found."
        ),
        new(
            Watch,
            made => !made.Asked.IsAnchor && made.Asked.Thread.Value < LeastThread,
            made => $"Use longer screws: at least {made.Asked.Say(LeastThread)} of thread belongs in the stud."
        ),
        new(
            Watch,
            made => made.Asked.IsAnchor,
            "Drywall alone carries no cabinet. Only the anchor maker's own figure for your wall counts, and an old or damp wall "
                + "holds less."
        ),
        new(
            Fine,
            made => made.Holds,
            made =>
                $"It holds: {made.Reached} fasteners in the top row"
                + (made.Asked.Bottom > 0 ? $" and {made.Studs * made.Asked.Bottom} along the bottom" : "")
                + ", none with more than its published design load."
        ),
        new(
            Fine,
            made => made.Asked.Top > 1 || made.Asked.Bottom > 1,
            "Keep fasteners in one stud at least 3 in (75 mm) apart, and not above each other on one line of grain, or "
                + "the stud splits."
        ),
        new(
            Fine,
            "Screw through a 3/4 in (19 mm) hanging rail or cleat, never through a thin back alone. Pilot holes belong in "
                + "the middle "
                + "of each stud. Nobody may climb or hang on it."
        ),
    ];

    private static Length LeastThread => Length.FromInches(1.5m);

    private static bool IsTooWeak(WallMade made) => made is { Asked.IsAnchor: false, Holds: false, HoldsIfFound: false };

    private static string Taken(WallMade made) =>
        made.Studs switch
        {
            0 => "no stud is certain behind it",
            1 => $"the one stud behind it takes {made.Reached}",
            _ => $"the {made.Studs} studs behind it take {made.Reached}",
        };

    private static string Count(double count, string of) => $"{count:0} {of}{(count == 1 ? "" : "s")}";

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
}
