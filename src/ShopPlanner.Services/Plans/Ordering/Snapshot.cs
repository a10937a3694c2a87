using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>What plans rest on, as it stands now, read once and no more of it than is asked about.</summary>
internal sealed class Snapshot
{
    private readonly ILookup<Guid, StoredPart> parts;
    private readonly Dictionary<Guid, IReadOnlyList<PartRow>> rows = [];

    private Snapshot(ILookup<Guid, StoredPart> parts) => this.parts = parts;

    public required MaterialIndex Materials { get; init; }

    public required IReadOnlyDictionary<Guid, StoredProject> Projects { get; init; }

    public required IReadOnlyDictionary<Guid, StoredStore> Stores { get; init; }

    public required IReadOnlyDictionary<Guid, StoredPrice> Prices { get; init; }

    public required IReadOnlyDictionary<Guid, PieceNow> OnHand { get; init; }

    public required ShopSettings Shop { get; init; }

    /// <summary>Which time each project is built, by its id.</summary>
    public required IReadOnlyDictionary<Guid, int> Builds { get; init; }

    public required CutPieces Cut { get; init; }

    /// <summary>Reads what the request of an order is made from.</summary>
    public static async Task<Snapshot> ForOrderAsync(ShopContext db, ReadPlans plans, PlanOrder order, CancellationToken cancel)
    {
        var builds = await ProjectStandings.NextBuildsAsync(db, order.Projects, cancel);
        return await LoadAsync(db, plans, order.Projects, builds, await StockNow.OnHandAsync(db, cancel), cancel);
    }

    /// <summary>Reads what a plan is held against: of the pieces on hand, only those that it cuts.</summary>
    public static async Task<Snapshot> ForPlanAsync(ShopContext db, ReadPlans plans, PlanRecord record, CancellationToken cancel)
    {
        var projects = record.Draft.Order.Projects;
        var pieces = record.Draft.PiecesOf(record.Plan).Select(used => used.PieceId).ToList();
        var builds = await db
            .PlanProjects.Where(own => own.PlanId == record.Stored.Id)
            .ToDictionaryAsync(own => own.ProjectId, own => own.Build, cancel);
        return await LoadAsync(db, plans, projects, builds, await StockNow.OnHandAsync(db, pieces, cancel), cancel);
    }

    /// <summary>Reads what there is to cut from, and no project.</summary>
    public static async Task<Snapshot> OfStockAsync(ShopContext db, CancellationToken cancel) =>
        await LoadAsync(db, null, [], new Dictionary<Guid, int>(), await StockNow.OnHandAsync(db, cancel), cancel);

    private static async Task<Snapshot> LoadAsync(
        ShopContext db,
        ReadPlans? plans,
        IReadOnlyCollection<Guid> projects,
        IReadOnlyDictionary<Guid, int> builds,
        List<PieceNow> onHand,
        CancellationToken cancel
    ) =>
        new(await PartsAsync(db, projects, cancel))
        {
            Materials = await MaterialIndex.LoadAsync(db, cancel),
            Projects = await ProjectsAsync(db, projects, cancel),
            Stores = await db.Stores.AsNoTracking().ToDictionaryAsync(store => store.Id, cancel),
            Prices = await db.Prices.AsNoTracking().ToDictionaryAsync(price => price.Id, cancel),
            OnHand = onHand.ToDictionary(piece => piece.Piece.Id),
            Shop = await ShopService.ReadAsync(db, cancel),
            Builds = builds,
            Cut = plans is null ? CutPieces.None : await CutPieces.LoadAsync(db, plans, builds, cancel),
        };

    private static async Task<ILookup<Guid, StoredPart>> PartsAsync(
        ShopContext db,
        IReadOnlyCollection<Guid> projects,
        CancellationToken cancel
    )
    {
        var wanted = projects.Count == 0 ? [] : await PartsOf(db, projects).ToListAsync(cancel);
        return wanted.ToLookup(part => part.ProjectId);
    }

    private static IQueryable<StoredPart> PartsOf(ShopContext db, IReadOnlyCollection<Guid> projects) =>
        db
            .Parts.AsNoTracking()
            .Where(part => projects.Contains(part.ProjectId))
            .OrderBy(part => part.Position)
            .ThenBy(part => part.Id);

    private static async Task<Dictionary<Guid, StoredProject>> ProjectsAsync(
        ShopContext db,
        IReadOnlyCollection<Guid> projects,
        CancellationToken cancel
    ) =>
        projects.Count == 0
            ? []
            : await db
                .Projects.AsNoTracking()
                .Where(project => projects.Contains(project.Id))
                .ToDictionaryAsync(project => project.Id, cancel);

    /// <summary>A project's rows with what they mean.</summary>
    public IReadOnlyList<PartRow> Rows(StoredProject project)
    {
        if (rows.TryGetValue(project.Id, out var known))
            return known;
        return rows[project.Id] = PartRows.Read(project, [.. parts[project.Id]], Materials);
    }
}
