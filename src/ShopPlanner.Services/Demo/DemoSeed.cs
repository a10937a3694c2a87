using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Demo;

/// <summary>Puts the demo into an empty shop, as if somebody had typed it.</summary>
internal sealed class DemoSeed(DemoProjects projects, DemoCutting cutting, TimeProvider clock)
{
    /// <summary>What the ledger calls the device.</summary>
    public const string Device = "demo";

    /// <summary>Returns whether there is no project, no store and no piece of stock.</summary>
    public static async Task<bool> IsEmptyAsync(ShopContext db, CancellationToken cancel) =>
        !await db.Projects.IgnoreQueryFilters().AnyAsync(cancel)
        && !await db.Stores.AnyAsync(cancel)
        && !await db.Pieces.AnyAsync(cancel);

    /// <summary>Adds the demo; does nothing where there is a project, a store or a piece of stock.</summary>
    /// <exception cref="ShopStartException">A file of the demo is missing or wrong.</exception>
    public async Task AddToEmptyShopAsync(ShopContext db, CancellationToken cancel)
    {
        if (!await IsEmptyAsync(db, cancel))
            return;
        var (files, materials) = (DemoFiles.Read(), await MaterialIndex.LoadAsync(db, cancel));
        await SetAsync(db, files.Saws, cancel);
        foreach (var store in files.Stores)
            Add(db, store, materials);
        foreach (var piece in files.Stock.Pieces)
            await AddAsync(db, piece, UnitOf(files.Stock.Unit), materials, cancel);
        await db.SaveChangesAsync(cancel);
        var added = new Dictionary<string, Guid>(StringComparer.Ordinal);
        foreach (var project in files.Projects)
        {
            var id = added[project.Design] = await projects.AddAsync(db, project, cancel);
            if (project.IsCutting)
                await cutting.CutHalfAsync(db, id, cancel);
        }

        await DemoWeekends.AddAsync(db, files.Weekends, added, cancel);
    }

    /// <summary>Ends the start where a file of the demo is wrong.</summary>
    internal static void Refuse(string file, IEnumerable<Fault> faults)
    {
        if (faults.FirstOrDefault() is { } fault)
            throw new ShopStartException($"The demo file {file} is wrong: {fault}. Correct it, or start without the demo.");
    }

    // Somebody who set up saws and then looks at the demo keeps them.
    private static async Task SetAsync(ShopContext db, DemoSaws demo, CancellationToken cancel)
    {
        if (await db.Shops.AnyAsync(cancel))
            return;
        var usual = await ShopService.ReadAsync(db, cancel);
        var saved = await ShopService.SaveAsync(
            db,
            usual with
            {
                WidestRip = demo.WidestRip,
                HasGuideSaw = demo.HasGuideSaw,
                HasMiterSaw = demo.HasMiterSaw,
                MiterCrosscut = demo.MiterCrosscut,
            },
            cancel
        );
        Refuse("saws.json", saved.Faults);
    }

    private void Add(ShopContext db, DemoStore demo, MaterialIndex materials)
    {
        var store = new StoredStore
        {
            Id = Guid.CreateVersion7(),
            Name = demo.Name,
            NameKey = TextRules.Key(demo.Name),
            Unit = UnitOf(demo.Unit),
            Note = demo.Note,
        };
        db.Stores.Add(store);
        var (faults, reader) = (new List<Fault>(), new PriceReader(store.Unit, materials));
        foreach (var price in demo.Prices)
            if (
                reader.Read(
                    new PriceEdit(null, price.Material, price.Length, price.Width, price.Price, price.InStock, null),
                    faults
                ) is
                { } read
            )
                PriceSaving.Take(PriceSaving.Add(db, store.Id, read), read, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
        Refuse("stores.json", faults);
    }

    private async Task AddAsync(
        ShopContext db,
        DemoPiece demo,
        LengthUnit unit,
        MaterialIndex materials,
        CancellationToken cancel
    )
    {
        var faults = new List<Fault>();
        var material = materials.FindTyped(demo.Material);
        if (material is null)
            faults.Add(Fault.Of("material", demo.Material, "isn't in the materials list"));
        var (length, width) = PieceReader.Sizes(material, demo.Length, demo.Width, unit, faults);
        var quantity = PieceReader.Quantity(demo.Quantity, faults);
        Refuse("stock.json", faults);
        var (place, kind, reason) =
            demo.Place == "rack"
                ? (StockPlace.Rack, StockEntryKind.Bought, "bought")
                : (StockPlace.Bin, StockEntryKind.Logged, "found in the shop");
        var condition = place == StockPlace.Rack ? StockCondition.AsBought(material!.Form) : StockCondition.Sound;
        var note = new LedgerNote(length, width, condition, demo.Note, reason, Device);
        for (var i = 0; i < quantity; i++)
            await Ledger.EnterAsync(db, place, material!.Id, kind, note, clock, cancel);
    }

    private static LengthUnit UnitOf(string unit) => unit == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;
}
