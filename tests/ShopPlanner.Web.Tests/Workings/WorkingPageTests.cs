using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Services.Common;
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

    private static string Result(IRenderedComponent<WorkingPage> page) => page.Find(".figure-large").TextContent;

    private IRenderedComponent<WorkingPage> Open(string address)
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo("/workings/" + address);
        return Render<WorkingPage>(parameters => parameters.Add(one => one.Name, address.Split('?')[0]));
    }
}
