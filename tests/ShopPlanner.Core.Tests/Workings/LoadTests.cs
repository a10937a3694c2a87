using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Screws, walls and seats beside the Wood Handbook, the design specification and statics.</summary>
public sealed class LoadTests
{
    // Wood Handbook: allowable 2,850 G² D for each inch, ultimate 15,700 G² D L; gravity, gauge, thread.
    [
        Theory,
        InlineData(0.35, 6, "1", 265.4, 48.2),
        InlineData(0.42, 8, "1", 454.2, 82.4),
        InlineData(0.42, 10, "1 1/2", 789.3, 143.3),
        InlineData(0.50, 10, "1 1/4", 932.2, 169.2),
        InlineData(0.58, 8, "1", 866.2, 157.2),
        InlineData(0.67, 12, "1 1/2", 2283.5, 414.5),
        InlineData(0.45, 10, "1", 603.9, 109.65)
    ]
    public void Screws_pulled_out(double gravity, int gauge, string thread, double ultimate, double allowable)
    {
        string[] given = [Text("gravity", gravity), $"gauge={gauge}", "thread=" + thread];
        Assert.Equal(allowable, Asked.Number("screw-holding", "One screw, pulled out", given), 0.06);
        Assert.Equal(ultimate, Asked.Number("screw-holding", "One screw fails at about", given), 0.3);
    }

    // The smaller of the handbook's C × D² and of the yield equations, as an open engineering code gives them.
    [
        Theory,
        InlineData(0.42, 6, 48.0),
        InlineData(0.42, 8, 67.8),
        InlineData(0.42, 10, 83.7),
        InlineData(0.50, 6, 61.7),
        InlineData(0.50, 10, 106.3),
        InlineData(0.59, 6, 75.4)
    ]
    public void Screws_sideways_at_ten_diameters(double gravity, int gauge, double load)
    {
        var diameter = 0.060 + (0.013 * gauge);
        string[] given = [Text("gravity", gravity), $"gauge={gauge}", Text("thread", diameter * 10), "thickness=3/4"];
        Assert.Equal(load, Asked.Number("screw-holding", "One screw, sideways", given), 0.1);
    }

    [Theory, InlineData(6, 56.7), InlineData(8, 68.8), InlineData(10, 83.7)]
    public void No_screw_in_spruce_counts_more_than_the_yield_equations_give(int gauge, double load) =>
        Assert.True(
            Asked.Number("screw-holding", "One screw, sideways", "gravity=0.42", $"gauge={gauge}", "thread=3") <= load + 0.1
        );

    [Fact]
    public void More_screws_thread_and_denser_wood_never_hold_less_and_end_grain_holds_no_pull()
    {
        double Pull(params string[] given) => Asked.Number("screw-holding", "All screws, pulled out", given);
        double Side(params string[] given) => Asked.Number("screw-holding", "All screws, sideways", given);
        Assert.Equal(3 * Pull("count=1"), Pull("count=3"), 6);
        for (var sixteenths = 2; sixteenths < 40; sixteenths++)
            Assert.True(Side(Thread(sixteenths)) <= Side(Thread(sixteenths + 1)) + 1e-9);
        for (var gravity = 0.30; gravity < 0.80; gravity += 0.01)
            Assert.True(Side(Text("gravity", gravity)) <= Side(Text("gravity", gravity + 0.01)) + 1e-9);
        Assert.Equal(0, Pull("grain=end"));
        Assert.Contains(Asked.Answer("screw-holding", "grain=end").Verdicts, one => one.Severity == Severity.Fails);

        static string Thread(int sixteenths) => Text("thread", sixteenths / 16.0);
    }

    // Beams by statics: slat or plank, span, load; what it gives, and its stress. Stiffness and strength of the Wood Handbook
    // and a university's table.
    [
        Theory,
        InlineData("spruce-pine-fir", "3/4", "3 1/2", "38", 250, 1, 1.8005, 7238),
        InlineData("spruce-pine-fir", "3/4", "3 1/2", "19", 250, 1, 0.2251, 3619),
        InlineData("spruce-pine-fir", "1 1/2", "3 1/2", "38", 250, 1, 0.2251, 1810),
        InlineData("spruce-pine-fir", "1 1/2", "3 1/2", "60", 250, 1, 0.8859, 2857),
        InlineData("oak-red", "1", "2 1/2", "30", 250, 1, 0.3709, 4500),
        InlineData("spruce-pine-fir", "1 1/2", "11 1/4", "48", 250, 2, 0.1764, 711),
        InlineData("spruce-pine-fir", "1 1/2", "11 1/4", "60", 300, 2, 0.4134, 1067),
        InlineData("oak-red", "3/4", "11 1/4", "36", 250, 1, 0.3376, 2133)
    ]
    public void Slats_and_seats(
        string species,
        string thickness,
        string width,
        string span,
        int load,
        int people,
        double gives,
        double stress
    )
    {
        string[] given =
        [
            "species=" + species,
            "thickness=" + thickness,
            "width=" + width,
            "span=" + span,
            $"load={load} lb",
            $"people={people}",
        ];
        Assert.Equal(gives, Asked.Number("slats", "Gives in the middle by", given), gives * 0.006);
        Assert.Equal(stress, Asked.Number("slats", "Bending stress", given), stress * 0.001);
    }

    [Theory, InlineData("3/4", Severity.Fails), InlineData("1 1/2", Severity.Watch)]
    public void A_slat_over_38_in_that_could_break_is_never_called_right(string thickness, Severity severity) =>
        Assert.Equal(severity, Asked.Answer("slats", "span=38", "width=3 1/2", "thickness=" + thickness).Verdicts[0].Severity);

    [Fact]
    public void The_load_that_is_told_passes_when_it_is_entered_and_two_pounds_more_do_not()
    {
        var chance = new Random(11);
        for (var i = 0; i < 200; i++)
        {
            string[] given =
            [
                $"span={20 + chance.Next(50)}",
                $"width={2 + chance.Next(10)}",
                $"thickness={1 + (chance.Next(4) / 4.0)}",
                $"people={1 + chance.Next(4)}",
            ];
            var name = given[3] == "people=1" ? "Carries in the middle" : "Carries, for each person";
            var load = Asked.Number("slats", name, given);
            if (load is < 50 or > 998)
                continue;
            Assert.False(Breaks(load));
            Assert.True(Breaks(load + 2));

            bool Breaks(double pounds) =>
                Asked
                    .Answer("slats", [.. given, FormattableString.Invariant($"load={Math.Round(pounds)} lb")])
                    .Verdicts.Any(verdict => verdict.Severity == Severity.Fails);
        }
    }

    [Theory, InlineData("wall", "wall-fixing"), InlineData("slats", "people-load"), InlineData("screw-holding", "hanging-load")]
    public void Nothing_that_carries_is_told_without_its_caution(string form, string caution)
    {
        string[] given = form switch
        {
            "wall" => ["weight=30", "load=30", "width=36", "depth=10", "height=20"],
            "slats" => ["span=38", "width=3 1/2", "thickness=1"],
            _ => [],
        };
        Assert.Contains(Asked.Answer(form, given).Cautions, one => one.Id == caution);
    }

    [Fact]
    public void Cautions_of_single_tools_are_short_and_have_keys_of_their_own() =>
        Assert.Multiple(
            () =>
                Assert.Equal(
                    ShopCautions.All.Length + Cautions.All.Length,
                    ShopCautions.All.Concat(Cautions.All).Select(one => one.Id).Distinct().Count()
                ),
            () => Assert.All(ShopCautions.All, one => Assert.InRange(one.Text.Length, 60, 420)),
            () => Assert.All(ShopCautions.All, one => Assert.NotEmpty(one.Source.Text))
        );

    private static string Text(string key, double value) => key + "=" + value.ToString("0.####", CultureInfo.InvariantCulture);
}
