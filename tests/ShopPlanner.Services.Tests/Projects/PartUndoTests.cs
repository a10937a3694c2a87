using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Projects;

public sealed class PartUndoTests : IDisposable
{
    private readonly string folder = TestShop.NewFolder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Steps_go_back_and_forth_and_survive_a_restart()
    {
        Guid project;
        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            project = (await Some.ProjectAsync(shop)).Id;
            var row = (await shop.Parts.SaveAsync(project, [Some.New(Some.Part("10"))], TestShop.Cancel)).Value!.Rows.Single();
            await shop.Parts.SaveAsync(project, [new PartEdit(row.Texts with { Length = "11" }, row.Version)], TestShop.Cancel);
            await shop.Parts.PasteAsync(
                project,
                "B\tRail\tpine-1x3\t12\t\t2\nC\tRail\tpine-1x3\t13\t\t2",
                CommandId.New(),
                TestShop.Cancel
            );
        }

        await using var again = await TestShop.OpenAsync(folder: folder);
        Assert.Equal("paste of 2 rows", (await again.Parts.GetAsync(project, TestShop.Cancel))!.Undo);
        Assert.Equal(["11"], await UndoAsync(again, project));
        Assert.Equal(["10"], await UndoAsync(again, project));
        Assert.Equal([], await UndoAsync(again, project));
        Assert.Equal(OutcomeKind.Faulty, (await again.Parts.UndoAsync(project, TestShop.Cancel)).Kind);
        foreach (var expected in new[] { "10", "11", "11,12,13" })
            Assert.Equal(expected, string.Join(',', Lengths((await again.Parts.RedoAsync(project, TestShop.Cancel)).Value!)));
        Assert.Equal(OutcomeKind.Faulty, (await again.Parts.RedoAsync(project, TestShop.Cancel)).Kind);
    }

    [Fact]
    public async Task An_allowance_and_practice_pieces_are_taken_back_and_done_again()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var project = (await Some.ProjectAsync(shop)).Id;
        var row = (await shop.Parts.SaveAsync(project, [Some.New(Some.Part("10"))], TestShop.Cancel)).Value!.Rows.Single();
        await shop.Parts.SaveAsync(
            project,
            [new PartEdit(row.Texts with { LongBy = "1/2", Practice = "2" }, row.Version)],
            TestShop.Cancel
        );
        var before = (await shop.Parts.UndoAsync(project, TestShop.Cancel)).Value!.Rows.Single();
        Assert.Equal(("", "", 0), (before.Texts.LongBy, before.Texts.Practice, before.Practice));
        var again = (await shop.Parts.RedoAsync(project, TestShop.Cancel)).Value!.Rows.Single();
        Assert.Equal(("1/2", "2", 2), (again.Texts.LongBy, again.Texts.Practice, again.Practice));
    }

    [Fact]
    public async Task A_removed_row_comes_back_in_its_place_with_a_later_version()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var project = (await Some.ProjectAsync(shop)).Id;
        var rows = (
            await shop.Parts.SaveAsync(
                project,
                [Some.New(Some.Part("1")), Some.New(Some.Part("2")), Some.New(Some.Part("3"))],
                TestShop.Cancel
            )
        )
            .Value!
            .Rows;
        await shop.Parts.RemoveAsync(project, [rows[1].Texts.Id], TestShop.Cancel);
        var sheet = (await shop.Parts.UndoAsync(project, TestShop.Cancel)).Value!;
        Assert.Equal(["1", "2", "3"], Lengths(sheet));
        Assert.True(sheet.Rows[1].Version > rows[1].Version);
    }

    [Fact]
    public async Task A_new_step_makes_the_undone_ones_go_for_good()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var project = (await Some.ProjectAsync(shop)).Id;
        await shop.Parts.SaveAsync(project, [Some.New(Some.Part("1"))], TestShop.Cancel);
        await shop.Parts.UndoAsync(project, TestShop.Cancel);
        var sheet = (await shop.Parts.SaveAsync(project, [Some.New(Some.Part("2"))], TestShop.Cancel)).Value!;
        Assert.Null(sheet.Redo);
        Assert.Equal(OutcomeKind.Faulty, (await shop.Parts.RedoAsync(project, TestShop.Cancel)).Kind);
    }

    [Fact]
    public async Task A_page_that_shows_an_older_step_does_not_take_back_another_devices()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var project = (await Some.ProjectAsync(shop)).Id;
        var mine = (await shop.Parts.SaveAsync(project, [Some.New(Some.Part("1"))], TestShop.Cancel)).Value!;
        await shop.Parts.SaveAsync(project, [Some.New(Some.Part("2"))], TestShop.Cancel);
        var outcome = await shop.Parts.UndoAsync(project, mine.UndoStep!.Value, TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, outcome.Kind);
        Assert.Equal(["1", "2"], Lengths((await shop.Parts.GetAsync(project, TestShop.Cancel))!));
    }

    [Fact]
    public async Task A_row_changed_since_the_step_is_not_overwritten()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var project = (await Some.ProjectAsync(shop)).Id;
        await shop.Parts.SaveAsync(project, [Some.New(Some.Part("1"))], TestShop.Cancel);
        await using (var db = shop.Get<IDbContextFactory<ShopContext>>().CreateDbContext())
        {
            (await db.Parts.SingleAsync(TestShop.Cancel)).Length = "99";
            await db.SaveChangesAsync(TestShop.Cancel);
        }

        var outcome = await shop.Parts.UndoAsync(project, TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, outcome.Kind);
        Assert.Contains("another device", outcome.Faults.Single().Message);
        Assert.Equal(["99"], Lengths((await shop.Parts.GetAsync(project, TestShop.Cancel))!));
    }

    // Old steps hold texts of the old unit: 10 must never come back as 10 mm.
    [Fact]
    public async Task A_change_of_unit_rewrites_the_texts_exactly_and_ends_undoing()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var project = await Some.ProjectAsync(shop);
        var before = (
            await shop.Parts.SaveAsync(
                project.Id,
                [Some.New(Some.Part("34 1/2")), Some.New(Some.Part("8 ft")), Some.New(Some.Part("oops"))],
                TestShop.Cancel
            )
        ).Value!;
        var saved = (
            await shop.Projects.SaveAsync(
                project with
                {
                    Unit = LengthUnit.Millimetre,
                    Version = project.Version,
                },
                TestShop.Cancel
            )
        ).Value!;
        var after = (await shop.Parts.GetAsync(saved.Id, TestShop.Cancel))!;
        Assert.Equal(["876.3", "8 ft", "oops"], Lengths(after));
        Assert.Equal(before.Rows.Select(row => row.Part), after.Rows.Select(row => row.Part));
        Assert.Null(after.Undo);
    }

    private static async Task<IEnumerable<string>> UndoAsync(TestShop shop, Guid project) =>
        Lengths((await shop.Parts.UndoAsync(project, TestShop.Cancel)).Value!);

    private static IEnumerable<string> Lengths(PartSheet sheet) => sheet.Rows.Select(row => row.Texts.Length);
}
