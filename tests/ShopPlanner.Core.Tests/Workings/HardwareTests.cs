using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Screws, hinges, pins, spacing, dowels, coats and stability against published figures.</summary>
public sealed class HardwareTests
{
    [
        Theory,
        InlineData(4, 0.112),
        InlineData(6, 0.138),
        InlineData(8, 0.164),
        InlineData(10, 0.190),
        InlineData(12, 0.216),
        InlineData(14, 0.242)
    ]
    public void Screw_diameters_ASME_B18_6_1_as_quoted(int gauge, double inches) =>
        Assert.Equal(inches, (double)Gauge(gauge).Diameter.ToInches(), 0.0001);

    [
        Theory,
        InlineData(4, 2.84),
        InlineData(6, 3.51),
        InlineData(8, 4.17),
        InlineData(10, 4.83),
        InlineData(12, 5.49),
        InlineData(14, 6.15)
    ]
    public void Screw_diameters_in_millimetres(int gauge, double millimetres) =>
        Assert.Equal(millimetres, (double)Gauge(gauge).Diameter.ToMillimetres(), 0.0051);

    [Theory, InlineData(8, "7/64", "5/64"), InlineData(10, "1/8", "3/32")]
    public void Pilot_drills_an_old_shop_plate(int gauge, string hardwood, string softwood) =>
        Assert.Equal((Asked.Inch(hardwood), Asked.Inch(softwood)), (Gauge(gauge).PilotHardwood, Gauge(gauge).PilotSoftwood));

    [
        Theory,
        InlineData(4, "7/64"),
        InlineData(6, "9/64"),
        InlineData(8, "11/64"),
        InlineData(10, "3/16"),
        InlineData(12, "7/32"),
        InlineData(14, "1/4")
    ]
    public void Clearance_drills_a_screw_makers_table(int gauge, string drill) =>
        Assert.Equal(Asked.Inch(drill), Gauge(gauge).Clearance);

    [Fact]
    public void No_screw_is_ever_chosen_that_comes_within_an_eighth_of_the_far_face()
    {
        for (var near = 2; near <= 24; near++)
        for (var into = 2; into <= 32; into++)
        {
            var (choice, _) = ScrewChoice.Of(
                Working.Given("n", Length.FromInches(near / 16m)),
                Working.Given("i", Length.FromInches(into / 16m)),
                ScrewJoint.Face
            );
            Assert.True(choice is null || choice.Length.Value + Asked.Inch("1/8") <= Length.FromInches((near + into) / 16m));
        }
    }

    [Theory]
    [
        InlineData("screws", "into", "thickness=3/4", "into=1/4"),
        InlineData("screws", "into", "thickness=3/4", "into=1/2", "joint=pocket"),
        InlineData("screws", "thickness", "thickness=1/4", "into=2", "joint=pocket")
    ]
    [
        InlineData("hinges", "height", "height=20 ft", "width=12"),
        InlineData("hinges", "weight", "height=30", "width=12", "weight=-3 lb"),
        InlineData("spacing", "count", "span=10", "member=3", "count=4")
    ]
    [
        InlineData("spacing", "count", "span=10", "member=3"),
        InlineData("pins", "first", "height=10", "first=6"),
        InlineData("dowels", "thickness", "thickness=1/4", "width=3")
    ]
    [
        InlineData("coats", "area", "area=0"),
        InlineData("coats", "product", "area=20", "product=tar"),
        InlineData("moisture", "humidity", "humidity=130"),
        InlineData("moisture", "humidity", "humidity=NaN")
    ]
    [
        InlineData("movement", "to", "width=10", "to=90"),
        InlineData("sag", "load", "span=36", "load=many"),
        InlineData("sag", "load", "span=36", "load=0 lb"),
        InlineData("stability", "weight", "depth=12", "height=60", "weight=heavy")
    ]
    [
        InlineData("weight", "volume", "material=mdf"),
        InlineData("actual-size", "nominal", "nominal=banana"),
        InlineData("board-feet", "thickness", "thickness=13", "width=1", "length=1")
    ]
    public void What_cannot_be_is_refused_and_its_key_named(string form, string key, params string[] given)
    {
        var outcome = Asked.Run(form, given);
        Assert.Null(outcome.Answer);
        Assert.Contains(outcome.Faults, fault => fault.Field == key);
    }

    [Theory, InlineData("10 lb", 2), InlineData("20 lb", 3), InlineData("40 lb", 4), InlineData("50 lb", 5)]
    public void Hinges_by_weight_a_makers_sheet(string weight, int count) =>
        Assert.Equal(count, Asked.Number("hinges", "Hinges", "height=30", "width=15", "weight=" + weight));

    [Theory, InlineData("3", 20.5), InlineData("4", 21.5), InlineData("5", 22.5), InlineData("8", 25.5)]
    public void Cup_centres_a_hardware_makers_sheet(string edge, double centre) =>
        Assert.Equal(
            (decimal)centre,
            Asked.Length("hinges", "Cup center from the door's edge", "height=30", "width=15", $"edge={edge} mm").ToMillimetres(),
            3
        );

    [Fact]
    public void Five_drawer_fronts_of_157_mm_with_a_gap_of_3_mm_each_fill_800_mm_a_trade_article()
    {
        // The fifth gap lies above or below them all: between five fronts are four.
        var outcome = Asked.Run(LengthUnit.Millimetre, "spacing", "span=797", "member=157", "count=5", "ends=members");
        Assert.Equal(3, outcome.Answer!.Results[0].Figure.Number(LengthUnit.Millimetre)!.Value, 6);
    }

    [Fact]
    public void Members_and_gaps_fill_the_span_and_no_rounding_adds_up()
    {
        var chance = new Random(3);
        for (var i = 0; i < 300; i++)
        {
            var (span, member, count, ends) = (
                Length.FromTicks(chance.NextInt64(50_000, 900_000)),
                Length.FromTicks(chance.NextInt64(100, 4000)),
                2 + chance.Next(10),
                chance.Next(2) == 0
            );
            var spacing = Core.Joinery.Spacing.Of(Working.Given("s", span), Working.Given("m", member), count, ends)!;
            var last = spacing.Positions.Value[^1] + member;
            Assert.InRange((span - last - (ends ? Length.Zero : spacing.Gap.Value)).Ticks, 0, 1);
            Assert.All(
                spacing.Positions.Value.Zip(spacing.Positions.Value.Skip(1)),
                pair => Assert.InRange((pair.Second - pair.First - member - spacing.Gap.Value).Ticks, 0, 1)
            );
        }
    }

    [Fact]
    public void The_widest_gap_is_kept_and_one_member_fewer_would_not_keep_it()
    {
        for (var span = 10; span < 60; span++)
        {
            string[] given = ["span=" + span.ToString(CultureInfo.InvariantCulture), "member=3/4", "max-gap=3", "ends=members"];
            var count = (int)Asked.Number("spacing", "How many", given);
            Assert.True(Asked.Length("spacing", "Gap", given) <= Asked.Inch("3"));
            if (count > 2)
                Assert.True(
                    Asked.Length("spacing", "Gap", given[0], given[1], "ends=members", $"count={count - 1}") > Asked.Inch("3")
                );
        }
    }

    [Fact]
    public void System_holes_stand_32_mm_apart_and_37_mm_from_the_edge_a_hobby_reference()
    {
        var answer = Asked.Answer("pins", "height=30");
        var holes = ((Working<System.Collections.Immutable.ImmutableArray<Length>>)answer.Results[0]).Value;
        Assert.All(holes.Zip(holes.Skip(1)), pair => Assert.Equal(32, (pair.Second - pair.First).ToMillimetres()));
        Assert.Equal(37, Asked.Length("pins", "Setback", "height=30").ToMillimetres());
    }

    [Fact]
    public void A_three_eighths_dowel_in_seven_eighths_oak_is_2_in_long_Carpentry_and_Woodwork()
    {
        Assert.Equal(Asked.Inch("3/8"), Asked.Length("dowels", "Diameter", "thickness=7/8", "width=3"));
        Assert.Equal(Asked.Inch("2"), Asked.Length("dowels", "Length of the dowel", "thickness=7/8", "width=3"));
    }

    [Fact]
    public void A_hundred_and_fifty_square_feet_twice_at_400_take_three_quarters_of_a_gallon_and_a_tenth_more() =>
        Assert.Equal(0.825, Asked.Number("coats", "Finish with waste", "area=150", "coats=2", "coverage=400"), 6);

    [Theory, InlineData(1, 0.02454), InlineData(400, 9.82)]
    public void Coverage_in_square_metres_for_a_litre(double customary, double metric) =>
        Assert.Equal(metric, QuantityKind.Coverage.ToMetric(customary, LengthUnit.Inch), 0.005);

    [Fact]
    public void A_deeper_or_heavier_piece_stands_better_and_an_open_drawer_worse()
    {
        double Factor(params string[] more) => Asked.Number("stability", "Stability factor", ["height=60", .. more]);
        var plain = Factor("depth=16", "weight=120 lb");
        Assert.True(Factor("depth=16", "weight=160 lb") > plain);
        Assert.True(Factor("depth=16", "weight=120 lb", "reach=8") > plain);
        Assert.True(Factor("depth=16", "weight=120 lb", "floor=carpet") < plain);
        Assert.True(Factor("depth=16", "weight=120 lb", "open-weight=40 lb") < plain);
    }

    [Fact]
    public void Twice_all_weights_tip_alike() =>
        Assert.Equal(
            Asked.Number(
                "stability",
                "Stability factor",
                "height=40",
                "depth=14",
                "weight=100 lb",
                "open-weight=10 lb",
                "leaning=30 lb"
            ),
            Asked.Number(
                "stability",
                "Stability factor",
                "height=40",
                "depth=14",
                "weight=200 lb",
                "open-weight=20 lb",
                "leaning=60 lb"
            ),
            9
        );

    [Fact]
    public void Every_form_answers_with_a_source_for_each_result_and_no_figure_that_is_no_number()
    {
        foreach (var form in WorkingForms.All)
        {
            var given = form.Keys.Where(key => key is { Default: null, Optional: false }).ToDictionary(key => key.Name, Example);
            if (form.Name == "weight")
                (given["thickness"], given["width"], given["length"]) = ("1", "8", "36");
            if (form.Name == "spacing")
                (given["span"], given["count"]) = ("60", "3");
            if (form.Name == "kerf")
                given["strip"] = "1";
            if (form.Name is "groove")
                given["stock"] = "3/4";
            if (form.Name is "dowels")
                given["thickness"] = "3/4";
            var outcome = form.Run(given, LengthUnit.Inch);
            Assert.True(outcome.Answer is not null, form.Name + ": " + string.Join("; ", outcome.Faults));
            Assert.All(
                outcome.Answer.Results,
                result =>
                    Assert.True(
                        result.Source.Text.Length > 0 && result.Figure.Number(LengthUnit.Inch) is null or (> -1e12 and < 1e12),
                        form.Name
                    )
            );
            Assert.All(outcome.Answer.Results, result => Assert.DoesNotContain('{', result.Filled(LengthUnit.Inch)));
        }
    }

    private static string Example(FormKey key) =>
        key switch
        {
            { Name: "thickness" or "into" } => "3/4",
            { Kind: KeyKind.Length } => "12",
            { Kind: KeyKind.Number } => "50",
            { Quantity: { } quantity } when quantity == QuantityKind.Mass => "100 lb",
            { Quantity: not null } => "40",
            _ => "1",
        };

    private static ScrewGauge Gauge(int number) => WoodScrews.Gauges.Single(one => one.Gauge == number);
}
