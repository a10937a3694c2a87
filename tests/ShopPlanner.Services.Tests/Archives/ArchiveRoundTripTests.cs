using CsCheck;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Archives;

/// <summary>A shop that goes out to a file and comes into an empty shop is the same shop.</summary>
public sealed class ArchiveRoundTripTests
{
    // What tables, pages and databases trip over.
    private static readonly Gen<string> Hostile = Gen.OneOf(
            "=1+1",
            "a\"b",
            "semi;colon",
            "com,ma",
            "'; DROP TABLE Parts; --",
            "<script>alert(1)</script>",
            "👍 漢字",
            "שולחן עבודה",
            "\u202Eevil",
            "½ × ¾",
            "tab\there",
            "\\u0000 \\n"
        )
        .Array[1, 2]
        .Select(parts => string.Concat(parts));

    private static CancellationToken Cancel => TestShop.Cancel;

    [Fact]
    public async Task Every_table_is_archived_or_left_out_with_its_reason()
    {
        await using var shop = await TestShop.OpenAsync();
        var types = await shop.Work.ReadAsync(
            db => Task.FromResult(db.Model.GetEntityTypes().Select(one => one.ClrType).ToList()),
            Cancel
        );
        Assert.Equal(
            types.Select(type => type.Name).Order(StringComparer.Ordinal),
            ArchiveTables.Kept.Keys.Concat(ArchiveTables.LeftOut.Keys).Select(type => type.Name).Order(StringComparer.Ordinal)
        );
        Assert.All(ArchiveTables.LeftOut.Values, reason => Assert.True(reason.Length > 20, reason));
    }

    [Fact]
    public async Task The_demo_is_the_same_shop_after_the_move()
    {
        await using var from = await TestShop.OpenAsync(demo: true);
        await ComesBackAsync(from);
    }

    [Fact]
    public Task A_shop_full_of_hostile_names_is_the_same_shop_after_the_move() =>
        Gen.Select(Hostile, Hostile, Hostile)
            .SampleAsync(
                async names =>
                {
                    await using var given = await PlannedShop.OpenAsync();
                    await FillAsync(given, names.Item1, names.Item2, names.Item3);
                    await ComesBackAsync(given.Shop);
                },
                iter: 6,
                threads: 1
            );

    [Fact]
    public async Task What_comes_in_can_be_worked_with()
    {
        await using var given = await PlannedShop.OpenAsync();
        var offcut = await given.OffcutAsync("40");
        var plan = await given.PlanAsync();
        var zip = await given.Shop.Get<IArchiveService>().ExportAsync(Cancel);
        await using var to = await TestShop.OpenAsync();
        Assert.True((await to.Get<IArchiveService>().ImportAsync(zip, CommandId.New(), Cancel)).Ok);
        Assert.Equal(plan.Plan.Cost, (await to.Plans.GetAsync(plan.Summary.Id, Cancel))!.Plan.Cost);
        Assert.Equal(plan.Summary.Id, (await to.Stock.ListAsync(Cancel)).Single(piece => piece.Id == offcut).PromisedPlanId);
        // Tags go on where the other shop stopped.
        var added = await to.Stock.AddAsync(Some.Offcut("20"), Some.Inch, Some.Device, CommandId.New(), Cancel);
        Assert.Equal("B2", added.Value!.Single().Tag);
    }

    private static async Task FillAsync(PlannedShop given, string first, string second, string third)
    {
        var shop = given.Shop;
        await shop.Materials.SaveAsync(
            new(null, first + " oak", StockForm.Board, "3/4", "2"),
            Some.Inch,
            CommandId.New(),
            Cancel
        );
        await shop.Projects.SaveAsync(given.Project with { Name = second, Note = $"{third}\n{first}" }, Cancel);
        await shop.Parts.SaveAsync(given.Project.Id, [Some.New(Some.Part(first, second, third) with { Note = first })], Cancel);
        await shop.Parts.UndoAsync(given.Project.Id, Cancel);
        await shop.Stores.SaveAsync(given.Store with { Name = third, Note = second }, Cancel);
        await shop.Stock.AddAsync(
            Some.Offcut("40") with
            {
                Note = first.Replace('\t', ' '),
            },
            Some.Inch,
            Some.Device,
            CommandId.New(),
            Cancel
        );
        var piece = await given.OffcutAsync("20");
        var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Far, "2", "");
        await shop.Get<IStockConditionService>().AddBadPlaceAsync(piece, end, Some.Inch, Some.Device, CommandId.New(), Cancel);
        await shop.Get<IIdeaService>().StartAsync(given.Project.Id, "bookcase", CommandId.New(), Cancel);
        await shop.Get<IWorkService>()
            .AddStepAsync(given.Project.Id, WorkPage.Build, first.Replace('\t', ' '), second, CommandId.New(), Cancel);
        var plan = await given.PlanAsync();
        await shop.Bench.SetCutAsync(plan.Summary.Id, 0, 1, 1, true, Some.Device, CommandId.New(), Cancel);
    }

    private static async Task ComesBackAsync(TestShop from)
    {
        var archives = from.Get<IArchiveService>();
        var first = await archives.ExportAsync(Cancel);
        Assert.Equal(ArchiveFiles.Hash(first), ArchiveFiles.Hash(await archives.ExportAsync(Cancel)));
        await using var to = await TestShop.OpenAsync();
        var seen = await to.Get<IArchiveService>().PreviewAsync(first, Cancel);
        Assert.True(seen.Ok, string.Join("; ", seen.Faults));
        Assert.True(seen.Value is { IsAsWritten: true, Hindrance: null });
        var taken = await to.Get<IArchiveService>().ImportAsync(first, CommandId.New(), Cancel);
        Assert.True(taken.Ok, string.Join("; ", taken.Faults));
        var second = await to.Get<IArchiveService>().ExportAsync(Cancel);
        Assert.Equal(ArchiveFiles.Documents(first), ArchiveFiles.Documents(second));
        Assert.Equal(ArchiveFiles.Hash(first), ArchiveFiles.Hash(second));
        Assert.Equal("ok", to.Ask("PRAGMA integrity_check"));
        Assert.Equal("", to.Ask("PRAGMA foreign_key_check"));
    }
}
