using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Search;

/// <summary>Reads everything that can be found.</summary>
internal sealed class SearchIndex(ShopContext db, BuiltInDesigns builtIn, CancellationToken cancel)
{
    private static readonly ILookup<string, (Length A, Length B)> SheetSizes = MaterialCatalogue
        .StoreMaterials.SelectMany(material => material.Sizes.Select(size => (material.Id, Size: (size.Length, size.Width))))
        .ToLookup(one => one.Id, one => one.Size);

    private LengthUnit unit;
    private MaterialIndex materials = new([]);
    private readonly Dictionary<string, MaterialWords> words = [];

    /// <summary>Returns all of it, each kind in the order in which its own page lists it.</summary>
    public async Task<IReadOnlyList<SearchEntry>> LoadAsync()
    {
        unit = (await ShopService.ReadAsync(db, cancel)).Unit;
        materials = await MaterialIndex.LoadAsync(db, cancel);
        var projects = await db.Projects.AsNoTracking().OrderByDescending(project => project.Number).ToListAsync(cancel);
        var stock = await StockNow.OnHandAsync(db, cancel);
        var rows = await RowsAsync(projects);
        var standings = await ProjectStandings.LoadAsync(db, null, cancel);
        return
        [
            .. projects.Select(project => Project(project, standings.Of(project, rows[project.Id]).State)),
            .. projects.SelectMany(project => rows[project.Id].Select((row, place) => Part(project, row, place))),
            .. stock.OrderBy(piece => piece.Piece.Tag.Length).ThenBy(piece => piece.Piece.Tag).Select(Piece),
            .. await MaterialsAsync(stock.ToLookup(piece => piece.Piece.MaterialId)),
            .. (await db.Stores.AsNoTracking().OrderBy(store => store.NameKey).ToListAsync(cancel)).Select(Store),
            .. (await PlanHeaders.ListAsync(db, true, cancel)).Select(Plan),
            .. await DesignsAsync(),
            .. WorkingForms.All.Select(Calculator),
            .. await FiguresAsync(projects),
        ];
    }

    private static SearchEntry Project(StoredProject project, ProjectState state) =>
        new(new(SearchKind.Project, project.Name, "") { Id = project.Id, State = state }, [project.Code], project.Note);

    private async Task<Dictionary<Guid, IReadOnlyList<PartRow>>> RowsAsync(List<StoredProject> projects)
    {
        var all = (
            await db.Parts.AsNoTracking().OrderBy(part => part.Position).ThenBy(part => part.Id).ToListAsync(cancel)
        ).ToLookup(part => part.ProjectId);
        return projects.ToDictionary(
            project => project.Id,
            IReadOnlyList<PartRow> (project) => PartRows.Read(project, [.. all[project.Id]], materials)
        );
    }

    private SearchEntry Part(StoredProject project, PartRow row, int place)
    {
        var (length, width) = (row.Part?.FinishedLength ?? row.Part?.Length, row.Part?.FinishedWidth ?? row.Part?.Width);
        var size = length is { } long1
            ? $"{row.Part!.Quantity} × {LengthFormat.WithUnit(long1, project.Unit)}"
            : row.Texts.Length;
        var mark = PartMarks.Plain(row.Texts.Mark);
        return new(
            new(SearchKind.Part, $"{mark} {row.Texts.Name}".Trim(), Joined(project.Name, $"{size} {row.MaterialName}".Trim()))
            {
                Id = project.Id,
                Row = place,
            },
            [mark, $"{project.Code} {mark}", row.Texts.Name],
            project.Name,
            project.Code,
            row.MaterialName,
            row.Texts.Note
        )
        {
            Material = WordsOf(row.MaterialName),
            Lengths = [.. new[] { length, width }.OfType<Length>()],
            Pairs = length is { } a && width is { } b ? [(a, b)] : [],
            Mark = SearchText.Fold(mark),
            Pieces = row.Part?.Quantity ?? 0,
        };
    }

    private SearchEntry Piece(PieceNow piece)
    {
        var material = materials[piece.Piece.MaterialId];
        var size = LengthFormat.WithUnit(piece.Length, unit);
        if (material.Form == StockForm.Sheet)
            size += " × " + LengthFormat.WithUnit(piece.Width, unit);
        return new(
            new(SearchKind.Piece, piece.Piece.Tag, Joined($"{material.Name}, {size}", piece.Note)) { Id = piece.Piece.Id },
            [],
            material.Name,
            piece.Note
        )
        {
            Material = WordsOf(material.Name),
            Lengths = [piece.Length, piece.Width],
            Pairs = [(piece.Length, piece.Width)],
        };
    }

    private async Task<IEnumerable<SearchEntry>> MaterialsAsync(ILookup<string, PieceNow> onHand)
    {
        var prices = (await db.Prices.AsNoTracking().ToListAsync(cancel)).ToLookup(price => price.MaterialId);
        return materials.All.Select(material => Material(material, onHand[material.Id].ToList(), prices[material.Id].ToList()));
    }

    private SearchEntry Material(StoredMaterial material, List<PieceNow> onHand, List<StoredPrice> prices)
    {
        var detail = Joined(
            $"{LengthFormat.WithUnit(material.Thickness, unit)} thick",
            onHand.Count > 0 ? $"{onHand.Count} on hand" : ""
        );
        return new(
            new(SearchKind.Material, material.Name, detail)
            {
                Key = material.Id,
                OnHand = onHand.Count,
                Store = prices.Select(price => (Guid?)price.StoreId).FirstOrDefault(),
            },
            [material.Id]
        )
        {
            Material = WordsOf(material.Name),
            Lengths = material.Width is { } width ? [material.Thickness, width] : [material.Thickness],
            Pairs =
                material.Form == StockForm.Sheet
                    ? [.. SheetSizes[material.Id], .. prices.Select(price => (price.Length, price.Width))]
                    : [(material.Thickness, material.Width ?? Length.Zero)],
        };
    }

    private static SearchEntry Store(StoredStore store) =>
        new(new(SearchKind.Store, store.Name, store.Note) { Id = store.Id }, [], store.Note);

    private static SearchEntry Plan(Plans.PlanSummary plan) =>
        new(new(SearchKind.Plan, plan.Name, plan.ShortId) { Id = plan.Id, Plan = plan }, [plan.ShortId]);

    private async Task<IEnumerable<SearchEntry>> DesignsAsync()
    {
        var own = await db
            .Designs.AsNoTracking()
            .OrderByDescending(design => design.SavedUtc)
            .Select(design => new { design.Id, design.Name })
            .ToListAsync(cancel);
        return own.Select(design => Design(design.Name, $"{design.Id}", "Your own"))
            .Concat(builtIn.All.Select(design => Design(design.Document.Name, design.Key, "Built in")));
    }

    private static SearchEntry Design(string name, string key, string detail) =>
        new(new(SearchKind.Design, name, detail) { Key = key }, []);

    private static SearchEntry Calculator(WorkingForm form) =>
        new(new(SearchKind.Calculator, form.Title, form.Says) { Key = form.Name }, [form.Name], form.Says);

    private async Task<IEnumerable<SearchEntry>> FiguresAsync(List<StoredProject> projects)
    {
        var names = projects.ToDictionary(project => project.Id, project => project.Name);
        return (await db.Workings.AsNoTracking().OrderByDescending(working => working.KeptUtc).ToListAsync(cancel))
            .Where(working => names.ContainsKey(working.ProjectId))
            .Select(working => Figure(working, names[working.ProjectId]));
    }

    private static SearchEntry Figure(StoredWorking working, string project)
    {
        var title = WorkingForms.TryFind(working.Form, out var form) ? form.Title : working.Form;
        return new(
            new(SearchKind.Figure, title, Joined(project, working.Result)) { Id = working.ProjectId },
            [],
            project,
            working.Result,
            string.Join(' ', TextsDocument.Read(working.Given).Values)
        );
    }

    private MaterialWords WordsOf(string name) =>
        words.TryGetValue(name, out var known) ? known : words[name] = MaterialWords.Of(name);

    private static string Joined(string first, string second) => second.Length == 0 ? first : $"{first} · {second}";
}
