using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services.Tests.Workings;

public sealed class WorkingTests
{
    private static readonly Dictionary<string, string> Boards = new()
    {
        ["thickness"] = "1",
        ["width"] = "6",
        ["length"] = "8 ft",
        ["count"] = " ",
    };

    private static readonly Dictionary<string, string> Slats = new()
    {
        ["span"] = "32 1/2",
        ["member"] = "2 1/2",
        ["count"] = "5",
    };

    [Fact]
    public async Task A_working_is_kept_as_it_was_typed_with_its_result()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var use = (await KeepAsync(shop, project.Id, "board-feet", Boards)).Value!;
        Assert.Equal((0, null), (use.Parts, use.Step));
        var kept = Assert.Single(await ListAsync(shop, project.Id));
        Assert.Equal(
            ("board-feet", "Board feet", Some.Inch, "Board feet: 4 bd ft"),
            (kept.Form, kept.Title, kept.Unit, kept.Result)
        );
        Assert.Equal(["length=8 ft", "thickness=1", "width=6"], kept.Given.Select(pair => $"{pair.Key}={pair.Value}"));
        Assert.Equal(new DateTime(2026, 5, 2, 9, 30, 0, DateTimeKind.Utc), kept.KeptUtc);
        Assert.Empty((await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows);
    }

    [Fact]
    public async Task The_latest_stands_first_and_each_project_has_its_own()
    {
        await using var shop = await TestShop.OpenAsync();
        var (one, other) = (await Some.ProjectAsync(shop), await Some.ProjectAsync(shop, "Gate"));
        await KeepAsync(shop, one.Id, "board-feet", Boards);
        shop.Clock.Advance(TimeSpan.FromMinutes(1));
        await KeepAsync(shop, one.Id, "spacing", Slats);
        Assert.Equal(["spacing", "board-feet"], (await ListAsync(shop, one.Id)).Select(kept => kept.Form));
        Assert.Empty(await ListAsync(shop, other.Id));
    }

    [Fact]
    public async Task Parts_it_proposes_become_rows_that_want_a_material()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var use = (await KeepAsync(shop, project.Id, "spacing", Slats)).Value!;
        var sheet = (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!;
        Assert.Equal((1, use.Step, "parts of equal spacing"), (use.Parts, sheet.UndoStep, sheet.Undo));
        var row = Assert.Single(sheet.Rows);
        Assert.Equal(
            ("A", "Spacer block", "", "6", "1"),
            (row.Texts.Mark, row.Texts.Name, row.Texts.Material, row.Texts.Length, row.Texts.Quantity)
        );
        Assert.Equal((32.5m - (5 * 2.5m)) / 6, LengthText.Parse(row.Texts.Width, Some.Inch).Value.ToInches(), 3);
        Assert.Contains("¾″ thick", row.Texts.Note, StringComparison.Ordinal);
        Assert.Equal(["Material"], row.Faults.Select(fault => fault.Field));
    }

    [Fact]
    public async Task Rows_are_written_in_the_projects_own_unit()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = (await shop.Projects.CreateAsync("Bench", LengthUnit.Millimetre, CommandId.New(), TestShop.Cancel)).Value!;
        await KeepAsync(shop, project.Id, "spacing", Slats);
        Assert.Equal("152.4", Assert.Single((await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows).Texts.Length);
    }

    [Fact]
    public async Task Taking_it_back_takes_the_rows_back_too()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var use = (await KeepAsync(shop, project.Id, "spacing", Slats)).Value!;
        Assert.True((await Kept(shop).UndoAsync(use, TestShop.Cancel)).Ok);
        Assert.Empty(await ListAsync(shop, project.Id));
        Assert.Empty((await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows);
    }

    [Fact]
    public async Task Nothing_is_taken_back_where_the_list_was_changed_since()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var use = (await KeepAsync(shop, project.Id, "spacing", Slats)).Value!;
        await shop.Parts.SaveAsync(project.Id, [Some.New(Some.Part())], TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, (await Kept(shop).UndoAsync(use, TestShop.Cancel)).Kind);
        Assert.Single(await ListAsync(shop, project.Id));
        Assert.Equal(2, (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows.Length);
    }

    [Fact]
    public async Task One_taken_out_can_be_put_back_once()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var kept = (await KeepAsync(shop, project.Id, "spacing", Slats)).Value!.Working;
        var removed = (await Kept(shop).RemoveAsync(kept.Id, TestShop.Cancel)).Value!;
        Assert.Empty(await ListAsync(shop, project.Id));
        Assert.Single((await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows);
        Assert.Equal(OutcomeKind.Missing, (await Kept(shop).RemoveAsync(kept.Id, TestShop.Cancel)).Kind);
        Assert.True((await Kept(shop).PutBackAsync(removed, CommandId.New(), TestShop.Cancel)).Ok);
        Assert.Equal(OutcomeKind.Conflict, (await Kept(shop).PutBackAsync(removed, CommandId.New(), TestShop.Cancel)).Kind);
        Assert.Equal(kept.Given, Assert.Single(await ListAsync(shop, project.Id)).Given);
    }

    [Theory]
    [InlineData("board-feet", "width", "12 1/0", "width")]
    [InlineData("board-feet", "colour", "red", "colour")]
    [InlineData("board-feet", "width", "", "width")]
    [InlineData("horoscope", "width", "6", "form")]
    public async Task What_cannot_be_worked_out_is_not_kept(string form, string key, string text, string field)
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var before = shop.CountRows();
        var outcome = await KeepAsync(shop, project.Id, form, new(Boards) { [key] = text });
        Assert.Equal((OutcomeKind.Faulty, field), (outcome.Kind, Assert.Single(outcome.Faults).Field));
        Assert.Equal(before, shop.CountRows());
    }

    [Fact]
    public async Task A_project_that_is_not_there_keeps_nothing()
    {
        await using var shop = await TestShop.OpenAsync();
        Assert.Equal(OutcomeKind.Missing, (await KeepAsync(shop, Guid.NewGuid(), "spacing", Slats)).Kind);
    }

    [Fact]
    public async Task A_list_too_full_for_the_parts_keeps_nothing_at_all()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        await using (var db = shop.Get<IDbContextFactory<ShopContext>>().CreateDbContext())
        {
            db.Parts.AddRange(
                Enumerable
                    .Range(0, IPartService.MaxRows)
                    .Select(i => new StoredPart
                    {
                        Id = Guid.CreateVersion7(),
                        ProjectId = project.Id,
                        Position = i,
                    })
            );
            await db.SaveChangesAsync(TestShop.Cancel);
        }

        var before = shop.CountRows();
        Assert.Equal(OutcomeKind.Faulty, (await KeepAsync(shop, project.Id, "spacing", Slats)).Kind);
        Assert.Equal(before, shop.CountRows());
    }

    private static IWorkingService Kept(TestShop shop) => shop.Get<IWorkingService>();

    private static Task<IReadOnlyList<KeptWorking>> ListAsync(TestShop shop, Guid project) =>
        Kept(shop).ListAsync(project, TestShop.Cancel);

    private static Task<Outcome<KeptUse>> KeepAsync(TestShop shop, Guid project, string form, Dictionary<string, string> given) =>
        Kept(shop).KeepAsync(project, form, given, Some.Inch, CommandId.New(), TestShop.Cancel);
}
