using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Sheets through the whole planner.</summary>
public sealed class SheetPlanTests
{
    [Fact]
    public void Rips_of_a_sheet_count_their_kerfs()
    {
        // n = floor((48 + 1/8) / (11 7/8 + 1/8)) = 4 strips of a four-foot sheet: arithmetic, exact.
        var request = Request([Some.Part("A", "96", 4, "11 7/8", material: "ply")]);
        Assert.Equal((PlanStatus.Proven, Money.From(60)), (Some.Planned(request).Status, Some.Planned(request).Cost));
        var wider = request with { Parts = [request.Parts[0] with { Width = Some.Of("11 15/16") }] };
        Assert.Equal(Money.From(120), Some.Planned(wider).Cost);
    }

    [Fact]
    public void The_margin_of_a_new_sheet_is_cut_off_before_a_part_is_finished()
    {
        var plan = Some.Planned(Request([Some.Part("A", "95 1/2", 1, "47 1/2", material: "ply")], edgeTrim: "1/4"));
        var layout = Assert.Single(plan.Layouts);
        Assert.Equal(4, layout.Cuts.Length);
        Assert.Equal((Some.Of("1/4"), Some.Of("1/4")), (layout.Pieces[0].X, layout.Pieces[0].Y));
    }

    [Fact]
    public void An_offcut_is_taken_as_square()
    {
        var request = Request([Some.Part("A", "30", 1, "20", material: "ply")], edgeTrim: "1/4");
        var plan = Some.Planned(request with { Stock = [.. request.Stock, Some.Stock("B1", "30", "20", 0, 1, true, "ply")] });
        Assert.Equal((Money.Zero, 0), (plan.Cost, plan.Layouts[0].Cuts.Length));
    }

    [Fact]
    public void Large_leftovers_are_kept_and_slivers_are_not()
    {
        var plan = Some.Planned(Request([Some.Part("A", "60", 1, "47 1/2", material: "ply")]));
        var layout = Assert.Single(plan.Layouts);
        Assert.Contains(layout.Leftovers, left => left is { Keep: true } && left.Dx > Some.Of("35"));
        Assert.DoesNotContain(layout.Leftovers, left => left.Keep && left.Dy < Some.Of("1"));
    }

    [Fact]
    public void Cuts_at_one_setting_are_made_together()
    {
        var plan = Some.Planned(Request([Some.Part("A", "30", 9, "15 3/4", material: "ply")]));
        var settings = plan.Layouts[0].Cuts.Select(cut => (cut.Kind, cut.At)).ToList();
        var changes = settings.Zip(settings.Skip(1)).Count(pair => pair.First != pair.Second);
        Assert.True(changes < settings.Distinct().Count() + 2, $"{changes} changes for {settings.Distinct().Count()} settings");
    }

    // Sheets that a search empties on its way must never be taken for layouts that can be repeated.
    [Fact]
    public void A_large_job_with_leftovers_worth_keeping_is_planned_whole()
    {
        var parts = Enumerable
            .Range(0, 25)
            .Select(i =>
                Some.Part(
                    $"P{i}",
                    $"{8 + (i * 7 % 23)} {i % 8}/8",
                    6,
                    $"{5 + (i * 5 % 11)} 1/4",
                    i % 2 == 0 ? Grain.Any : Grain.Length,
                    "ply"
                )
            );
        var stock = new[]
        {
            Some.Stock("whole", "96", "48", 64, material: "ply"),
            Some.Stock("half", "48", "48", 36, material: "ply"),
            Some.Stock("quarter", "48", "24", 20, material: "ply"),
            Some.Stock("B1", "40", "20", 0, 1, true, "ply"),
        };
        var request = Some.Request([Some.Sheet()], stock, parts, edgeTrim: "1/4");
        foreach (var seed in new[] { 1, 2, 3 })
            Assert.Equal(
                150,
                Some.Planned(request, new SearchControl { Time = TimeSpan.FromSeconds(1.5), Seed = seed }).AllPieces().Length
            );
    }

    private static CutRequest Request(CutPart[] parts, string edgeTrim = "0") =>
        Some.Request([Some.Sheet()], [Some.Stock("s", "96", "48", 60, material: "ply")], parts, edgeTrim: edgeTrim);
}
