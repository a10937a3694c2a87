using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Pieces on a wall, beside the design specification and statics.</summary>
public sealed partial class WallTests
{
    // National Design Specification, Table 12.2A: lb for each inch of thread, by diameter of the lag and gravity.
    [
        Theory,
        InlineData("lag-1/4", "spf", 173),
        InlineData("lag-5/16", "spf", 205),
        InlineData("lag-3/8", "spf", 235),
        InlineData("lag-1/4", "df", 225),
        InlineData("lag-5/16", "df", 266),
        InlineData("lag-3/8", "df", 305),
        InlineData("lag-1/4", "unknown", 137),
        InlineData("lag-5/16", "unknown", 163),
        InlineData("lag-3/8", "unknown", 186)
    ]
    public void Lag_screws_pulled_out(string fixing, string stud, double perInch) =>
        Assert.Equal(perInch, Wall("One fastener, pulled out", "fixing=" + fixing, "stud=" + stud, "thread=2") / 2, 0.6);

    [Theory, InlineData("lag-3/8", "1 1/2", 352), InlineData("lag-1/4", "1 1/4", 217), InlineData("screw-10", "1 1/4", 119)]
    public void Fixings_in_a_spruce_stud(string fixing, string thread, double load) =>
        Assert.Equal(load, Wall("One fastener, pulled out", "fixing=" + fixing, "stud=spf", "thread=" + thread), 0.6);

    [
        Theory,
        InlineData("24", "16", 1),
        InlineData("30", "16", 1),
        InlineData("36", "16", 2),
        InlineData("48", "16", 3),
        InlineData("30", "24", 1),
        InlineData("48", "24", 2)
    ]
    public void Studs_behind_a_width_for_certain(string width, string spacing, int studs) =>
        Assert.Equal(studs, Wall("Studs behind it for certain", "width=" + width, "spacing=" + spacing));

    // Statics: 150 lb × 6 in ÷ 24 in.
    [Fact]
    public void Pull_at_the_top_fixings_statics() =>
        Assert.Equal(
            37.5,
            Asked.Number(
                "wall",
                "Pull at the top fasteners, total",
                "weight=50 lb",
                "load=100 lb",
                "width=36",
                "depth=12",
                "height=24"
            ),
            6
        );

    // By hand: the rule of one fixing for each of both loads, nine tenths of a design load; sideways by the equations below.
    [Theory, InlineData(0), InlineData(1), InlineData(2)]
    public void Fixings_share_weight_and_pull_at_nine_tenths_of_their_design_loads(int bottom)
    {
        string[] given = ["weight=100 lb", "load=200 lb", "width=8 ft", "depth=12", "height=30", "stud=spf", $"bottom={bottom}"];
        var (pull, sideways) = (2850 * 0.42 * 0.42 * 0.19 * 1.5, ByEquilibrium(0.42, 0.75, 0.5));
        var byHand = Enumerable
            .Range(2, 20)
            .First(top => (300 / ((top + (6 * bottom)) * sideways)) + (300 * 6 / 30.0 / (top * pull)) <= 0.9);
        Assert.Equal(byHand, Asked.Number("wall", "Fasteners in the top row, at least", given));
    }

    // Statics of a #10 screw (root 0.152 in, yield 80,000 psi) across a gap, without the program's closed forms: the load at
    // which the moment about the hinge in the stud is what the screw bends at.
    [Theory, InlineData("spf", 0.42), InlineData("df", 0.50), InlineData("unknown", 0.36)]
    public void Sideways_across_drywall_by_equilibrium(string stud, double gravity) =>
        Assert.Equal(ByEquilibrium(gravity, 0.75, 0.5), Wall("One fastener, sideways", "stud=" + stud, "thread=2"), 0.05);

    // The yield equations without a gap, as an open engineering code gives them for 3/4 in of near piece.
    [Theory, InlineData(0.42, 83.7), InlineData(0.50, 106.3)]
    public void Equilibrium_without_a_gap_gives_the_published_figures(double gravity, double load) =>
        Assert.Equal(load, ByEquilibrium(gravity, 0.75, 0), 0.1);

    [Fact]
    public void An_ordinary_kitchen_cabinet_on_two_studs_holds_and_is_told_so()
    {
        string[] cabinet = ["weight=50", "load=200", "width=30", "depth=12", "height=29", "studs=2", "thread=2"];
        var held = Asked.Answer("wall", [.. cabinet, "rows=2", "bottom=2"]);
        Assert.Equal(Severity.Fine, held.Verdicts[0].Severity);
        Assert.Contains("It holds", held.Verdicts[0].Text, StringComparison.Ordinal);
        Assert.Equal(Severity.Fails, Asked.Answer("wall", cabinet).Verdicts[0].Severity);
    }

    [Fact]
    public void Where_one_stud_is_certain_and_two_would_hold_it_says_to_look_for_them()
    {
        string[] shelf = ["weight=10", "load=40", "width=24", "depth=8", "height=12"];
        var first = Asked.Answer("wall", shelf).Verdicts[0];
        Assert.Equal(Severity.Watch, first.Severity);
        Assert.Contains("if you find 2", first.Text, StringComparison.Ordinal);
        Assert.Equal(Severity.Fine, Asked.Answer("wall", [.. shelf, "studs=2"]).Verdicts[0].Severity);
        Assert.Equal(Severity.Fails, Asked.Answer("wall", [.. shelf, "studs=1"]).Verdicts[0].Severity);
    }

    // Every way that is told is entered again; the load is entered, and a tenth more of it is too much.
    [Fact]
    public void What_is_told_to_make_it_hold_does()
    {
        var chance = new Random(7);
        var tried = 0;
        for (var i = 0; i < 300; i++)
        {
            string[] given =
            [
                $"width={24 + chance.Next(60)}",
                $"depth={6 + chance.Next(10)}",
                $"height={10 + chance.Next(30)}",
                $"thread={chance.Next(12, 20) / 8.0}",
                $"fixing={(chance.Next(2) == 0 ? "screw-10" : "screw-12")}",
            ];
            string[] loads = [$"weight={20 + chance.Next(60)}", $"load={chance.Next(300)}"];
            var says = Asked.Answer("wall", [.. given, .. loads]).Verdicts[0];
            if (says.Severity != Severity.Fails || Ways().Match(says.Text) is not { Success: true } ways)
                continue;
            foreach (var way in ways.Groups["ways"].Value.Split("; or "))
            {
                tried++;
                Assert.DoesNotContain(
                    Asked.Answer("wall", Entered(way, given, loads)).Verdicts,
                    one => one.Severity == Severity.Fails && one.Text.StartsWith("It needs", StringComparison.Ordinal)
                );
            }
        }

        Assert.InRange(tried, 100, 2000);
    }

    [Fact]
    public void A_thread_too_short_to_count_is_refused_and_the_one_told_is_taken()
    {
        foreach (var (fixing, least) in new[] { ("screw-10", 1.14), ("lag-3/8", 1.5) })
        {
            string[] given = ["weight=30", "load=30", "width=36", "depth=10", "height=20", "fixing=" + fixing];
            var fault = Assert.Single(Asked.Run("wall", [.. given, "thread=1 1/16"]).Faults);
            Assert.Equal("thread", fault.Field);
            var told = Asked.Inch(fault.Message.Split("at least ")[1].TrimEnd('.'));
            Assert.InRange((double)told.ToInches(), least, least + (1 / 64.0));
            Assert.NotNull(Asked.Run("wall", [.. given, "thread=" + LengthFormat.Exact(told, LengthUnit.Inch)]).Answer);
        }
    }

    [Fact]
    public void A_heavy_cabinet_on_one_stud_is_never_called_right()
    {
        foreach (var fixing in new[] { "screw-10", "lag-1/4", "lag-3/8" })
            Assert.Contains(
                Asked.Answer("wall", "weight=60", "load=200", "width=24", "depth=12", "height=28", "fixing=" + fixing).Verdicts,
                verdict => verdict.Severity == Severity.Fails
            );
    }

    [Fact]
    public void Anchors_need_their_makers_figure()
    {
        string[] given = ["weight=10", "load=20", "width=24", "depth=10", "height=10", "fixing=anchor"];
        Assert.Equal("each", Assert.Single(Asked.Run("wall", given).Faults).Field);
        Assert.Equal(3, Asked.Number("wall", "Fasteners in the top row, at least", [.. given, "each=15 lb"]));
    }

    private static double Wall(string result, params string[] more)
    {
        string[] usual = ["weight=30 lb", "load=30 lb", "depth=10", "height=20"];
        return Asked.Number(
            "wall",
            result,
            more.Any(one => one.StartsWith("width", StringComparison.Ordinal))
                ? [.. usual, .. more]
                : [.. usual, "width=36", .. more]
        );
    }

    private static string[] Entered(string way, string[] given, string[] loads)
    {
        string[] With(string key, string value) =>
            [.. given.Where(one => !one.StartsWith(key + "=", StringComparison.Ordinal)), .. loads, $"{key}={value}"];
        var number = way.Split(' ')[0];
        return way switch
        {
            _ when way.StartsWith("2 studs and ", StringComparison.Ordinal) =>
            [
                .. With("studs", "2"),
                $"rows={way.Split(' ')[3]}",
                $"bottom={way.Split(' ')[3]}",
            ],
            _ when way.Contains("both at the top", StringComparison.Ordinal) => [.. With("rows", number), $"bottom={number}"],
            _ when way.EndsWith("at the top", StringComparison.Ordinal) => With("rows", number),
            _ when way.EndsWith("along the bottom", StringComparison.Ordinal) => With("bottom", number),
            _ when way.Contains("studs, with a cleat", StringComparison.Ordinal) => With("studs", number),
            _ when way.EndsWith("of thread in each stud", StringComparison.Ordinal) => With("thread", way.Split('″')[0]),
            _ => [.. given, $"weight={way.Split(' ')[2]}", "load=0"],
        };
    }

    // Near piece of the same wood; the screw turns in it and bends once in the stud, or bends in both: the smaller.
    private static double ByEquilibrium(double gravity, double near, double gap)
    {
        var (line, bends) = (16_600 * Math.Pow(gravity, 1.84) * 0.152, 80_000 * Math.Pow(0.152, 3) / 6);
        double Turned(double load)
        {
            var (deep, ahead) = (load / line, (near + (load / line)) / 2);
            var behind = near - ahead;
            return (line * ahead * (deep + gap + (ahead / 2)))
                - (line * behind * (deep + gap + ahead + (behind / 2)))
                - (line * deep * deep / 2)
                - bends;
        }

        // Two hinges: the load times the distance of both is what both bend at.
        double Bent(double load) => (load * (gap + (load / line))) - (2 * bends);
        return Math.Min(Solve(Turned, line * near), Solve(Bent, line * 4)) / 2.2;
    }

    private static double Solve(Func<double, double> rises, double high)
    {
        var (low, top) = (0.0, high);
        for (var i = 0; i < 100; i++)
            (low, top) = rises((low + top) / 2) < 0 ? ((low + top) / 2, top) : (low, (low + top) / 2);
        return low;
    }

    [GeneratedRegex(@"It holds with (?<ways>.+)\.$", RegexOptions.ExplicitCapture)]
    private static partial Regex Ways();
}
