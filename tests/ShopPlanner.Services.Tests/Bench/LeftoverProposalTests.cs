using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>What the bench proposes for leftovers. Three legs of 30 in: the first from an offcut of 41 3/8 in (board 1), two from a
/// new board of 96 in (board 2).</summary>
public sealed class LeftoverProposalTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid plan;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("41 3/8");
        plan = (await given.PlanAsync()).Summary.Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task A_leftover_has_its_tag_and_its_place_before_it_is_in_the_bin()
    {
        var left = Assert.Single(await ProposeAsync(2, allCutsMade: true));
        Assert.Equal(("B2", "Right end", true), (left.Tag, left.Where, left.Left.Keep));
        var picture = PlanPictures.ForLeftovers(await ViewAsync(), 2, [left], allCutsMade: true);
        Assert.Equal(["B2"], picture.Leftovers.Select(one => one.Tag));
        Assert.All(picture.Pieces, piece => Assert.True(piece.Done));
    }

    [Fact]
    public async Task Stopped_early_only_what_lies_there_is_drawn()
    {
        Assert.True((await given.Shop.Bench.SetCutAsync(plan, 1, 1, 1, true, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        var left = await ProposeAsync(2, allCutsMade: false);
        var picture = PlanPictures.ForLeftovers(await ViewAsync(), 2, left, allCutsMade: false);
        Assert.Equal(["A2"], picture.Pieces.Select(piece => piece.Mark));
        Assert.Single(picture.Cuts);
        Assert.Equal("65 7/8", LengthFormat.Exact(Assert.Single(picture.Leftovers).Area.Dx, Some.Inch));
    }

    [Fact]
    public async Task The_tag_that_was_proposed_is_given()
    {
        Assert.True((await FinishAsync(1, new MeasuredLeftover(0, "35", "", true) { Tag = "B7" })).Ok);
        Assert.Equal(["B1", "B7"], (await TagsAsync()).Order(StringComparer.Ordinal));
        await given.OffcutAsync("12");
        Assert.Contains("B8", await TagsAsync());
    }

    // Somebody else was quicker; a tag far beyond, or of the rack, was never proposed.
    [Theory]
    [InlineData("B1")]
    [InlineData("B99999")]
    [InlineData("R3")]
    [InlineData("B02")]
    [InlineData("B")]
    [InlineData("")]
    public async Task A_tag_that_cannot_be_given_is_the_next_one(string tag)
    {
        Assert.True((await FinishAsync(1, new MeasuredLeftover(0, "35", "", true) { Tag = tag })).Ok);
        Assert.Contains("B2", await TagsAsync());
    }

    [Fact]
    public async Task A_bad_corner_goes_into_the_bin_with_its_piece()
    {
        var bad = new BadPlaceTyped(BadPlaceKind.Corner, StockEdges.Far | StockEdges.Back, "3", "1");
        Assert.True((await FinishAsync(1, new MeasuredLeftover(0, "35", "", true) { Bad = bad })).Ok);
        var piece = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(one => one.Tag == "B2");
        var corner = new BadPlace(Length.FromInches(32), Length.FromInches(1, 1, 2), Length.FromInches(3), Length.FromInches(1));
        Assert.Equal([corner], piece.Condition.BadPlaces);
    }

    [Theory]
    [InlineData("97", "is larger than what it was cut from, 96″ × 2 ½″; about 35 ¾″ × 2 ½″")]
    [InlineData("0", "must be more than zero; about 35 ¾″ × 2 ½″")]
    [InlineData("-2", "is less than zero")]
    [InlineData("908", "if you measured in millimeters, write 908 mm")]
    [InlineData("97 in", "is larger than what it was cut from")]
    public async Task A_size_that_cannot_be_is_refused_with_what_would_be_right(string length, string said)
    {
        var outcome = await FinishAsync(1, new MeasuredLeftover(0, length, "", true));
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains(said, Assert.Single(outcome.Faults).Message, StringComparison.Ordinal);
        Assert.Equal(["B1"], await TagsAsync());
    }

    // 60 in of legs, 35 in and 40 in: a board of 96 in has not so much.
    [Fact]
    public async Task Leftovers_that_together_are_more_than_the_board_are_refused()
    {
        var outcome = await FinishAsync(1, new MeasuredLeftover(0, "35", "", true), new MeasuredLeftover(-1, "40", "", true));
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Contains("are more than the 96″ × 2 ½″ they come from", outcome.Faults.Single().Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_test_piece_that_is_not_cut_comes_off_a_leftover_first()
    {
        var practice = Some.Part("10", "C", "1") with { Practice = "1" };
        await given.Shop.Parts.SaveAsync(given.Project.Id, [Some.New(practice)], TestShop.Cancel);
        plan = (await given.PlanAsync(given.Order(replaces: plan))).Summary.Id;
        var view = await ViewAsync();
        var at = view.Stocks.Single(stock =>
            view.Plan.Plan.Layouts[stock.Layout]
                .Pieces.Any(piece => view.Plan.Parts[piece.Part].Name.StartsWith("Test piece", StringComparison.Ordinal))
        );
        var left = await ProposeAsync(at.Number, allCutsMade: false);
        Assert.Contains(
            left.SelectMany(one => one.Serves),
            serves => serves.Contains("Test piece for C", StringComparison.Ordinal)
        );
        Assert.All(await ProposeAsync(at.Number, allCutsMade: true), one => Assert.Empty(one.Serves));
    }

    private async Task<BenchView> ViewAsync() => (await given.Shop.Bench.GetAsync(plan, TestShop.Cancel))!;

    private async Task<IReadOnlyList<ProposedLeftover>> ProposeAsync(int number, bool allCutsMade)
    {
        var view = await ViewAsync();
        return await given.Shop.Get<ILeftoverProposals>().OfAsync(view, view.Stocks[number - 1], allCutsMade, TestShop.Cancel);
    }

    private Task<Outcome<BenchView>> FinishAsync(int layout, params MeasuredLeftover[] leftovers) =>
        given.Shop.Bench.FinishAsync(plan, new(layout, 1, true, leftovers), Some.Device, CommandId.New(), TestShop.Cancel);

    private async Task<IEnumerable<string>> TagsAsync() =>
        (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Select(piece => piece.Tag);
}
