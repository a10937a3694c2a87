using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Demo;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Setup;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Stores;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services.Tests.Commands;

/// <summary>Every method of the services that makes something.</summary>
internal static partial class MakingCases
{
    private const string Request = """
        { "format": "shop-planner/cut-request", "version": 1, "unit": "in",
          "materials": [ { "id": "pine-1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" } ],
          "stock": [], "parts": [ { "id": "P", "name": "Post", "material": "pine-1x3", "length": 30, "width": "2 1/2" } ] }
        """;

    private static readonly Dictionary<string, string> Slats = new()
    {
        ["span"] = "32 1/2",
        ["member"] = "2 1/2",
        ["count"] = "5",
    };

    private static CancellationToken Cancel => TestShop.Cancel;

    public static IReadOnlyList<MakingCase> All { get; } =
    [.. Ordinary(), .. Setup(), .. Designs(), .. AtTheBench(), .. Buying(), .. Work(), .. FromFiles(), .. WrongCuts(), .. Bin()];

    private static IEnumerable<MakingCase> Setup() =>
        [
            Of<ISetupService, StoreView>(
                nameof(ISetupService.AddStoreAsync),
                _ =>
                    (shop, id) =>
                        shop.Get<ISetupService>()
                            .AddStoreAsync(new FirstStore("Highway store", Some.Inch, [Some.Price("72", "5")]), id, Cancel)
            ),
            Of<ISetupService, IReadOnlyList<StockPiece>>(
                nameof(ISetupService.AddOffcutsAsync),
                _ =>
                    (shop, id) =>
                        shop.Get<ISetupService>().AddOffcutsAsync("1x3 pine 20\npine 1x3 18", Some.Inch, Some.Device, id, Cancel)
            ),
            Of<IDemoService, Done>(
                nameof(IDemoService.LoadAsync),
                async given =>
                {
                    await EmptyAsync(given.Shop);
                    return (shop, id) => shop.Get<IDemoService>().LoadAsync(id, Cancel);
                }
            ),
        ];

    internal static Task<Outcome<Done>> EmptyAsync(TestShop shop) =>
        shop.Work.WriteAsync<Done>(
            async db =>
            {
                await db.Entries.ExecuteDeleteAsync(Cancel);
                await db.Pieces.ExecuteDeleteAsync(Cancel);
                await db.PartSteps.ExecuteDeleteAsync(Cancel);
                await db.Parts.ExecuteDeleteAsync(Cancel);
                await db.Projects.ExecuteDeleteAsync(Cancel);
                await db.Prices.ExecuteDeleteAsync(Cancel);
                await db.Stores.ExecuteDeleteAsync(Cancel);
                return Done.Value;
            },
            Cancel
        );

    private static IEnumerable<MakingCase> Ordinary() =>
        [
            Of<IPlanService, PlanJobView>(
                nameof(IPlanService.StartAsync),
                given => (shop, id) => shop.Plans.StartAsync(given.Order(), id, Cancel),
                job => $"{job.Id}"
            ),
            Of<IProjectService, ProjectView>(
                nameof(IProjectService.CreateAsync),
                _ => (shop, id) => shop.Projects.CreateAsync("Hall bench", Some.Inch, id, Cancel)
            ),
            Of<IStoreService, StoreView>(
                nameof(IStoreService.CreateAsync),
                _ => (shop, id) => shop.Stores.CreateAsync("Highway store", Some.Inch, id, Cancel)
            ),
            Of<IStoreService, StoreView>(
                nameof(IStoreService.SavePriceAsync),
                given => (shop, id) => shop.Stores.SavePriceAsync(given.Store.Id, Some.Price("72", "5"), id, Cancel)
            ),
            Of<IStoreService, StoreView>(
                nameof(IStoreService.ImportCsvAsync),
                given => (shop, id) => shop.Stores.ImportCsvAsync(given.Store.Id, Csv(), TableChoices.Guess, id, Cancel)
            ),
            Of<IMaterialService, MaterialView>(
                nameof(IMaterialService.SaveAsync),
                _ => (shop, id) => shop.Materials.SaveAsync(Oak, Some.Inch, id, Cancel)
            ),
            Of<IStockService, IReadOnlyList<StockPiece>>(
                nameof(IStockService.AddAsync),
                _ => (shop, id) => shop.Stock.AddAsync(Some.Offcut("20", quantity: "3"), Some.Inch, Some.Device, id, Cancel)
            ),
            Of<IStockConditionService, StockPiece>(
                nameof(IStockConditionService.AddBadPlaceAsync),
                async given =>
                {
                    var piece = await given.OffcutAsync("20");
                    var end = new BadPlaceTyped(BadPlaceKind.End, StockEdges.Far, "2", "");
                    return (shop, id) =>
                        shop.Get<IStockConditionService>().AddBadPlaceAsync(piece, end, Some.Inch, Some.Device, id, Cancel);
                }
            ),
            Of<IPartService, PartSheet>(
                nameof(IPartService.PasteAsync),
                given => (shop, id) => shop.Parts.PasteAsync(given.Project.Id, "B\tRail\tpine-1x3\t12\t\t2", id, Cancel)
            ),
            Of<IPartService, PartSheet>(
                nameof(IPartService.ImportAsync),
                given => (shop, id) => shop.Parts.ImportAsync(given.Project.Id, Encoding.UTF8.GetBytes(Request), id, Cancel)
            ),
            Of<IPartExchange, PartSheet>(
                nameof(IPartExchange.ImportCsvAsync),
                given => (shop, id) => shop.Get<IPartExchange>().ImportCsvAsync(given.Project.Id, Table, id, Cancel)
            ),
            Of<IPartExchange, PartSheet>(
                nameof(IPartExchange.CopyAsync),
                async given =>
                {
                    var other = (await Some.ProjectAsync(given.Shop, "Hall bench")).Id;
                    var row = (await given.Shop.Parts.GetAsync(given.Project.Id, Cancel))!.Rows[0].Texts.Id;
                    return (shop, id) => shop.Get<IPartExchange>().CopyAsync(other, given.Project.Id, [row], id, Cancel);
                }
            ),
            Of<IWorkingService, KeptUse>(
                nameof(IWorkingService.KeepAsync),
                given => (shop, id) => KeepAsync(shop, given.Project.Id, id)
            ),
            Of<IWorkingService, KeptWorking>(
                nameof(IWorkingService.PutBackAsync),
                async given =>
                {
                    var kept = (await KeepAsync(given.Shop, given.Project.Id, CommandId.New())).Value!.Working;
                    var gone = (await given.Shop.Get<IWorkingService>().RemoveAsync(kept.Id, Cancel)).Value!;
                    return (shop, id) => shop.Get<IWorkingService>().PutBackAsync(gone, id, Cancel);
                }
            ),
            Of<IBackupService, BackupView>(
                nameof(IBackupService.CreateAsync),
                _ => (shop, id) => shop.Get<IBackupService>().CreateAsync(id, Cancel)
            ),
        ];

    private static IEnumerable<MakingCase> Designs() =>
        [
            Of<IDesignService, DesignView>(
                nameof(IDesignService.SaveAsync),
                async given =>
                {
                    var document = await OwnAsync(given.Shop);
                    return (shop, id) => shop.Get<IDesignService>().SaveAsync(document, id, Cancel);
                },
                Say
            ),
            Of<IDesignService, DesignView>(
                nameof(IDesignService.ImportAsync),
                async given =>
                {
                    var json = Encoding.UTF8.GetBytes(DesignJson.Write(await OwnAsync(given.Shop)));
                    return (shop, id) => shop.Get<IDesignService>().ImportAsync(json, id, Cancel);
                },
                Say
            ),
            Of<IDesignService, DesignView>(
                nameof(IDesignService.PutBackAsync),
                async given =>
                {
                    var designs = given.Shop.Get<IDesignService>();
                    var own = await designs.SaveAsync(await OwnAsync(given.Shop), CommandId.New(), Cancel);
                    var gone = (await designs.RemoveAsync(own.Value!.OwnId!.Value, Cancel)).Value!;
                    return (shop, id) => shop.Get<IDesignService>().PutBackAsync(gone, id, Cancel);
                },
                Say
            ),
            Of<IIdeaService, ProjectView>(
                nameof(IIdeaService.BeginAsync),
                _ => (shop, id) => shop.Get<IIdeaService>().BeginAsync("bookcase", "Hall bookcase", id, Cancel)
            ),
            Of<IProjectCopies, ProjectView>(
                nameof(IProjectCopies.DuplicateAsync),
                async given =>
                {
                    await given.Shop.Get<IIdeaService>().StartAsync(given.Project.Id, "bookcase", CommandId.New(), Cancel);
                    return (shop, id) => shop.Get<IProjectCopies>().DuplicateAsync(given.Project.Id, id, Cancel);
                }
            ),
            Of<IIdeaService, IdeaView>(
                nameof(IIdeaService.StartAsync),
                given => (shop, id) => shop.Get<IIdeaService>().StartAsync(given.Project.Id, "table", id, Cancel),
                idea => $"{idea.ProjectId} {idea.Version} {idea.Idea.Document.Name} {idea.Undo}"
            ),
            Of<IIdeaService, MadeParts>(
                nameof(IIdeaService.MakePartsAsync),
                async given =>
                {
                    await given.Shop.Get<IIdeaService>().StartAsync(given.Project.Id, "bookcase", CommandId.New(), Cancel);
                    return (shop, id) => shop.Get<IIdeaService>().MakePartsAsync(given.Project.Id, true, id, Cancel);
                },
                made => $"{ShopJson.Write(made)} {string.Join(' ', made.Lettered)}"
            ),
        ];

    private static IEnumerable<MakingCase> AtTheBench() =>
        [
            .. Noted(),
            Of<IBenchService, Done>(
                nameof(IBenchService.SetCutAsync),
                async given =>
                {
                    var plan = (await given.PlanAsync()).Summary.Id;
                    return (shop, id) => shop.Bench.SetCutAsync(plan, 0, 1, 1, true, Some.Device, id, Cancel);
                }
            ),
            Of<IBenchService, BenchView>(
                nameof(IBenchService.FinishAsync),
                async given =>
                {
                    var plan = (await given.PlanAsync()).Summary.Id;
                    return (shop, id) => FinishAsync(shop, plan, id);
                }
            ),
            Of<IBenchService, BenchView>(
                nameof(IBenchService.ReopenAsync),
                async given =>
                {
                    var plan = (await given.PlanAsync()).Summary.Id;
                    Assert.True((await FinishAsync(given.Shop, plan, CommandId.New())).Ok);
                    return (shop, id) => shop.Bench.ReopenAsync(plan, 0, 1, Some.Device, id, Cancel);
                }
            ),
        ];

    private static MaterialEdit Oak => new(null, "Barn oak", StockForm.Board, "7/8", "5 1/4");

    private static string Say(DesignView design) => $"{design.Key} {design.Version} {design.Document.Name} {design.SavedUtc:O}";

    private static ReadOnlyMemory<byte> Table => "Part,Material,Length\nRail,pine-1x3,12\n"u8.ToArray();

    private static MemoryStream Csv() => new("material,length,width,price,in stock\nPine 1x3,48,,3.24,yes\n"u8.ToArray());

    private static async Task<DesignDocument> OwnAsync(TestShop shop) =>
        (await shop.Get<IDesignService>().GetAsync("bookcase", Cancel))!.Document with
        {
            Name = "Hall bookcase",
        };

    private static Task<Outcome<KeptUse>> KeepAsync(TestShop shop, Guid project, CommandId id) =>
        shop.Get<IWorkingService>().KeepAsync(project, "spacing", Slats, Some.Inch, id, Cancel);

    private static Task<Outcome<BenchView>> FinishAsync(TestShop shop, Guid plan, CommandId id) =>
        shop.Bench.FinishAsync(plan, new(0, 1, true, [new(0, "5", "", true)]), Some.Device, id, Cancel);

    private static MakingCase Of<TService, T>(
        string method,
        Func<PlannedShop, Func<TestShop, CommandId, Task<Outcome<T>>>> prepare,
        Func<T, string>? say = null
    )
        where T : class => Of<TService, T>(method, given => Task.FromResult(prepare(given)), say);

    private static MakingCase Of<TService, T>(
        string method,
        Func<PlannedShop, Task<Func<TestShop, CommandId, Task<Outcome<T>>>>> prepare,
        Func<T, string>? say = null
    )
        where T : class =>
        new(
            $"{typeof(TService).Name}.{method}",
            async given =>
            {
                var send = await prepare(given);
                return (shop, id) => Answer.OfAsync(send(shop, id), say ?? ShopJson.Write);
            }
        );
}
