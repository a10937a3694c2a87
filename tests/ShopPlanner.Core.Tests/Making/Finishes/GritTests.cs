using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>The row of grits.</summary>
public sealed class GritTests
{
    // Common practice: 80 or 100, 120, 150, 180, 220; 150 to 180 before paint or stain, 180 to 220 before a clear coat.
    [Theory]
    [InlineData(80, 220, "80, 120, 150, 180, 220")]
    [InlineData(100, 180, "100, 120, 150, 180")]
    [InlineData(80, 150, "80, 120, 150")]
    [InlineData(120, 120, "120")]
    [InlineData(60, 100, "60, 80, 100")]
    public void From_one_to_another(int start, int end, string row) =>
        Assert.Equal(row, string.Join(", ", Grits.From(start, end)));

    // Common practice: no step of more than half again the grit.
    [Fact]
    public void No_step_is_more_than_half_again()
    {
        for (var start = Grits.Coarsest; start <= Grits.Finest; start++)
        for (var end = start; end <= Grits.Finest; end += 7)
        {
            var row = Grits.From(start, end);
            Assert.Equal((start, end), (row[0], row[^1]));
            Assert.All(row.Zip(row.Skip(1)), step => Assert.True(step.Second > step.First && step.Second * 2 <= step.First * 3));
        }
    }

    [Theory]
    [InlineData("paint", 150, 180)]
    [InlineData("enamel", 150, 180)]
    [InlineData("stain+clear", 150, 180)]
    [InlineData("clear", 180, 220)]
    [InlineData("polyurethane", 180, 220)]
    [InlineData("wiping-varnish", 180, 220)]
    [InlineData("shellac", 180, 220)]
    [InlineData("oil", 180, 220)]
    [InlineData("hard-wax-oil", 180, 220)]
    [InlineData("wax", 180, 220)]
    public void The_last_grit_suits_the_finish(string finish, int coarsest, int finest)
    {
        var says = Finished.Listed("Pine 1x12", finish).Step("parts:sand").Says[0];
        var last = int.Parse(says.Split(" grit")[0].Split(' ')[^1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(last, coarsest, finest);
    }

    // Wood Handbook (FPL-GTR-190), ch. 16: planed softwood is wetted, dried and scuffed with 50 to 80 grit before exterior paint.
    [Fact]
    public void Outdoors_softwood_is_left_rough_for_paint()
    {
        var plan = Finished.Plan("outdoor-bench", "paint");
        Assert.Contains("80 grit", plan.Step("parts:sand").Says[0], StringComparison.Ordinal);
        Assert.DoesNotContain("120", plan.Step("parts:sand").Says[0], StringComparison.Ordinal);
        plan.InOrder("piece:raise-grain", "piece:smooth", "piece:prime");
    }

    [Fact]
    public void A_builder_s_grits_are_taken_and_bad_ones_refused()
    {
        var plan = Finished.Listed("Pine 1x12", Finished.Usual with { StartGrit = 100, EndGrit = 180 });
        Assert.Contains("100, 120, 150, 180 grit", plan.Step("parts:sand").Says[0], StringComparison.Ordinal);
        Assert.Empty(plan.Findings);
        foreach (
            var wrong in new[]
            {
                Finished.Usual with
                {
                    StartGrit = 0,
                },
                Finished.Usual with
                {
                    EndGrit = 9999,
                },
                Finished.Usual with
                {
                    StartGrit = 150,
                    EndGrit = 80,
                },
                Finished.Usual with
                {
                    EndGrit = 320,
                },
                Finished.Usual with
                {
                    Finish = "clear",
                    EndGrit = 120,
                },
            }
        )
        {
            var refused = Finished.Listed("Pine 1x12", wrong);
            Assert.Contains(refused.Findings, finding => finding.Severity == Severity.Watch);
            Assert.Contains("grit", refused.Findings[0].Text, StringComparison.Ordinal);
            Assert.True(refused.Has("parts:sand"));
        }
    }

    [Fact]
    public void Its_first_advice_entered_again_has_no_fault()
    {
        var advised = Finished.Listed("Pine 1x12", Finished.Usual with { EndGrit = (int)FinishFigures.FinestForPaint.Value });
        Assert.Empty(advised.Findings);
    }
}
