using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Designs;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Features.Idea;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Idea;

/// <summary>Faults of a design, wherever their fields are.</summary>
public sealed class IdeaFaultTests : PageContext, IAsyncLifetime
{
    private ShopServer server = default!;
    private Guid project;

    private IIdeaService Ideas => server.Get<IIdeaService>();

    public async ValueTask InitializeAsync()
    {
        server = await ShopServer.OpenAsync();
        Services.AddSingleton(server.Get<IDesignService>());
        Services.AddSingleton(Ideas);
        Services.AddSingleton(server.Get<IPieceService>());
        Services.AddSingleton(server.Get<IProjectService>());
        Services.AddSingleton(server.Get<IPartService>());
        Services.AddSingleton(server.Get<IPlanService>());
        Services.AddSingleton(server.Get<IMaterialService>());
        Services.AddSingleton(server.Get<IShopService>());
        project = (await Ideas.BeginAsync("bookcase", "Hall bookcase", CommandId.New(), ShopServer.Cancel)).Value!.Id;
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await server.DisposeAsync();
    }

    // In a section that is closed, and after a reload: without the list the page would be half empty and say nothing.
    [Fact]
    public async Task A_fault_in_a_closed_section_is_listed_beside_the_picture_and_its_place_can_be_opened()
    {
        var stored = (await Ideas.GetAsync(project, ShopServer.Cancel))!;
        var design = stored.Idea.Document.WithMember("frame", "let_in", "3 in");
        var idea = stored.Idea with { Document = design };
        Assert.True((await Ideas.SaveAsync(project, idea, stored.Version, "frame", ShopServer.Cancel)).Ok);
        Services.GetRequiredService<NavigationManager>().NavigateTo(Links.Idea(project));
        var page = Render<IdeaPage>(parameters => parameters.Add(one => one.Id, project));
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
