using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Idea;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Idea;

/// <summary>The idea of a project, with the services of a running program behind it.</summary>
public sealed class IdeaPageTests : IdeaPageContext
{
    [Fact]
    public void It_opens_with_sizes_parts_and_the_places_of_the_project()
    {
        var page = Open();
        Assert.Equal("30", Field(page, "Outside width").GetAttribute("data-shown"));
        Assert.StartsWith("30″ × 11 ¼″ × 60″", page.Find(".idea-outside").TextContent, StringComparison.Ordinal);
        Assert.Contains(page.FindAll(".idea-parts tbody tr"), row => row.TextContent.Contains("Side", StringComparison.Ordinal));
        Assert.Equal(
            ["Idea", "Parts", "Buy", "Cuts", "Build", "Finish", "Publish"],
            page.FindAll("nav[aria-label='Steps of the project'] a").Select(link => link.TextContent)
        );
        Assert.Equal("Idea", page.Find("nav[aria-label='Steps of the project'] a[aria-current='page']").TextContent);
    }

    [Fact]
    public async Task Typing_a_width_changes_the_parts_at_once_and_is_kept()
    {
        var page = Open();
        Field(page, "Outside width").Typed("24 1/2");
        Assert.StartsWith("24 ½″", page.Find(".idea-outside").TextContent, StringComparison.Ordinal);
        await page.WaitForAssertionAsync(
            () => Assert.Equal("24 1/2", Field(page, "Outside width").GetAttribute("data-kept")),
            Patience
        );
        Assert.Equal("24 1/2", (await Ideas.GetAsync(Project, ShopServer.Cancel))!.Idea.Changed["width"]);
        Assert.Equal("Undo outside width", page.FindAll(".sheet-bar button")[0].GetAttribute("aria-label"));
        await page.FindAll(".sheet-bar button")[0].ClickAsync(new());
        Assert.Equal("30", Field(page, "Outside width").GetAttribute("data-shown"));
        Assert.StartsWith("30″", page.Find(".idea-outside").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_slider_writes_the_field_and_the_field_moves_the_slider()
    {
        var page = Open();
        Slider(page, "width").Typed($"{(20 * 16) + 1}");
        Assert.Equal("20 1/16", Field(page, "Outside width").GetAttribute("data-shown"));
        Assert.Equal("321", Slider(page, "width").GetAttribute("data-shown"));
        Field(page, "Outside width").Typed("33");
        Assert.Equal((528, 224, 576), (Number(page, "data-shown"), Number(page, "min"), Number(page, "max")));
    }

    [Fact]
    public void A_value_beyond_its_limit_is_marked_beside_its_field_and_the_last_piece_stays()
    {
        var page = Open();
        Field(page, "Outside width").Typed("99");
        Assert.Equal("true", Field(page, "Outside width").GetAttribute("aria-invalid"));
        Assert.Contains("too large", page.Find(".dimension .fault").TextContent, StringComparison.Ordinal);
        Assert.Contains("stale", page.Find(".idea-more").ClassList);
        Assert.True(page.Find(".make-parts").HasAttribute("disabled"));
    }

    [Fact]
    public void A_height_beyond_all_reason_is_refused_in_the_designs_unit()
    {
        var page = Open();
        Field(page, "Outside height").Typed("6040");
        var fault = page.Find(".dimension .fault").TextContent;
        Assert.Contains("3,937 in", fault, StringComparison.Ordinal);
        Assert.DoesNotContain(" m:", fault, StringComparison.Ordinal);
        Field(page, "Outside height").Typed("90");
        page.WaitForAssertion(
            () => Assert.Contains("at most 84″", page.Find(".dimension .fault").TextContent, StringComparison.Ordinal),
            Patience
        );
    }

    [Fact]
    public void A_part_that_is_chosen_shows_how_its_length_came_about()
    {
        var page = Open();
        page.FindAll(".idea-parts .mark-ring")
            .First(button => button.GetAttribute("aria-label")!.EndsWith("Bottom", StringComparison.Ordinal))
            .Click();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".part-detail .formula")), Patience);
        Assert.Contains("part=", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        Assert.Contains("dado", page.Find(".part-detail .joints").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bay_is_filled_and_emptied()
    {
        var page = Open();
        page.FindAll(".bay-list button").Single(button => button.TextContent == "Bay 2").Click();
        Field(page, "Add to this bay").Change("drawers");
        Assert.Contains(page.FindAll(".bay-list li"), row => row.TextContent.Contains("Drawers", StringComparison.Ordinal));
        page.FindAll(".node button").Last(button => button.GetAttribute("aria-label") == "Remove: Drawers").Click();
        Assert.DoesNotContain(page.FindAll(".bay-list li"), row => row.TextContent.Contains("Drawers", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_buttons_change_that_another_device_was_before_says_so()
    {
        var notices = Render<NoticeLine>();
        var page = Open();
        var stored = (await Ideas.GetAsync(Project, ShopServer.Cancel))!;
        var elsewhere = stored.Idea with { Changed = stored.Idea.Changed.SetItem("width", "25") };
        Assert.True((await Ideas.SaveAsync(Project, elsewhere, stored.Version, "width", ShopServer.Cancel)).Ok);
        page.FindAll(".bay-list button").Single(button => button.TextContent == "Bay 2").Click();
        Field(page, "Add to this bay").Change("drawers");
        await notices.WaitForAssertionAsync(
            () => Assert.Contains("Another device changed this design", notices.Markup, StringComparison.Ordinal),
            Patience
        );
        Assert.StartsWith("25″", page.Find(".idea-outside").TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_material_of_the_shop_brings_its_thickness()
    {
        var page = Open();
        Field(page, "Case").Typed("mdf-3-4");
        page.WaitForAssertion(
            () =>
                Assert.Contains(
                    page.FindAll(".idea-parts tr"),
                    row => row.TextContent.Contains("MDF 3/4", StringComparison.Ordinal) && row.TextContent.Contains('¾')
                ),
            Patience
        );
    }

    [Fact]
    public async Task A_size_measured_in_the_shop_is_taken_over_by_a_button()
    {
        var stored = (await Ideas.GetAsync(Project, ShopServer.Cancel))!;
        var thin = stored.Idea.Document.Materials.Single(one => one.Role == "case") with
        {
            Thickness = Length.FromInches(0, 11, 16),
        };
        var design = stored.Idea.Document.WithMaterial(thin);
        var saved = await Ideas.SaveAsync(
            Project,
            stored.Idea with
            {
                Document = design,
            },
            stored.Version,
            "case",
            ShopServer.Cancel
        );
        Assert.True(saved.Ok, string.Join("; ", saved.Faults));
        var page = Open();
        Assert.Contains("is ²³⁄₃₂″ thick", page.Find(".other-size").TextContent, StringComparison.Ordinal);
        await page.Find("button[aria-label=\"Use the shop's size: Case\"]").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".other-size")), Patience);
        Assert.Contains(page.FindAll(".idea-parts tr"), row => row.TextContent.Contains("²³⁄₃₂", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_design_that_changed_after_its_parts_were_made_says_so_and_shows_what_an_update_changes()
    {
        var page = Open();
        await page.Find(".make-parts").PressAsync();
        Assert.Equal("Parts list is up to date", page.Find(".make-parts").TextContent);
        Assert.Equal("Open parts list", Assert.Single(page.FindAll(".sheet-bar .first")).TextContent);
        Field(page, "Outside width").Typed("24");
        await page.WaitForAssertionAsync(() => Assert.Equal("Update parts", page.Find(".make-parts").TextContent), Patience);
        Assert.Contains("The design changed", page.Find(".parts-changed").TextContent, StringComparison.Ordinal);
        await page.Find(".make-parts").ClickAsync(new());
        var changes = page.Find(".parts-update").TextContent;
        Assert.Contains("Your own rows and edits stay", changes, StringComparison.Ordinal);
        Assert.Contains("Bottom", changes, StringComparison.Ordinal);
        await page.Find(".parts-update .first").PressAsync();
        Assert.Empty(page.FindAll(".parts-update, .parts-changed"));
        Assert.Equal("Parts list is up to date", page.Find(".make-parts").TextContent);
    }

    [Fact]
    public async Task Parts_are_made_and_a_mark_that_stands_twice_is_asked_about()
    {
        var own = new PartTexts(Guid.CreateVersion7(), "A", "Wedge", "pine-1x3", "4", "", "1", false, "");
        await Server.Get<IPartService>().SaveAsync(Project, [new PartEdit(own, null)], ShopServer.Cancel);
        var page = Open();
        await page.Find(".make-parts").PressAsync();
        Assert.Contains("Wedge", page.Find(".notice.warn").TextContent, StringComparison.Ordinal);
        await page.FindAll(".notice.warn button")[0].PressAsync();
        Assert.Empty(page.FindAll("div.notice.warn"));
        var rows = (await Server.Get<IPartService>().GetAsync(Project, ShopServer.Cancel))!.Rows;
        Assert.Equal("Side", rows.Single(row => row.Texts.Mark == "A").Texts.Name);
        Assert.Contains(rows, row => row.Texts.Name == "Wedge");
    }

    [Fact]
    public void Two_sizes_stand_side_by_side()
    {
        var page = Open();
        page.FindAll("button").Single(button => button.TextContent == "Keep this size to compare").Click();
        Field(page, "Outside width").Typed("20");
        var outside = page.FindAll(".compare tbody tr")[0].QuerySelectorAll("td").Select(cell => cell.TextContent).ToList();
        Assert.StartsWith("30″", outside[0], StringComparison.Ordinal);
        Assert.StartsWith("20″", outside[1], StringComparison.Ordinal);
        Assert.Contains("no price", page.Find(".compare").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Designs_are_listed_and_one_starts_a_project()
    {
        var page = Render<DesignsPage>();
        Assert.Contains(page.FindAll(".design h3"), head => head.TextContent == "Pantry cupboard");
        await page.FindAll("button")
            .Single(button => button.GetAttribute("aria-label") == "Start a project from this: Pantry cupboard")
            .PressAsync();
        Assert.EndsWith("/idea", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        Assert.Contains(
            await Server.Get<IProjectService>().ListAsync(false, ShopServer.Cancel),
            one => one.Name == "Pantry cupboard"
        );
    }

    [Theory]
    [InlineData("design.json", "application/json", "shop-planner/design")]
    [InlineData("parts.csv", "text/csv", "Side")]
    [InlineData("scene.gltf", "model/gltf+json", "\"asset\"")]
    [InlineData("outline/A.svg", "image/svg+xml", "<path")]
    [InlineData("view/side.svg", "image/svg+xml", "27 ¹¹⁄₆₄")]
    [InlineData("view/front-phone.svg", "image/svg+xml", "viewBox=\"0 0 390 ")]
    [InlineData("outline/B.svg", "image/svg+xml", "<rect")]
    public async Task Its_files_can_be_had(string name, string type, string holds)
    {
        using var client = new HttpClient(Server.Handler()) { BaseAddress = new Uri("http://localhost") };
        var answer = await client.GetAsync(new Uri(Links.IdeaFile(Project, name), UriKind.Relative), ShopServer.Cancel);
        Assert.Equal((true, type), (answer.IsSuccessStatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Contains(holds, await answer.Content.ReadAsStringAsync(ShopServer.Cancel), StringComparison.Ordinal);
    }

    private static IElement Slider(IRenderedComponent<IdeaPage> page, string dimension) =>
        page.Find($"input[type=range][data-field='slider {dimension}']");

    private static int Number(IRenderedComponent<IdeaPage> page, string attribute) =>
        int.Parse(Slider(page, "width").GetAttribute(attribute)!, System.Globalization.CultureInfo.InvariantCulture);
}
