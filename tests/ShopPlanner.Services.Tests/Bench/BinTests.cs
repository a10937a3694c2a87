using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Bench.Bin;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>Offcuts are found by size, taken, put back, measured and thrown away.</summary>
public sealed class BinTests : IAsyncLifetime
{
    // MDF has no grain.
    private const string Mdf = "mdf-3-4";

    private PlannedShop given = null!;

    private IBinService Bin => given.Shop.Get<IBinService>();

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        foreach (var length in (string[])["14", "20", "9"])
            await given.OffcutAsync(length);
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task The_smallest_that_will_do_comes_first()
    {
        Assert.Equal(["B1", "B2"], await FindAsync(new(Some.Pine, "3/4", "14", "2")));
        Assert.Equal(["B3", "B1", "B2"], await FindAsync(new("", "", "", "")));
        Assert.Empty(await FindAsync(new(Some.Pine, "1/2", "", "")));
        Assert.Empty(await FindAsync(new(Some.Birch, "", "", "")));
        // Along the grain a board is never turned.
        Assert.Empty(await FindAsync(new(Some.Pine, "", "2", "14")));
    }

    [Fact]
    public async Task Sheets_are_found_either_way_round_only_where_their_grain_does_not_matter()
    {
        await SheetAsync(Some.Birch);
        await SheetAsync(Mdf);
        Assert.Equal(["B4"], await FindAsync(new(Some.Birch, "", "20", "8")));
        Assert.Empty(await FindAsync(new(Some.Birch, "", "8", "20")));
        Assert.Equal(["B5"], await FindAsync(new(Mdf, "", "8", "20")));
    }

    // A split of 2 in at the end of the 14 in piece leaves 12 in.
    [Fact]
    public async Task A_bad_end_is_no_part_of_the_size()
    {
        var piece = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(one => one.Tag == "B1");
        var split = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Near, "2", "");
        var service = given.Shop.Get<IStockConditionService>();
        Assert.True(
            (await service.AddBadPlaceAsync(piece.Id, split, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel)).Ok
        );
        Assert.Equal(["B2"], await FindAsync(new(Some.Pine, "", "14", "")));
        Assert.Equal(["B1", "B2"], await FindAsync(new(Some.Pine, "", "12", "")));
    }

    [Theory]
    [InlineData("long", "is not a length")]
    [InlineData("0", "must be more than zero")]
    public async Task A_size_that_cannot_be_read_is_refused_by_its_field(string length, string said)
    {
        var outcome = await Bin.FindAsync(new("", "", length, ""), TestShop.Cancel);
        Assert.Equal((OutcomeKind.Faulty, "Length"), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Contains(said, outcome.Faults.Single().Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Taken_for_a_project_it_is_out_of_the_bin_and_put_back_as_it_measures_now()
    {
        var piece = await PieceAsync("B2");
        Assert.True(
            (await Bin.TakeAsync(piece.Id, piece.Version, given.Project.Id, Some.Device, CommandId.New(), TestShop.Cancel)).Ok
        );
        Assert.DoesNotContain("B2", await FindAsync(new("", "", "", "")));
        var view = (await Bin.FindAsync(new("", "", "", ""), TestShop.Cancel)).Value!;
        var taken = Assert.Single(view.Taken);
        Assert.Equal(("B2", $"taken for {given.Project.Name}"), (taken.Tag, taken.Reason));

        var larger = await Bin.PutBackAsync(taken.Id, taken.Version, "21", "", Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Contains("at most 20″ × 2 ½″", larger.Faults.Single().Message, StringComparison.Ordinal);
        Assert.True(
            (await Bin.PutBackAsync(taken.Id, taken.Version, "13", "", Some.Device, CommandId.New(), TestShop.Cancel)).Ok
        );
        Assert.Equal(Length.FromInches(13), (await PieceAsync("B2")).Length);
        Assert.Empty((await Bin.FindAsync(new("", "", "", ""), TestShop.Cancel)).Value!.Taken);
    }

    [Fact]
    public async Task Each_change_is_undone_last_first()
    {
        var piece = await PieceAsync("B1");
        Assert.True(
            (await Bin.CorrectAsync(piece.Id, piece.Version, "13 1/2", "", Some.Device, CommandId.New(), TestShop.Cancel)).Ok
        );
        var smaller = await PieceAsync("B1");
        Assert.True((await Bin.TakeAsync(piece.Id, smaller.Version, null, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        await UndoAsync(piece.Id);
        Assert.Equal(Length.FromInches(13, 1, 2), (await PieceAsync("B1")).Length);
        var correction = (await given.Shop.Stock.HistoryAsync(piece.Id, 9, TestShop.Cancel)).Single(one =>
            one.Kind == StockEntryKind.Corrected
        );
        Assert.True((await Bin.UndoAsync(correction.Id, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        Assert.Equal(piece with { Version = 0 }, await PieceAsync("B1") with { Version = 0 });
    }

    [Fact]
    public async Task What_a_plan_counts_on_is_not_taken()
    {
        await given.OffcutAsync("40");
        await given.PlanAsync();
        var kept = (await given.Shop.Stock.ListAsync(TestShop.Cancel)).First(one => one.PromisedPlanId is not null);
        var taken = await Bin.TakeAsync(kept.Id, kept.Version, null, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, taken.Kind);
        Assert.Contains("plan again without it", taken.Faults.Single().Message, StringComparison.Ordinal);
    }

    // The second tablet shows the piece as it was.
    [Fact]
    public async Task Two_tablets_do_not_take_one_piece_twice()
    {
        var piece = await PieceAsync("B1");
        var answers = await Task.WhenAll(
            Enumerable
                .Range(0, 8)
                .Select(_ =>
                    Task.Run(() => Bin.TakeAsync(piece.Id, piece.Version, null, Some.Device, CommandId.New(), TestShop.Cancel))
                )
        );
        Assert.Single(answers, answer => answer.Ok);
        Assert.Single((await Bin.FindAsync(new("", "", "", ""), TestShop.Cancel)).Value!.Taken);
    }

    private async Task<IEnumerable<string>> FindAsync(BinSearch search)
    {
        var found = await Bin.FindAsync(search, TestShop.Cancel);
        Assert.True(found.Ok, string.Join("; ", found.Faults));
        return found.Value.Found.Select(one => one.Piece.Tag);
    }

    private async Task<StockPiece> PieceAsync(string tag) =>
        (await given.Shop.Stock.ListAsync(TestShop.Cancel)).Single(one => one.Tag == tag);

    private async Task UndoAsync(Guid piece)
    {
        var last = (await given.Shop.Stock.HistoryAsync(piece, 1, TestShop.Cancel)).Single();
        Assert.True((await Bin.UndoAsync(last.Id, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
    }

    private async Task SheetAsync(string material)
    {
        var sheet = new StockAddition(StockPlace.Bin, material, "24", "10", "1", "");
        var added = await given.Shop.Stock.AddAsync(sheet, Some.Inch, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(added.Ok, string.Join("; ", added.Faults));
    }
}
