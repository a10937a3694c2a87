using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Features.Idea;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Idea;

/// <summary>Renders the idea page of a bookcase, with the services of a running program behind it.</summary>
public abstract class IdeaPageContext : PageContext, IAsyncLifetime
{
    protected static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private protected ShopServer Server { get; private set; } = default!;

    protected Guid Project { get; private set; }

    protected IIdeaService Ideas => Server.Get<IIdeaService>();

    public async ValueTask InitializeAsync()
    {
        Server = await ShopServer.OpenAsync();
        Services.AddSingleton(Server.Get<IDesignService>());
        Services.AddSingleton(Ideas);
        Services.AddSingleton(Server.Get<IPieceService>());
        Services.AddSingleton(Server.Get<IProjectService>());
        Services.AddSingleton(Server.Get<IPartService>());
        Services.AddSingleton(Server.Get<IPlanService>());
        Services.AddSingleton(Server.Get<IMaterialService>());
        Services.AddSingleton(Server.Get<IShopService>());
        Project = (await Ideas.BeginAsync("bookcase", "Hall bookcase", CommandId.New(), ShopServer.Cancel)).Value!.Id;
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await Server.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    protected static IElement Field(IRenderedComponent<IdeaPage> page, string label) => Named(page, label);

    /// <summary>Opens the page, at a view where one is named.</summary>
    protected IRenderedComponent<IdeaPage> Open(string? view = null)
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo(Links.Idea(Project, view));
        return Render<IdeaPage>(parameters => parameters.Add(one => one.Id, Project));
    }
}
