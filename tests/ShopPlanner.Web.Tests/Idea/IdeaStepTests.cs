using Bunit;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Idea;
using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Tests.Idea;

/// <summary>Steps of an idea, taken back by the keys; and one page after another in the same place.</summary>
public sealed class IdeaStepTests : IdeaPageContext
{
    [Fact]
    public async Task Two_quick_presses_take_two_steps_back_and_forth()
    {
        var page = Open();
        foreach (var width in new[] { "24", "26" })
        {
            Field(page, "Outside width").Typed(width);
            await page.WaitForAssertionAsync(
                () => Assert.Equal(width, Field(page, "Outside width").GetAttribute("data-kept")),
                Patience
            );
            // A change of another thing between them keeps the two apart.
            Field(page, "Outside height").Typed(width + " 1/2");
            await page.WaitForAssertionAsync(
                () => Assert.Equal(width + " 1/2", Field(page, "Outside height").GetAttribute("data-kept")),
                Patience
            );
        }

        await PressAsync(page, isRedo: false);
        Assert.Equal("24", Field(page, "Outside width").GetAttribute("data-shown"));
        await PressAsync(page, isRedo: true);
        Assert.Equal("26", Field(page, "Outside width").GetAttribute("data-shown"));
        Assert.Equal("26 1/2", Field(page, "Outside height").GetAttribute("data-shown"));
    }

    [Fact]
    public async Task Another_projects_page_in_the_same_place_shows_its_own_idea()
    {
        var other = (await Ideas.BeginAsync("table", "Kitchen table", CommandId.New(), ShopServer.Cancel)).Value!.Id;
        var bare = (await Server.Get<IProjectService>().CreateAsync("Gate", LengthUnit.Inch, CommandId.New(), ShopServer.Cancel))
            .Value!
            .Id;
        var page = Open();
        page.Render(idea => idea.Add(one => one.Id, other));
        await page.WaitForAssertionAsync(() => Assert.Equal("Table", page.Find(".idea-sizes h2").TextContent), Patience);
        page.Render(idea => idea.Add(one => one.Id, bare));
        await page.WaitForAssertionAsync(() => Assert.Contains("No design yet", page.Markup, StringComparison.Ordinal), Patience);
    }

    private static Task PressAsync(IRenderedComponent<IdeaPage> page, bool isRedo) =>
        page.InvokeAsync(() =>
        {
            var steps = page.FindComponent<StepButtons>().Instance;
            return Task.WhenAll(steps.Step(Guid.NewGuid(), isRedo), steps.Step(Guid.NewGuid(), isRedo));
        });
}
