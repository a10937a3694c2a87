using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>What is worth keeping is decided by <see cref="KeepRule"/> alone: the searches value just the leftovers that it keeps,
/// whatever measure they count in.</summary>
public sealed class KeepRuleTests
{
    private static readonly CutMaterial Oak = Some.Board("oak", "11 1/4");

    [Theory]
    [InlineData("6", "11 1/4", true)]
    [InlineData("6", "5 5/8", true)]
    [InlineData("6", "5 39/64", false)]
    [InlineData("5 63/64", "11 1/4", false)]
    public void A_board_leftover_is_long_enough_along_the_grain_and_half_as_wide_as_its_board(
        string along,
        string across,
        bool kept
    ) => Assert.Equal(kept, new KeepRule(Some.Of("6"), null, null).Keeps(Oak, Some.Of(along), Some.Of(across)));

    [Fact]
    public void Half_of_an_odd_number_of_ticks_is_not_reached_by_the_tick_below()
    {
        var material = new CutMaterial("m", StockForm.Board, null, Length.FromTicks(101));
        var rule = new KeepRule(Length.FromTicks(10), null, null);
        Assert.False(rule.Keeps(material, Length.FromTicks(10), Length.FromTicks(50)));
        Assert.True(rule.Keeps(material, Length.FromTicks(10), Length.FromTicks(51)));
    }

    [Fact]
    public void Where_a_size_is_not_given_nothing_of_that_form_is_kept()
    {
        var huge = Some.Of("90");
        Assert.False(new KeepRule(null, huge, huge).Keeps(Oak, huge, Some.Of("11 1/4")));
        Assert.False(new KeepRule(Some.Of("1"), Some.Of("1"), null).Keeps(Some.Sheet(), huge, huge));
    }

    // Short pieces of a wide board are where along and across must not be exchanged; common measures of 1/4 and 1/8 in.
    [Theory]
    [InlineData(StockForm.Board, 1, 1)]
    [InlineData(StockForm.Board, 2032, 1016)]
    [InlineData(StockForm.Sheet, 1, 1)]
    [InlineData(StockForm.Sheet, 2032, 1016)]
    public void The_sheet_search_values_the_leftovers_that_the_rule_keeps(StockForm form, long scaleX, long scaleY)
    {
        var material = form == StockForm.Board ? Oak : Some.Sheet("oak");
        var job = JobOf(material, Some.Of("1/8"));
        var stock = new SheetMeasure(job, scaleX, scaleY).Of(job.Stock[0]);
        var tried = 0;
        for (var dx = 1L; dx <= 24 * 8128 / scaleX; dx += Math.Max(1, 500 / scaleX))
        for (var dy = 1L; dy <= 11 * 8128 / scaleY; dy += Math.Max(1, 700 / scaleY))
        {
            var (along, across) = ((dx * scaleX) - job.Kerf, (dy * scaleY) - job.Kerf);
            if (along <= 0 || across <= 0)
                continue;
            tried++;
            var kept = job.Keep.Keeps(material, Length.FromTicks(along), Length.FromTicks(across));
            Assert.True(kept == stock.Keeps(dx, dy), $"{Length.FromTicks(along)} along, {Length.FromTicks(across)} across");
        }

        Assert.True(tried > 5000, $"only {tried} sizes were tried");
    }

    [Theory]
    [InlineData("1/8")]
    [InlineData("0")]
    public void The_board_search_values_the_leftovers_that_the_rule_keeps(string kerf)
    {
        // 95 in and an odd bit do not divide by the parts' measure of 1/4 in.
        var job = JobOf(Oak, Some.Of(kerf));
        var scale = Some.Of("1/4").Ticks;
        var lot = Assert.Single(new BoardLots(job).All);
        var stock = new BoardMeasure(job, scale).Of(lot, lot.Share);
        for (var used = 0L; used < stock.Capacity; used++)
        {
            var left = job.UsableX(job.Stock[0]) - (used * scale);
            var kept = left > 0 && job.Keep.Keeps(Oak, Length.FromTicks(left), Oak.Width!.Value);
            Assert.True(kept == stock.Capacity - used >= stock.KeepAtLeast, $"{Length.FromTicks(left)} left");
        }
    }

    private static Job JobOf(CutMaterial material, Length kerf) =>
        new(
            material,
            new(kerf, Length.Zero, Length.Zero),
            new(Some.Of("6"), Some.Of("12"), Some.Of("6")),
            [Some.Stock("s", "95 13/64", "11 1/4", material: "oak")],
            [Some.Part("A", "10", material: "oak")]
        );
}
