using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using static ShopPlanner.Cutting.Tests.Formats.Documents;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>Plans read to what they say, are written in plain numbers, and a wrong one is refused by path and value.</summary>
public sealed class CutPlanJsonTests
{
    [Fact]
    public void The_printed_example_reads_to_what_it_says()
    {
        var (plan, faults) = ReadPlan(Plan);
        Assert.Empty(faults);
        Assert.Equal(
            (LengthUnit.Inch, PlanStatus.Proven, Money.From(76.96m), Money.From(76.96m), 0.05),
            (plan!.Unit, plan.Status, plan.Cost, plan.CostLowerBound, plan.Seconds)
        );
        Assert.Equal([new Purchase("birch-full", 1, Money.From(64))], plan.Buy);
        Assert.Equal([new UnplacedPart("Z", 1, "longer than any stock of this material")], plan.Unplaced);
        var layout = plan.Layouts.Single();
        Assert.Equal(("birch-full", 1), (layout.Stock, layout.Copies));
        Assert.Equal([new PlacedPiece("P", In(0.25m), In(0.25m), In(27), In(13.25m), false)], layout.Pieces);
        Assert.Equal([new Leftover(In(27.375m), In(0.25m), In(68.375m), In(47.5m), true)], layout.Leftovers);
        Assert.Equal([new Cut(1, "sheet", CutKind.Crosscut, In(27.375m), "1a", "1b", "P", null)], layout.Cuts);
    }

    [Theory]
    [InlineData(PlanStatus.Proven, "proven")]
    [InlineData(PlanStatus.BestFound, "best-found")]
    [InlineData(PlanStatus.Incomplete, "incomplete")]
    public void A_status_has_its_word_both_ways(PlanStatus status, string word)
    {
        var text = CutPlanJson.Write(ReadPlan(Plan).Plan! with { Status = status });
        Assert.Contains($"\"status\": \"{word}\"", text, StringComparison.Ordinal);
        Assert.Equal(status, ReadPlan(text).Plan!.Status);
    }

    [Theory]
    [InlineData("1b", "P", null)]
    [InlineData("1b", null, "Q")]
    [InlineData("1b", null, null)]
    [InlineData(null, "P", null)]
    public void A_cut_reads_back_equal(string? second, string? firstPart, string? secondPart)
    {
        var plan = ReadPlan(Plan).Plan!;
        var cut = new Cut(1, "sheet", CutKind.Rip, In(13.25m), "1a", second, firstPart, secondPart);
        var text = CutPlanJson.Write(plan with { Layouts = [plan.Layouts[0] with { Cuts = [cut] }] });
        Assert.Equal([cut], ReadPlan(text).Plan!.Layouts[0].Cuts);
    }

    [Fact]
    public void What_is_written_is_written_the_same_after_reading()
    {
        var text = CutPlanJson.Write(ReadPlan(Plan).Plan!);
        Assert.Equal(text, CutPlanJson.Write(ReadPlan(text).Plan!));
    }

    [Fact]
    public void Lengths_are_rounded_to_six_decimals_of_the_unit()
    {
        var plan = ReadPlan(Plan).Plan!;
        var piece = plan.Layouts[0].Pieces[0] with { X = Length.FromTicks(1), Y = Length.FromTicks(127) };
        var text = CutPlanJson.Write(plan with { Layouts = [plan.Layouts[0] with { Pieces = [piece] }] });
        Assert.Contains("\"x\": 0.000123,\n          \"y\": 0.015625,\n          \"dx\": 27,", text, StringComparison.Ordinal);
        Assert.Equal([piece], ReadPlan(text).Plan!.Layouts[0].Pieces);
    }

    [Theory]
    [InlineData("shop-planner/cut-plan", "shop-planner/cut-request", "format", "shop-planner/cut-request")]
    [InlineData("\"version\": 1", "\"version\": 3", "version", "3")]
    [InlineData("\"proven\"", "\"optimal\"", "status", "optimal")]
    [InlineData("\"cost\": 76.96,", "", "cost", "")]
    [InlineData("\"cost\": 76.96,", "\"cost\": 1e400,", "cost", "1e400")]
    [InlineData("\"copies\": 1", "\"copies\": 0", "layouts[0].copies", "0")]
    [InlineData("\"dx\": 27,", "\"dx\": 0,", "layouts[0].pieces[0].dx", "0")]
    [InlineData("\"dx\": 68.375,", "\"dx\": \"wide\",", "layouts[0].leftovers[0].dx", "wide")]
    [InlineData("\"crosscut\"", "\"mitre\"", "layouts[0].cuts[0].kind", "mitre")]
    [InlineData("[\"1a\", \"1b\"]", "[]", "layouts[0].cuts[0].gives", "[…]")]
    [InlineData("[\"1a\", \"1b\"]", "[\"1a\", \"1b\", \"1c\"]", "layouts[0].cuts[0].gives", "3")]
    [InlineData(
        "\"part\": \"Z\", \"quantity\": 1",
        "\"part\": \"Z\", \"quantity\": 1, \"quantity\": 1",
        "unplaced[0].quantity",
        "1"
    )]
    public void A_wrong_member_is_named_with_its_value(string old, string replacement, string path, string value)
    {
        var (plan, faults) = ReadPlan(Plan.With(old, replacement));
        Assert.Null(plan);
        Assert.Contains(faults, fault => (fault.Field, fault.Value) == (path, value));
    }
}
