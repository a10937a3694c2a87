using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services.Tests.Designs;

/// <summary>A project made out of another is like it, and is its own.</summary>
public sealed class ProjectCopyTests : IAsyncLifetime
{
    private Ideas given = null!;

    public async ValueTask InitializeAsync()
    {
        given = await Ideas.BeginAsync();
        await given.SetAsync("width", "26");
        Assert.True((await given.Service.MakePartsAsync(given.Project, false, CommandId.New(), TestShop.Cancel)).Ok);
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task It_has_the_parts_the_idea_and_the_figures_under_its_own_name_and_letters()
    {
        var figures = new Dictionary<string, string>
        {
            ["span"] = "32 1/2",
            ["member"] = "2 1/2",
            ["count"] = "5",
        };
        await given
            .Shop.Get<IWorkingService>()
            .KeepAsync(given.Project, "spacing", figures, Some.Inch, CommandId.New(), TestShop.Cancel);
        var copy = await DuplicateAsync(given.Project);
        Assert.Equal(("Bookcase copy", ProjectState.Planning, true), (copy.Name, copy.State, copy.HasIdea));
        Assert.NotEqual(given.View.Code, copy.Code);
        Assert.Equal(await PartsAsync(given.Project), await PartsAsync(copy.Id));
        var (was, now) = (await given.ReadAsync(), (await given.Service.GetAsync(copy.Id, TestShop.Cancel))!);
        Assert.Equal((was.Idea.Changed["width"], was.Undo), (now.Idea.Changed["width"], now.Undo));
        Assert.Single(await given.Shop.Get<IWorkingService>().ListAsync(copy.Id, TestShop.Cancel));
        Assert.Empty(await given.Shop.Plans.ListOfAsync(copy.Id, TestShop.Cancel));
    }

    [Fact]
    public async Task What_is_done_to_one_leaves_the_other_alone()
    {
        var copy = (await DuplicateAsync(given.Project)).Id;
        var (parts, idea) = (await PartsAsync(given.Project), await given.ReadAsync());
        var view = (await given.Service.GetAsync(copy, TestShop.Cancel))!;
        var undone = (await given.Service.UndoAsync(copy, view.Version, TestShop.Cancel)).Value!;
        Assert.False(undone.Idea.Changed.ContainsKey("width"));
        var rows = (await given.Shop.Parts.GetAsync(copy, TestShop.Cancel))!.Rows;
        await given.Shop.Parts.RemoveAsync(copy, [rows[0].Texts.Id], TestShop.Cancel);
        Assert.Equal(parts, await PartsAsync(given.Project));
        Assert.Equal(idea.Idea.Changed, (await given.ReadAsync()).Idea.Changed);
    }

    [Fact]
    public async Task Its_parts_are_known_as_made_from_its_idea()
    {
        var rows = (await given.Shop.Parts.GetAsync(given.Project, TestShop.Cancel))!.Rows;
        await given.Shop.Parts.RemoveAsync(given.Project, [rows[^1].Texts.Id], TestShop.Cancel);
        var copy = (await DuplicateAsync(given.Project)).Id;
        var (was, now) = (await CompareAsync(given.Project), await CompareAsync(copy));
        Assert.True(now.IsMade);
        Assert.Equal(was.Rows.Select(row => (row.Change, row.Mark)), now.Rows.Select(row => (row.Change, row.Mark)));
    }

    [Fact]
    public async Task Names_are_counted_on()
    {
        var first = await DuplicateAsync(given.Project);
        Assert.Equal("Bookcase copy 2", (await DuplicateAsync(given.Project)).Name);
        Assert.Equal("Bookcase copy 3", (await DuplicateAsync(first.Id)).Name);
        var long120 = new string('x', 120);
        var project = (await given.Shop.Projects.GetAsync(first.Id, TestShop.Cancel))!;
        Assert.True((await given.Shop.Projects.SaveAsync(project with { Name = long120 }, TestShop.Cancel)).Ok);
        Assert.Equal(long120[..115] + " copy", (await DuplicateAsync(first.Id)).Name);
    }

    [Fact]
    public async Task What_is_not_there_is_not_duplicated() =>
        Assert.Equal(
            OutcomeKind.Missing,
            (await given.Shop.Get<IProjectCopies>().DuplicateAsync(Guid.NewGuid(), CommandId.New(), TestShop.Cancel)).Kind
        );

    private async Task<ProjectView> DuplicateAsync(Guid project)
    {
        var outcome = await given.Shop.Get<IProjectCopies>().DuplicateAsync(project, CommandId.New(), TestShop.Cancel);
        Assert.True(outcome.Ok, string.Join("; ", outcome.Faults));
        return outcome.Value;
    }

    private async Task<PartsUpdate> CompareAsync(Guid project) => (await given.Service.CompareAsync(project, TestShop.Cancel))!;

    private async Task<IReadOnlyList<PartTexts>> PartsAsync(Guid project) =>
        [.. (await given.Shop.Parts.GetAsync(project, TestShop.Cancel))!.Rows.Select(row => row.Texts with { Id = Guid.Empty })];
}
