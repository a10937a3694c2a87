using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Access;
using ShopPlanner.Services.Ahead;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Bench.Bin;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Book;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Demo;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Paper;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Facade;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Publishing;
using ShopPlanner.Services.Search;
using ShopPlanner.Services.Setup;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Postgres;
using ShopPlanner.Services.Stores;
using ShopPlanner.Services.Trash;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services;

/// <summary>Registers what the shop can do.</summary>
public static class ServicesSetup
{
    /// <summary>Registers all services. Before anything else is asked, the program calls <see
    /// cref="ShopDatabase.OpenAsync"/>; a
    /// host that does not is opened by the planning worker when it starts.</summary>
    public static IServiceCollection AddShopPlanner(this IServiceCollection services, ServicesOptions options)
    {
        services.AddLogging();
        services.TryAddSingleton(TimeProvider.System);
        AddStorage(services, options);
        services.AddSingleton<AccessFile>();
        services.AddSingleton<IAccessService, AccessService>();
        services.AddSingleton<IShareService, ShareService>();
        services.AddSingleton<IShopService, ShopService>();
        services.AddSingleton<IMaterialService, MaterialService>();
        services.AddSingleton<IProjectService, ProjectService>();
        services.AddSingleton<IPartService, PartService>();
        services.AddSingleton<IPartExchange, PartExchange>();
        services.AddSingleton<IBillTaking, BillTaking>();
        services.AddSingleton<IWorkingService, WorkingService>();
        services.AddSingleton<IPartTaking, PartTaking>();
        services.AddSingleton<BuiltInDesigns>();
        services.AddSingleton<IDesignService, DesignService>();
        services.AddSingleton<IIdeaService, IdeaService>();
        services.AddSingleton<IPieceService, PieceService>();
        services.AddSingleton<IStoreService, StoreService>();
        services.AddSingleton<IStockExchange, StockExchange>();
        services.AddSingleton<StockService>();
        services.AddSingleton<IStockService>(given => given.GetRequiredService<StockService>());
        services.AddSingleton<IBinService, BinService>();
        services.AddSingleton<IStockConditionService, StockConditionService>();
        services.AddSingleton<GoodCopies>();
        services.AddSingleton<SecondFolder>();
        services.AddSingleton<CopyMaker>();
        services.AddSingleton<PageCheck>();
        services.AddSingleton<IConditionService, ConditionService>();
        services.AddSingleton<IRestoreService, RestoreService>();
        services.AddSingleton<IBackupService, BackupService>();
        services.AddSingleton<IArchiveService, ArchiveService>();
        services.AddSingleton<IPublishService, PublishService>();
        services.AddSingleton<IBenchService, BenchService>();
        services.AddSingleton<BenchReading>();
        services.AddSingleton<BenchCommands>();
        services.AddSingleton<CutTicks>();
        services.AddSingleton<IAheadService, AheadService>();
        services.AddSingleton<IBookService, BookService>();
        services.AddSingleton<ILeftoverProposals, LeftoverProposals>();
        services.AddSingleton<IWrongCutService, WrongCutService>();
        services.AddSingleton<WrongCutViews>();
        services.AddSingleton<RestDrafting>();
        services.AddSingleton<RestLooks>();
        services.AddSingleton<RestPlanning>();
        services.AddSingleton<IBuyingService, BuyingService>();
        services.AddSingleton<ListReading>();
        services.AddSingleton<SupplyKeeping>();
        services.AddSingleton<DesignSupplies>();
        services.AddSingleton<IWorkService, WorkService>();
        services.AddSingleton<WorkReading>();
        services.AddSingleton<WorkChanging>();
        services.AddSingleton<FinishListing>();
        services.AddSingleton<WeekendRequests>();
        services.AddSingleton<IWeekendService, WeekendService>();
        services.AddSingleton<IWeekendFeedService, WeekendFeedService>();
        services.AddSingleton<ISetupService, SetupService>();
        services.AddSingleton<DemoProjects>();
        services.AddSingleton<DemoCutting>();
        services.AddSingleton<DemoSeed>();
        services.AddSingleton<IDemoService, DemoService>();
        services.AddSingleton<IProjectCopies, ProjectCopies>();
        services.AddSingleton<ITrashService, TrashService>();
        services.AddSingleton<ISearchService, SearchService>();
        AddPlanning(services);
        return services;
    }

    private static void AddPlanning(IServiceCollection services)
    {
        services.AddSingleton<ICutPlanner, ShopCutPlanner>();
        services.AddSingleton<ReadPlans>();
        services.AddSingleton<PlanReading>();
        services.AddSingleton<PlanWithdrawal>();
        services.AddSingleton<PlanDrafts>();
        services.AddSingleton<PlanStorage>();
        services.AddSingleton<IPlanTogether, PlanComparisons>();
        services.AddSingleton<PlanJobEnds>();
        services.AddSingleton<PlanJobs>();
        services.AddSingleton<PlanRun>();
        services.AddSingleton<CostlyWork>();
        services.AddSingleton<PacketPrinter>();
        services.AddSingleton<LabelReading>();
        services.AddSingleton<ILabelService, LabelService>();
        services.AddSingleton<ITemplateService, TemplateService>();
        services.AddSingleton<IPacketChoice, PacketChoice>();
        services.AddSingleton<IPlanService, PlanService>();
        services.AddSingleton<IOrderAdvice, OrderAdvice>();
        services.AddHostedService<PlanWorker>();
        services.AddHostedService<DailyBackup>();
        services.AddHostedService<DataWatch>();
        services.AddHostedService<TrashSweep>();
    }

    private static void AddStorage(IServiceCollection services, ServicesOptions options)
    {
        services.AddSingleton(options);
        services.AddSingleton(new DataFolder(options.DataFolder));
        services.AddSingleton<ShopContextFactory>(p =>
            options.Database is { } server
                ? new PostgresContextFactory(server, p.GetServices<IInterceptor>())
                : new SqliteContextFactory(p.GetRequiredService<DataFolder>().Database, p.GetServices<IInterceptor>())
        );
        services.AddSingleton<IDbContextFactory<ShopContext>>(p => p.GetRequiredService<ShopContextFactory>());
        services.AddSingleton<ShopWork>();
        services.AddSingleton<ShopCommands>();
        services.AddSingleton<StorageSteps>();
        services.AddSingleton<BackupFile>();
        services.AddSingleton<RestoreSwap>();
        services.AddSingleton<FreeSpace>();
        services.AddSingleton<LowDisk>();
        services.AddSingleton<ShopRestore>();
        services.AddSingleton<ShopHealth>();
        services.AddSingleton<IShopHealth>(given => given.GetRequiredService<ShopHealth>());
        services.AddSingleton(p => new ShopDatabase(
            options,
            p.GetRequiredService<DataFolder>(),
            p.GetRequiredService<ShopContextFactory>(),
            p.GetRequiredService<BackupFile>(),
            p.GetRequiredService<DemoSeed>(),
            p.GetRequiredService<TimeProvider>(),
            p.GetRequiredService<ShopRestore>(),
            p.GetRequiredService<ShopHealth>(),
            p.GetRequiredService<ILogger<ShopDatabase>>()
        ));
    }
}
