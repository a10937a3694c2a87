using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

/// <summary>Rows of one project copied into another.</summary>
public sealed class PartCopyTests : IAsyncLifetime
{
    private TestShop shop = null!;
    private Guid from;
    private Guid to;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        from = (await Some.ProjectAsync(shop, "Hall bookcase")).Id;
        to = (await shop.Projects.CreateAsync("Low bench", LengthUnit.Millimetre, CommandId.New(), TestShop.Cancel)).Value!.Id;
        await shop.Parts.SaveAsync(
            from,
            [
                Some.New(Some.Part("30", "A") with { LongBy = "1/2", Note = "front" }),
                Some.New(Some.Part("12", "B", "2", Some.Birch, "10") with { CanTurn = true }),
                Some.New(Some.Part("8", "C")),
            ],
            TestShop.Cancel
        );
        await shop.Parts.SaveAsync(to, [Some.New(Some.Part("500", "B"))], TestShop.Cancel);
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task Chosen_rows_come_in_with_their_sizes_and_are_one_step()
    {
        var rows = (await RowsAsync(from)).ToList();
        var sheet = (await CopyAsync(rows[1].Texts.Id, rows[0].Texts.Id)).Value!;
        Assert.Equal(["B", "A", "C"], sheet.Rows.Select(row => row.Texts.Mark));
        Assert.Equal(
            rows.Take(2).Select(row => row.Part! with { Id = "" }),
            sheet.Rows.Skip(1).Select(row => row.Part! with { Id = "" })
        );
        Assert.Equal(("front", "copy of 2 rows from Hall bookcase"), (sheet.Rows[1].Texts.Note, sheet.Undo));
        Assert.Single((await shop.Parts.UndoAsync(to, TestShop.Cancel)).Value!.Rows);
        Assert.Equal(3, (await RowsAsync(from)).Count);
    }

    [Fact]
    public async Task A_row_that_is_gone_and_a_choice_of_none_add_nothing()
    {
        var row = (await RowsAsync(from))[2].Texts.Id;
        await shop.Parts.RemoveAsync(from, [row], TestShop.Cancel);
        var before = shop.CountRows();
        Assert.Equal(OutcomeKind.Conflict, (await CopyAsync(row)).Kind);
        Assert.Equal(OutcomeKind.Faulty, (await CopyAsync()).Kind);
        var gone = await shop.Get<IPartExchange>().CopyAsync(to, Guid.NewGuid(), [row], CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Missing, gone.Kind);
        Assert.Equal(before, shop.CountRows());
    }

    private Task<Outcome<PartSheet>> CopyAsync(params Guid[] rows) =>
        shop.Get<IPartExchange>().CopyAsync(to, from, rows, CommandId.New(), TestShop.Cancel);

    private async Task<IReadOnlyList<PartRow>> RowsAsync(Guid project) =>
        (await shop.Parts.GetAsync(project, TestShop.Cancel))!.Rows;
}
