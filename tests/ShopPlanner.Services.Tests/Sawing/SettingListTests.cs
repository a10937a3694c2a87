using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Sawing;

/// <summary>The cuts of a plan by saw and setting.</summary>
public sealed class SettingListTests
{
    private const int Plans = 300;

    [Fact]
    public void Every_cut_is_listed_once_and_its_piece_is_in_hand_by_then()
    {
        var (cuts, again) = (0, 0);
        RandomPlans.All.Sample(
            view =>
            {
                var hands = view.Plan.Layouts.Select(_ => new HashSet<string> { "sheet" }).ToList();
                foreach (var step in SettingList.Of(view).SelectMany(material => material.Steps))
                {
                    again += step.IsAgain ? 1 : 0;
                    foreach (var made in step.Cuts)
                        Make(hands[made.Layout], made.Step.Cut);
                    cuts += step.Cuts.Length;
                }

                Assert.Equal(
                    view.Plan.Layouts.Sum(layout => layout.Cuts.Length),
                    SettingList.Of(view).Sum(material => material.Steps.Sum(step => step.Cuts.Length))
                );
            },
            iter: Plans,
            threads: 1
        );
        Assert.True(cuts > Plans && again > 0, $"{cuts} cuts, {again} settings that come again");
    }

    [Fact]
    public void One_saw_stands_at_one_figure_for_all_cuts_of_a_setting() =>
        RandomPlans.All.Sample(
            view =>
                Assert.All(
                    SettingList.Of(view).SelectMany(material => material.Steps),
                    step =>
                        Assert.Single(step.Cuts.Select(cut => (cut.Step.Tool, cut.Step.Setting, cut.Step.FromFarSide)).Distinct())
                ),
            iter: Plans,
            threads: 1
        );

    [Fact]
    public void The_saw_is_set_no_more_often_than_board_by_board() =>
        RandomPlans.All.Sample(
            view =>
            {
                var (together, apart) = (SettingList.Changes(SettingList.Of(view)), ByBoard(view));
                Assert.True(together <= apart, $"{together} settings, {apart} board by board");
            },
            iter: Plans,
            threads: 1
        );

    private static void Make(HashSet<string> hand, Cut cut)
    {
        Assert.True(hand.Remove(cut.Piece), $"cut {cut.N}: {cut.Piece} is not in hand");
        Assert.True(hand.Add(cut.First));
        if (cut.Second is { } second)
            Assert.True(hand.Add(second));
    }

    // Counted on its own: all boards one after another, those that are cut alike at once.
    private static int ByBoard(PlanView view)
    {
        var changes = 0;
        (string, Length)? last = null;
        for (var layout = 0; layout < view.Plan.Layouts.Length; layout++)
            foreach (var step in CutTexts.Steps(view, layout))
            {
                var setting = (CutSentences.Way(step), step.Setting);
                changes += setting == last ? 0 : 1;
                last = setting;
            }

        return changes;
    }
}
