using ShopPlanner.Cutting.Planning;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>What a plan comes to beyond its cost, counted by hand.</summary>
public sealed class PlanMeasuresTests
{
    [Fact]
    public void Two_boards_and_an_offcut_are_counted()
    {
        // Two 96 in boards, each squared by 3/8 and cut at 30 three times, leave 4 1/8 in each, too short to keep; the offcut of
        // 41 3/8 in is cut at 20 and leaves 21 1/4 in to keep. Settings: 3/8, 30 and 20, each set once for all boards.
        var stock = new[] { Some.Stock("new", "96", price: 6), Some.Stock("B1", "41 3/8", quantity: 1, offcut: true) };
        var request = Some.Request([Some.Board()], stock, [Some.Part("A", "30", 6), Some.Part("C", "20")], endTrim: "1/2");
        Assert.Equal(
            new PlanMeasures(1, 2, 1, 3, 9, 0)
            {
                SettingChanges = 3,
                Turns = 0,
                Slivers = 2,
            },
            PlanMeasures.Of(request, Some.Planned(request))
        );
    }

    [Fact]
    public void A_rip_and_a_crosscut_at_one_figure_are_two_settings_and_turned_pieces_are_counted()
    {
        var request = Some.Request(
            [Some.Sheet()],
            [Some.Stock("B1", "60", "40", 0, 1, true, "ply")],
            [Some.Part("A", "20", 1, "50", Grain.Any, "ply")]
        );
        var measures = PlanMeasures.Of(request, Some.Planned(request));
        Assert.Equal((1, 0, 2, 1), (measures.FromBin, measures.NewStock, measures.Cuts, measures.Turned));
        Assert.Equal((2, 2, 1), (measures.Settings, measures.SettingChanges, measures.Turns));
    }
}
