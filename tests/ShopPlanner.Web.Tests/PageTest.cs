using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using ShopPlanner.Services.Ahead;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Book;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stores;
using ShopPlanner.Services.Trash;
using ShopPlanner.Web.Look;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests;

/// <summary>Pages rendered alone, with the services of a running program behind them.</summary>
internal static class PageTest
{
    /// <summary>A context for pages of that shop; a test may put its own services in another's place afterwards.</summary>
    public static BunitContext For(PlannedShop shop)
    {
        var context = new BunitContext();
        context.JSInterop.Mode = JSRuntimeMode.Loose;
        context.Services.AddMudServices();
        context.Services.AddScoped<Notices>();
        context.Services.AddSingleton(TimeProvider.System);
        context.Services.AddSingleton(shop.Server.Get<IconShelf>());
        context.Services.AddSingleton(shop.Server.Get<IPlanService>());
        context.Services.AddSingleton(shop.Server.Get<IOrderAdvice>());
        context.Services.AddSingleton(shop.Server.Get<IPlanTogether>());
        context.Services.AddSingleton(shop.Server.Get<IPacketChoice>());
        context.Services.AddSingleton(shop.Server.Get<IBookService>());
        context.Services.AddSingleton(shop.Server.Get<IAheadService>());
        context.Services.AddSingleton(shop.Server.Get<IBenchService>());
        context.Services.AddSingleton(shop.Server.Get<IBuyingService>());
        context.Services.AddSingleton(shop.Server.Get<IProjectService>());
        context.Services.AddSingleton(shop.Server.Get<IProjectCopies>());
        context.Services.AddSingleton(shop.Server.Get<ITrashService>());
        context.Services.AddSingleton(shop.Server.Get<IPartService>());
        context.Services.AddSingleton(shop.Server.Get<IStoreService>());
        context.Services.AddSingleton(shop.Server.Get<IMaterialService>());
        context.Services.AddSingleton(shop.Server.Get<IShopService>());
        return context;
    }
}
