using Bunit;
using ShopPlanner.Core.Designs;

namespace ShopPlanner.Web.Tests.Idea;

/// <summary>Faults of a design, wherever their fields are.</summary>
public sealed class IdeaFaultTests : IdeaPageContext
{
    // In a section that is closed, and after a reload: without the list the page would be half empty and say nothing.
    [Fact]
    public async Task A_fault_in_a_closed_section_is_listed_beside_the_picture_and_its_place_can_be_opened()
    {
        var stored = (await Ideas.GetAsync(Project, ShopServer.Cancel))!;
        var design = stored.Idea.Document.WithMember("frame", "let_in", "3 in");
        var idea = stored.Idea with { Document = design };
        Assert.True((await Ideas.SaveAsync(Project, idea, stored.Version, "frame", ShopServer.Cancel)).Ok);
        var page = Open();
        Assert.Empty(page.FindAll(".idea-parts"));
        var line = Assert.Single(page.FindAll(".fault-places li"));
        Assert.Contains("‘3″’ goes through the side: less than", line.TextContent, StringComparison.Ordinal);
        var place = line.QuerySelector("button")!;
        Assert.Equal("Go to Frame: dado depth for bottom and top", place.GetAttribute("aria-label"));
        place.Click();
        var shown = JSInterop.Invocations.Last(one => one.Identifier == "show");
        Assert.Equal(["frame", "frame.let_in"], shown.Arguments.Skip(1));
    }
}
