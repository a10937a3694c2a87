using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Workings;
using ShopPlanner.Web.Features.Workings;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Workings;

/// <summary>The page of a form, with the services of a running program behind it.</summary>
public sealed class WorkingPageTests : PageContext, IAsyncLifetime
{
    private ShopServer server = default!;

    public async ValueTask InitializeAsync()
    {
        server = await ShopServer.OpenAsync();
        Services.AddSingleton(server.Get<IShopService>());
        Services.AddSingleton(server.Get<IProjectService>());
        Services.AddSingleton(server.Get<IWorkingService>());
        Services.AddSingleton(server.Get<IPartTaking>());
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await server.DisposeAsync();
    }

    [Fact]
    public void All_forms_are_listed_under_subjects_with_their_sentence()
    {
        var page = Render<WorkingsPage>();
        Assert.Equal(
            WorkingForms.All.Select(form => Links.Working(form.Name)).Order(),
            page.FindAll("a.working-link").Select(link => link.GetAttribute("href")).Order()
        );
        Assert.All(WorkingForms.All, form => Assert.Contains(form.Says, page.Markup, StringComparison.Ordinal));
        Assert.DoesNotContain(page.FindAll("h2"), head => head.TextContent == "More");
    }

    [Fact]
    public void The_result_changes_with_each_keystroke()
    {
        var page = Open("board-feet");
        Assert.Equal("Needs: Thickness as sold; Width; Length.", page.Find(".working-result .other").TextContent);
        Assert.Empty(page.FindAll("[aria-invalid]"));
        Named(page, "Thickness as sold").Typed("1");
        Named(page, "Width").Typed("6");
        Named(page, "Length").Typed("8 ft");
        Assert.Equal("4 bd ft", Result(page));
        Named(page, "Pieces").Typed("5");
        Assert.Equal("20 bd ft", Result(page));
        Assert.Contains("5 × 1″ × 6″ × 96″ ÷ 144 in³", page.Find(".formula").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_address_follows_when_the_hand_rests()
    {
        var page = Open("board-feet?thickness=1&width=6&unit=in");
        Named(page, "Length").Typed("9");
        Named(page, "Length").Typed("96");
        page.WaitForAssertion(
            () =>
                Assert.EndsWith(
                    "/workings/board-feet?length=96&thickness=1&width=6&unit=in",
                    Services.GetRequiredService<NavigationManager>().Uri,
                    StringComparison.Ordinal
                ),
            TimeSpan.FromSeconds(5)
        );
        Assert.Equal("4 bd ft", Result(page));
    }

    [Fact]
    public void A_link_fills_the_form_in_and_another_link_fills_it_in_anew()
    {
        var page = Open("spacing?span=820&member=60&count=5&unit=mm");
        Assert.Equal("820", Named(page, "Clear span").GetAttribute("data-shown"));
        Assert.Equal("86.5 mm + 2 sheets of paper", Result(page));
        Services.GetRequiredService<NavigationManager>().NavigateTo("/workings/spacing?span=10&member=1&count=1&unit=in");
        page.WaitForAssertion(() => Assert.Equal("4 ½″", Result(page)));
    }

    [Fact]
    public void A_wrong_value_is_marked_beside_its_field_and_the_last_figure_stays_but_faded()
    {
        var page = Open("board-feet?thickness=1&width=6&length=96");
        Named(page, "Width").Typed("12 1/0");
        Assert.Equal("true", Named(page, "Width").GetAttribute("aria-invalid"));
        Assert.Contains("stale", page.Find(".figure-large").ClassList);
        Assert.Empty(page.FindAll("section[aria-label='Save to a project']"));
    }

    [Fact]
    public void Choices_are_radios_and_count_at_once()
    {
        var page = Open("board-feet?thickness=1/2&width=6&length=96");
        Assert.Equal("4 bd ft", Result(page));
        var real = page.FindAll("input[type=radio]")
            .Single(radio => radio.ParentElement!.TextContent.Trim() == "counts as its real thickness");
        real.Typed(real.GetAttribute("value")!);
        Assert.Equal("2 bd ft", Result(page));
    }

    [Fact]
    public void Each_step_down_to_what_was_given_is_told_once_and_verdicts_have_a_word()
    {
        var page = Open("stability?depth=12&height=30&weight=40");
        Assert.Contains(page.FindAll(".verdict b"), word => word.TextContent is "Fix this.");
        var steps = page.FindAll(".worked-steps > li").Select(step => step.TextContent.Trim()).ToList();
        Assert.Equal(steps.Distinct(), steps);
        Assert.Contains(steps, step => step.StartsWith("Weight, empty", StringComparison.Ordinal));
        Assert.Contains("as quoted", page.Find(".source").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".notice.warn li"));
    }

    [Fact]
    public void What_lies_outside_a_rules_range_is_marked_in_words()
    {
        var how = Render<WorkingHow>(parameters =>
            parameters.Add(
                one => one.Result,
                Working.Given("Load", 3, QuantityKind.Mass, 0) with
                {
                    OutsideRange = "the table ends at 2 kg",
                }
            )
        );
        Assert.Equal("Outside its range. The table ends at 2 kg.", how.Find(".outside").TextContent.Trim());
    }

    [Fact]
    public void What_a_figure_rests_on_and_lies_outside_of_its_range_is_said_once_beside_the_figures()
    {
        var page = Open("movement?width=12&from=6&to=99 RH");
        var said = Assert.Single(page.FindAll(".outside"));
        Assert.Equal("Outside its range. Above 95% humidity the equation is unreliable.", said.TextContent.Trim());
    }

    [Theory]
    [InlineData(Certainty.FromMemory, "Unverified: check before you rely on it", "from memory")]
    [InlineData(Certainty.CommonPractice, "Common practice", "common practice")]
    public void A_remembered_or_customary_figure_says_so(Certainty certainty, string first, string note)
    {
        var how = Render<WorkingHow>(parameters =>
            parameters.Add(one => one.Result, Working.Looked("Factor", 3, QuantityKind.Bare, 0, new("A handbook", certainty)))
        );
        Assert.Equal(first, how.Find(".source summary").TextContent);
        Assert.Contains("A handbook", how.Find(".source details").TextContent, StringComparison.Ordinal);
        Assert.Contains(note, how.Find(".source details").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_is_kept_with_the_project_that_is_chosen()
    {
        var project = (
            await server.Get<IProjectService>().CreateAsync("Hall bench", LengthUnit.Inch, CommandId.New(), ShopServer.Cancel)
        ).Value!;
        var page = Open("spacing?span=32.5&member=2.5&count=5&unit=in");
        await Named(page, "Save to project").PressAsync();
        page.WaitForAssertion(() =>
            Assert.Contains(
                "Saved to Hall bench. 1 part added",
                page.Markup.Replace($"<a href=\"{Links.Parts(project.Id)}\">", "", StringComparison.Ordinal)
                    .Replace("</a>", "", StringComparison.Ordinal),
                StringComparison.Ordinal
            )
        );
        var kept = Assert.Single(await server.Get<IWorkingService>().ListAsync(project.Id, ShopServer.Cancel));
        Assert.Equal(("spacing", "5"), (kept.Form, kept.Given["count"]));
    }

    [Fact]
    public async Task A_project_lists_what_is_kept_with_a_way_back_and_a_way_out()
    {
        var project = (
            await server.Get<IProjectService>().CreateAsync("Hall bench", LengthUnit.Inch, CommandId.New(), ShopServer.Cancel)
        ).Value!;
        await server
            .Get<IWorkingService>()
            .KeepAsync(
                project.Id,
                "board-feet",
                new Dictionary<string, string>
                {
                    ["thickness"] = "1",
                    ["width"] = "6",
                    ["length"] = "8 ft",
                },
                LengthUnit.Inch,
                CommandId.New(),
                ShopServer.Cancel
            );
        var list = Render<KeptWorkings>(parameters => parameters.Add(one => one.ProjectId, project.Id));
        Assert.Equal("/workings/board-feet?length=8%20ft&thickness=1&width=6&unit=in", list.Find("a.name").GetAttribute("href"));
        Assert.Equal("Board feet: 4 bd ft", list.Find(".sub").TextContent);
        await list.Find("button").ClickAsync(new());
        Assert.Empty(list.FindAll("li"));
        Assert.Empty(await server.Get<IWorkingService>().ListAsync(project.Id, ShopServer.Cancel));
    }

    // The command line prints what the form answers; so does the page, in both units.
    [Theory]
    [InlineData("mortise?thickness=3/4 in&width=3 in&into=2.25 in&between=20 in")]
    [InlineData("dado?thickness=23/32 in&into=3/4 in&cutter=1/2 in&inside=30 in")]
    [InlineData("fronts?height=24 in&width=18 in")]
    [InlineData("slides?slide=side&width=15 in&height=6 in&depth=21 in")]
    [InlineData("butt-hinges?height=30 in&width=15 in")]
    [InlineData("hinge-overlay?overlay=16")]
    [InlineData("top-fastening?width=30 in&length=60 in&species=oak-red")]
    [InlineData("square?width=24 in&length=36 in&first=43.3 in&second=43.2 in")]
    [InlineData("taper?offset=3/4 in&length=24 in&start=2 in&jig=36 in")]
    [InlineData("miter?sides=6&slope=10&across=12 in")]
    [InlineData("arc?chord=24 in&rise=3 in")]
    [InlineData("wall?weight=50 lb&load=100 lb&width=30 in&depth=12 in&height=29 in")]
    [InlineData("screw-holding?species=oak-red&count=4")]
    [InlineData("slats?span=38 in&width=3.5 in&thickness=1 in")]
    [InlineData("edge-band?length=30 in&width=12 in&roll=25 ft")]
    [InlineData("price?price=6.50&width=7.5 in&length=8 ft&count=3")]
    [InlineData("convert?value=18 mm")]
    [InlineData("kerf?board=24 in&count=10&strip=1 in&rest=12.75 in")]
    [InlineData("five-cuts?far=1.250 in&near=1.238 in&length=24 in")]
    [InlineData("parallel?front=6 in&back=5.994 in&length=10 in")]
    public void The_page_shows_every_figure_of_the_answer(string address)
    {
        var (name, given) = (address.Split('?')[0], address.Split('?')[1].Split('&').Select(one => one.Split('=')));
        Assert.True(WorkingForms.TryFind(name, out var form));
        foreach (var (unit, sign) in new[] { (LengthUnit.Inch, "in"), (LengthUnit.Millimetre, "mm") })
        {
            var answer = form.Run(given.ToDictionary(pair => pair[0], pair => pair[1]), unit).Answer;
            Assert.NotNull(answer);
            var page = Open($"{address.Replace(" ", "%20", StringComparison.Ordinal)}&unit={sign}");
            Assert.Equal(answer.Results[0].Figure.Text(unit), Result(page));
            Assert.Equal(
                answer.Results.Skip(1).Select(one => one.Figure.Text(unit)),
                page.FindAll(".more-figures .figure-text").Select(one => one.TextContent)
            );
            Assert.Equal(answer.Verdicts.Length, page.FindAll(".verdicts .verdict").Count);
        }
    }

    [Fact]
    public async Task A_projects_parts_fill_the_fields_in_and_show_what_was_added_up()
    {
        var project = (
            await server.Get<IIdeaService>().BeginAsync("table", "Oak table", CommandId.New(), ShopServer.Cancel)
        ).Value!;
        var page = Open($"coats?project={project.Id}&unit=in");
        page.WaitForAssertion(() =>
            Assert.Contains("Oak table", page.Find(".from-project").TextContent, StringComparison.Ordinal)
        );
        var total = page.Find(".from-shares .sum td").TextContent;
        Services.GetRequiredService<NavigationManager>().NavigateTo(page.Find(".from-question a.button").GetAttribute("href")!);
        page.WaitForAssertion(() => Assert.Equal(total, Named(page, "Area to coat").GetAttribute("data-shown")));
        Assert.Contains("Filled in", page.Find(".from-question").TextContent, StringComparison.Ordinal);
        Assert.Equal(page.Find(".from-head .figure-text").TextContent, Result(page));
    }

    [Fact]
    public async Task Without_a_project_chosen_all_are_offered_where_parts_can_be_added_up()
    {
        var project = (
            await server.Get<IProjectService>().CreateAsync("Hall bench", LengthUnit.Inch, CommandId.New(), ShopServer.Cancel)
        ).Value!;
        var page = Open("weight");
        Assert.Contains(project.Id.ToString(), page.Find(".from-project a").GetAttribute("href"), StringComparison.Ordinal);
        Assert.Empty(Open("sag").FindAll(".from-project"));
    }

    [Fact]
    public void A_project_that_is_gone_is_told()
    {
        var page = Open($"weight?project={Guid.CreateVersion7()}");
        Assert.Contains("no longer exists", page.Find(".from-project").TextContent, StringComparison.Ordinal);
    }

    private static string Result(IRenderedComponent<WorkingPage> page) => page.Find(".figure-large").TextContent;

    private IRenderedComponent<WorkingPage> Open(string address)
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo("/workings/" + address);
        return Render<WorkingPage>(parameters => parameters.Add(one => one.Name, address.Split('?')[0]));
    }
}
