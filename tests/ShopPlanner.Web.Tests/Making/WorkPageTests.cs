using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Making;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Making;

/// <summary>How a project is built and finished, with the services of a running program behind it.</summary>
public sealed class WorkPageTests : PageContext, IAsyncLifetime
{
    private ShopServer server = default!;
    private Guid project;

    private IWorkService Work => server.Get<IWorkService>();

    public async ValueTask InitializeAsync()
    {
        server = await ShopServer.OpenAsync();
        Services.AddSingleton(Work);
        Services.AddSingleton(server.Get<IProjectService>());
        Services.AddSingleton(server.Get<IPlanService>());
        project = (await server.Get<IIdeaService>().BeginAsync("bookcase", "Hall bookcase", CommandId.New(), ShopServer.Cancel))
            .Value!
            .Id;
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await server.DisposeAsync();
    }

    [Fact]
    public async Task Each_step_has_its_number_title_words_and_a_picture_of_what_it_handles()
    {
        var page = Build();
        var view = await ReadAsync();
        var steps = view.On(WorkPage.Build).ToList();
        var drawable = view.Piece!.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToHashSet();
        Assert.Equal(
            steps.Select((one, i) => $"{i + 1}. {one.Title}"),
            page.FindAll(".work-step h3").Select(title => title.TextContent)
        );
        foreach (var (card, step) in page.FindAll(".work-step").Zip(steps))
        {
            Assert.All(step.Says, says => Assert.Contains(says, card.TextContent, StringComparison.Ordinal));
            var drawn = card.QuerySelectorAll(".work-picture [data-mark]").Select(part => part.GetAttribute("data-mark"));
            Assert.Superset(step.Step.Handles.Where(drawable.Contains).ToHashSet(), drawn.OfType<string>().ToHashSet());
        }
    }

    [Fact]
    public async Task A_step_that_is_done_is_done_for_the_next_who_opens_the_page_and_can_be_undone()
    {
        var page = Build();
        var first = (await ReadAsync()).On(WorkPage.Build).First();
        await Button(page, "Done: " + first.Title).PressAsync();
        Assert.Contains("done", page.FindAll(".work-step")[0].ClassList);
        Assert.Equal(StepMark.Done, (await ReadAsync()).On(WorkPage.Build).First().Mark);
        Assert.Equal("true", Button(Build(), "Done: " + first.Title).GetAttribute("aria-pressed"));
        await page.FindAll(".sheet-bar button")[0].ClickAsync(new());
        Assert.Contains("open", page.FindAll(".work-step")[0].ClassList);
    }

    [Fact]
    public async Task A_step_that_has_to_wait_says_why_it_is_not_moved()
    {
        var steps = (await ReadAsync()).On(WorkPage.Build).ToList();
        var at = steps.FindIndex(1, one => one.Step.After.Contains(steps[steps.IndexOf(one) - 1].Step.Id));
        var page = Build();
        await Button(page, "Move up: " + steps[at].Title).PressAsync();
        Assert.Contains(
            $"‘{steps[at - 1].Title}’ has to be done first",
            page.FindAll(".work-step")[at].QuerySelector(".faults")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Her_own_words_and_note_are_kept()
    {
        var first = (await ReadAsync()).On(WorkPage.Build).First();
        var page = Build();
        Button(page, "Edit: " + first.Title).Click();
        await Field(page, "Note").TypedAsync("Ask Sam to hold it");
        await Field(page, "What to do", 0).TypedAsync("Slowly.");
        Assert.Contains("Ask Sam to hold it", page.Find(".work-note").TextContent, StringComparison.Ordinal);
        var now = (await ReadAsync()).On(WorkPage.Build).First();
        Assert.Equal(("Ask Sam to hold it", "Slowly."), (now.Note, Assert.Single(now.Says)));
        Assert.Contains("your words", page.FindAll(".work-facts")[0].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_step_that_is_done_takes_a_time_and_says_what_is_wrong_with_it()
    {
        var first = (await ReadAsync()).On(WorkPage.Build).First();
        var page = Build();
        Assert.DoesNotContain("Time it took", page.Markup, StringComparison.Ordinal);
        await Button(page, "Done: " + first.Title).PressAsync();
        await Field(page, "took").TypedAsync("an hour");
        Assert.Contains("write minutes, like 45", page.Find(".work-step .fault").TextContent, StringComparison.Ordinal);
        await Field(page, "took").TypedAsync("1:30");
        Assert.Equal("1:30", (await ReadAsync()).On(WorkPage.Build).First().Took);
        Assert.Equal(90, Assert.Single(await Work.LogsAsync(ShopServer.Cancel)).Time.Took);
    }

    [Fact]
    public async Task A_step_of_her_own_is_added_once_and_a_bad_one_is_refused_beside_its_field()
    {
        var page = Build();
        var form = page.Find("form[aria-label='Add a step']");
        await form.PressAsync();
        Assert.Contains("Is empty", page.Find("form[aria-label='Add a step'] .fault").TextContent, StringComparison.Ordinal);
        await InForm(page, "title").TypedAsync("Fit the toe kick");
        var press = Guid.NewGuid();
        await page.Find("form[aria-label='Add a step']").PressAsync(press);
        await page.Find("form[aria-label='Add a step']").PressAsync(press);
        Assert.Single(
            page.FindAll(".work-step h3"),
            title => title.TextContent.EndsWith("Fit the toe kick", StringComparison.Ordinal)
        );
        Button(page, "Remove: Fit the toe kick").Click();
        Assert.DoesNotContain(
            page.FindAll(".work-step h3"),
            title => title.TextContent.EndsWith("toe kick", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task The_finish_goes_on_the_shopping_list_by_one_press()
    {
        var page = Render<FinishPage>(given => given.Add(one => one.Id, project));
        var buy = (await ReadAsync()).Finish!.Buy;
        Assert.All(buy, item => Assert.Contains(item.Name, page.Markup, StringComparison.Ordinal));
        await Button(page, "Put on the shopping list").PressAsync();
        await Button(page, "Put on the shopping list").PressAsync();
        Assert.Contains("It's on the list.", page.Markup, StringComparison.Ordinal);
        var list = await server.Get<IBuyingService>().OfProjectAsync(project, ShopServer.Cancel);
        var names = list!.Supplies.Single().Lines.Select(line => line.Name).ToList();
        Assert.All(buy, item => Assert.Single(names, item.Name));
    }

    [Fact]
    public async Task Choices_of_the_finish_are_kept_and_a_bad_one_is_refused_beside_its_field()
    {
        var page = Render<FinishPage>(given => given.Add(one => one.Id, project));
        await Field(page, "Coats").TypedAsync("no");
        Assert.Contains("is not a whole number from 1 to 20", page.Find(".panel .fault").TextContent, StringComparison.Ordinal);
        await Field(page, "Coats").TypedAsync("3");
        await Field(page, "Finish").TypedAsync(WorkLists.Finishes[^1].Id);
        var choices = (await ReadAsync()).Choices;
        Assert.Equal((3, WorkLists.Finishes[^1].Id), (choices.Coats, choices.Finish));
    }

    [Fact]
    public async Task What_the_material_does_not_take_is_said_where_the_finish_is_chosen()
    {
        var projects = server.Get<IProjectService>();
        var listed = (await projects.CreateAsync("Shelves", LengthUnit.Inch, CommandId.New(), ShopServer.Cancel)).Value!.Id;
        var shelf = new PartTexts(Guid.CreateVersion7(), "A", "Shelf", "mdf-3-4", "20", "10", "2", false, "");
        Assert.True((await server.Get<IPartService>().SaveAsync(listed, [new PartEdit(shelf, null)], ShopServer.Cancel)).Ok);
        var choices = (await Work.ChoicesAsync(listed, ShopServer.Cancel))!;
        var stain = choices with { Choices = choices.Choices with { Finish = "stain+clear" } };
        Assert.True((await Work.SaveChoicesAsync(stain, ShopServer.Cancel)).Ok);
        var finding = (await Work.GetAsync(listed, ShopServer.Cancel))!.Findings.Single(one => one.Severity == Severity.Fails);
        var page = Render<FinishPage>(given => given.Add(one => one.Id, listed));
        Assert.Contains(finding.Text, page.Find(".verdicts").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_project_that_has_nothing_says_what_would_make_its_steps_appear()
    {
        var projects = server.Get<IProjectService>();
        var empty = (await projects.CreateAsync("Hall bench", LengthUnit.Inch, CommandId.New(), ShopServer.Cancel)).Value!.Id;
        var build = Render<BuildPage>(given => given.Add(one => one.Id, empty));
        Assert.Contains("Choose a design or add parts.", build.Find(".empty-place").TextContent, StringComparison.Ordinal);
        Assert.Equal(Links.DesignsFor(empty), build.Find(".empty-place a").GetAttribute("href"));
        var finish = Render<FinishPage>(given => given.Add(one => one.Id, empty));
        Assert.Contains("what to buy for it", finish.Find(".empty-place").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<BuildPage> Build() => Render<BuildPage>(given => given.Add(one => one.Id, project));

    private async Task<WorkView> ReadAsync() => (await Work.GetAsync(project, ShopServer.Cancel))!;

    private static IElement Button<T>(IRenderedComponent<T> page, string name)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        page.FindAll("button").Single(one => (one.GetAttribute("aria-label") ?? one.TextContent.Trim()) == name);

    private static IElement Field<T>(IRenderedComponent<T> page, string name, int at = 0)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        page.FindAll("[data-field]").Where(one => one.GetAttribute("data-field") == name).ElementAt(at);

    private static IElement InForm<T>(IRenderedComponent<T> page, string field)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        page.Find($"form[aria-label='Add a step'] [data-field='{field}']");
}
