using Bunit;
using ShopPlanner.Web.Features.Idea;

namespace ShopPlanner.Web.Tests.Idea;

/// <summary>Bays and parts picked in the drawing, and extra parts set on the page.</summary>
public sealed class IdeaPickTests : IdeaPageContext
{
    [Theory]
    [InlineData("isometric")]
    [InlineData("front")]
    public void Bays_and_kinds_of_parts_are_buttons_with_names(string view)
    {
        var page = Open(view);
        var picture = page.Find(".piece-picture svg");
        Assert.Equal("group", picture.GetAttribute("role"));
        var stops = picture.QuerySelectorAll("[tabindex='0']");
        Assert.All(stops, stop => Assert.Equal("button", stop.GetAttribute("role")));
        Assert.Equal(2, stops.Count(stop => stop.HasAttribute("data-bay")));
        Assert.Contains(
            stops,
            stop => stop.GetAttribute("aria-label")!.StartsWith("Bay 2, 28 ⁹⁄₁₆″ wide", StringComparison.Ordinal)
        );
        Assert.Contains(stops, stop => stop.GetAttribute("aria-label") == "A, Side");
        Assert.Equal(stops.Length, stops.Select(stop => stop.GetAttribute("aria-label")).Distinct().Count());
    }

    [Fact]
    public async Task A_bay_picked_in_the_drawing_opens_its_form_and_stands_out()
    {
        var page = Open("front");
        await page.InvokeAsync(() => page.Instance.PickBay("bays.bays.1"));
        Assert.Equal("Bay 2", page.Find(".bay-list [aria-pressed='true']").TextContent);
        Assert.StartsWith("Bay 2, clear", page.Find(".bay-fields h3").TextContent, StringComparison.Ordinal);
        var bay = page.Find(".piece-picture [data-bay='bays.bays.1'][tabindex]");
        Assert.Equal("true", bay.GetAttribute("aria-pressed"));
        Assert.NotNull(bay.QuerySelector(".next-cut"));
        var shown = JSInterop.Invocations.Last(one => one.Identifier == "show");
        Assert.Equal(["bays", "bay bays.bays.1"], shown.Arguments.Skip(1).Cast<string>());
    }

    [Fact]
    public async Task A_bay_that_the_design_has_not_is_passed_over()
    {
        var page = Open("front");
        await page.InvokeAsync(() => page.Instance.PickBay("bays.bays.7"));
        Assert.Equal("Whole inside", page.Find(".bay-list [aria-pressed='true']").TextContent);
    }

    [Fact]
    public async Task A_part_picked_in_the_drawing_shows_its_sizes_and_leads_to_its_bay()
    {
        var page = Open("front");
        var shelf = page.Find(".piece-picture [aria-label$=', Shelf']").GetAttribute("data-mark")!;
        await page.InvokeAsync(() => page.Instance.Pick(shelf));
        page.WaitForAssertion(() => Assert.Equal("Shelf", page.Find(".part-detail h3").TextContent), Patience);
        Assert.Equal("true", page.Find(".piece-picture [aria-label$=', Shelf']").GetAttribute("aria-pressed"));
        page.FindAll(".part-detail button")
            .Single(one => one.TextContent.StartsWith("Change it in", StringComparison.Ordinal))
            .Click();
        Assert.StartsWith("Bay", page.Find(".bay-fields h3").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_extra_part_is_repeated_joined_and_taken_away()
    {
        var page = Open("front");
        Field(page, "Name of the new part").Typed("Batten");
        await page.Find("form[data-form='new part']").PressAsync();
        page.WaitForAssertion(
            () => Assert.Contains(Marks(page), row => row.Contains("Batten", StringComparison.Ordinal)),
            Patience
        );
        Field(page, "Copies in a row, from each corner").Typed("3");
        page.WaitForAssertion(() => Assert.Single(page.FindAll("[data-field='parts.0.repeat.step.2']")), Patience);
        page.Find("[data-field='parts.0.repeat.step.2']").Typed("width / 10");
        page.WaitForAssertion(
            () => Assert.Contains(Marks(page), row => row.Contains('3') && row.Contains("Batten", StringComparison.Ordinal)),
            Patience
        );
        await page.InvokeAsync(() => Field(page, "Join batten to").Change("Side"));
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".own-joint")), Patience);
        Assert.Contains(
            page.FindAll(".fault-places button"),
            one => one.TextContent.StartsWith("Batten: joint", StringComparison.Ordinal)
        );
        page.Find("[data-field='parts.0.joints.0.along']").Typed("Z");
        await RemoveAsync(page, "Remove: Glued: Side");
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".own-joint")), Patience);
        await RemoveAsync(page, "Remove: Batten");
        page.WaitForAssertion(
            () => Assert.DoesNotContain(Marks(page), row => row.Contains("Batten", StringComparison.Ordinal)),
            Patience
        );
    }

    // Found and pressed in the page's own turn: what is saved draws it again in between.
    private static Task RemoveAsync(IRenderedComponent<IdeaPage> page, string name) =>
        page.InvokeAsync(() => page.FindAll("button").Single(one => one.GetAttribute("aria-label") == name).Click());

    private static IEnumerable<string> Marks(IRenderedComponent<IdeaPage> page) =>
        page.FindAll(".idea-parts tbody tr").Select(row => row.TextContent);
}
