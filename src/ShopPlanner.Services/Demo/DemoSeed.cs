using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Demo;

/// <summary>Puts the demo into an empty shop, as if somebody had typed it.</summary>
internal sealed class DemoSeed
{
    private const string Device = "demo";
    private const long Gap = 1 << 20;

    private readonly ShopContext db;
    private readonly MaterialIndex materials;
    private readonly TimeProvider clock;
    private readonly CancellationToken cancel;

    private DemoSeed(ShopContext db, MaterialIndex materials, TimeProvider clock, CancellationToken cancel) =>
        (this.db, this.materials, this.clock, this.cancel) = (db, materials, clock, cancel);

    /// <summary>Does nothing where there is a project, a store or a piece of stock.</summary>
    public static async Task AddToEmptyShopAsync(ShopContext db, TimeProvider clock, CancellationToken cancel)
    {
        if (await db.Projects.AnyAsync(cancel) || await db.Stores.AnyAsync(cancel) || await db.Pieces.AnyAsync(cancel))
            return;
        var seed = new DemoSeed(db, await MaterialIndex.LoadAsync(db, cancel), clock, cancel);
        var files = DemoFiles.Read();
        foreach (var project in files.Projects)
            await seed.AddAsync(project);
        foreach (var store in files.Stores)
            seed.Add(store);
        foreach (var piece in files.Stock.Pieces)
            await seed.AddAsync(piece, UnitOf(files.Stock.Unit));
        await db.SaveChangesAsync(cancel);
    }

    private async Task AddAsync(DemoProject demo)
    {
        var project = await ProjectService.AddAsync(db, demo.Name, UnitOf(demo.Unit), clock, cancel);
        project.Note = demo.Note;
        for (var i = 0; i < demo.Parts.Count; i++)
        {
            var part = demo.Parts[i];
            var row = new StoredPart
            {
                Id = Guid.CreateVersion7(),
                ProjectId = project.Id,
                Position = i * Gap,
            };
            row.Take(
                new PartTexts(
                    row.Id,
                    part.Mark,
                    part.Name,
                    part.Material,
                    part.Length,
                    part.Width,
                    part.Quantity,
                    part.CanTurn,
                    part.Note
                )
            );
            db.Parts.Add(row);
        }

        await db.SaveChangesAsync(cancel);
    }

    private void Add(DemoStore demo)
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

    private async Task AddAsync(DemoPiece demo, LengthUnit unit)
    {
        var faults = new List<Fault>();
        var material = materials.FindTyped(demo.Material);
        if (material is null)
            faults.Add(Fault.Of("material", demo.Material, "is no known material"));
        var (length, width) = PieceReader.Sizes(material, demo.Length, demo.Width, unit, faults);
        var quantity = PieceReader.Quantity(demo.Quantity, faults);
        Refuse("stock.json", faults);
        var (place, kind, reason) =
            demo.Place == "rack"
                ? (StockPlace.Rack, StockEntryKind.Bought, "bought")
                : (StockPlace.Bin, StockEntryKind.Logged, "found in the shop");
        for (var i = 0; i < quantity; i++)
            await Ledger.EnterAsync(db, place, material!.Id, kind, new(length, width, demo.Note, reason, Device), clock, cancel);
    }

    private static LengthUnit UnitOf(string unit) => unit == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;

    private static void Refuse(string file, List<Fault> faults)
    {
        if (faults.Count > 0)
            throw new ShopStartException($"The demo file {file} is wrong: {faults[0]}. Mend it, or start without the demo.");
    }
}
