using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>All that plans rest on, as it stands now, read once.</summary>
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

    public required CutPieces Cut { get; init; }

    public static async Task<Snapshot> LoadAsync(ShopContext db, CancellationToken cancel)
    {
        var parts = await db.Parts.AsNoTracking().OrderBy(part => part.Position).ThenBy(part => part.Id).ToListAsync(cancel);
        return new Snapshot(parts.ToLookup(part => part.ProjectId))
        {
            Materials = await MaterialIndex.LoadAsync(db, cancel),
            Projects = await db.Projects.AsNoTracking().ToDictionaryAsync(project => project.Id, cancel),
            Stores = await db.Stores.AsNoTracking().ToDictionaryAsync(store => store.Id, cancel),
            Prices = await db.Prices.AsNoTracking().ToDictionaryAsync(price => price.Id, cancel),
            OnHand = (await StockNow.OnHandAsync(db, cancel)).ToDictionary(piece => piece.Piece.Id),
            Shop = await ShopService.ReadAsync(db, cancel),
            Cut = await CutPieces.LoadAsync(db, cancel),
        };
    }

    /// <summary>A project's rows with what they mean.</summary>
    public IReadOnlyList<PartRow> Rows(StoredProject project)
    {
        if (rows.TryGetValue(project.Id, out var known))
            return known;
        return rows[project.Id] = PartRows.Read(project, [.. parts[project.Id]], Materials);
    }
}
