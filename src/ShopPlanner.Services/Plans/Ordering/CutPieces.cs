using Microsoft.EntityFrameworkCore;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>How many pieces of each part are cut already, by the ticks of all plans: what is cut stays cut, whatever became
/// of its plan.</summary>
internal sealed class CutPieces
{
    private readonly ILookup<Guid, Entry> byRow;

    private CutPieces(IEnumerable<Entry> entries) => byRow = entries.ToLookup(entry => entry.Row);

    /// <summary>Nothing is cut yet.</summary>
    public static CutPieces None { get; } = new([]);

    /// <summary>Reads what is cut for some projects, each in one of its builds: a project that was done starts from nothing
    /// when it
    /// is planned again.</summary>
    /// <param name="db">The database.</param>
    /// <param name="plans">Reads the plans' documents.</param>
    /// <param name="builds">Which build counts, by project id.</param>
    /// <param name="cancel">Stops the reading.</param>
    public static async Task<CutPieces> LoadAsync(
        ShopContext db,
        ReadPlans plans,
        IReadOnlyDictionary<Guid, int> builds,
        CancellationToken cancel
    )
    {
        var wanted = builds.Count == 0 ? [] : await WantedAsync(db, builds, cancel);
        if (wanted.Count == 0)
            return None;
        var ids = wanted.Select(own => own.Plan).Distinct().ToList();
        var begun = await db.Plans.AsNoTracking().Where(plan => ids.Contains(plan.Id)).ToListAsync(cancel);
        var made = await db.Cuts.AsNoTracking().Where(cut => ids.Contains(cut.PlanId) && cut.Made).ToListAsync(cancel);
        var finished = await db
            .Finishes.AsNoTracking()
            .Where(finish => ids.Contains(finish.PlanId) && finish.Standing)
            .ToListAsync(cancel);
        var wrong = await WrongAsync(db, ids, cancel);
        var (cuts, ends) = (made.ToLookup(cut => cut.PlanId), finished.ToLookup(finish => finish.PlanId));
        return new(
            begun
                .SelectMany(plan => Entries(plans.Read(plan), cuts[plan.Id], ends[plan.Id], wrong))
                .Where(entry => wanted.Contains((entry.Plan, entry.Project)))
        );
    }

    // Whole plans are large: which are wanted is told by what stands beside their documents.
    private static async Task<HashSet<(Guid Plan, Guid Project)>> WantedAsync(
        ShopContext db,
        IReadOnlyDictionary<Guid, int> builds,
        CancellationToken cancel
    )
    {
        var projects = builds.Keys.ToList();
        var begun = await db
            .PlanProjects.AsNoTracking()
            .Where(own => projects.Contains(own.ProjectId))
            .Where(own =>
                db.Cuts.Any(cut => cut.PlanId == own.PlanId && cut.Made)
                || db.Finishes.Any(finish => finish.PlanId == own.PlanId && finish.Standing)
            )
            .ToListAsync(cancel);
        return [.. begun.Where(own => own.Build == builds[own.ProjectId]).Select(own => (own.PlanId, own.ProjectId))];
    }

    /// <summary>Pieces of a row that are cut to the size that it has now.</summary>
    /// <param name="row">The row of the parts list.</param>
    /// <param name="part">As it is wanted now.</param>
    /// <param name="isPractice">True for its practice pieces.</param>
    /// <param name="except">A plan whose pieces do not count.</param>
    public int Of(Guid row, CutPart part, bool isPractice, Guid? except = null) =>
        byRow[row]
            .Count(entry =>
                entry.Plan != except
                && entry.Part.PracticeFor is not null == isPractice
                && (entry.Part.Material, entry.Part.Length, entry.Part.Width) == (part.Material, part.Length, part.Width)
            );

    // A piece that was cut wrong is cut, and still needed.
    private static async Task<HashSet<PieceAt>> WrongAsync(ShopContext db, List<Guid> plans, CancellationToken cancel) =>
        await (
            from piece in db.WrongPieces
            join cut in db.WrongCuts on piece.WrongCutId equals cut.Id
            where cut.Standing && plans.Contains(cut.PlanId)
            select new PieceAt(cut.PlanId, cut.Layout, cut.Copy, piece.Piece)
        ).ToHashSetAsync(cancel);

    private static IEnumerable<Entry> Entries(
        PlanRecord record,
        IEnumerable<StoredCut> made,
        IEnumerable<StoredFinish> finished,
        HashSet<PieceAt> wrong
    )
    {
        var (request, layouts) = (record.Draft.Request, record.Plan.Layouts);
        var ticks = made.ToLookup(cut => (cut.Layout, cut.Copy), cut => cut.Cut);
        var ended = finished.Select(finish => (finish.Layout, finish.Copy)).ToHashSet();
        return from layout in Enumerable.Range(0, layouts.Length)
            from copy in Enumerable.Range(1, layouts[layout].Copies)
            let cuts = ticks[(layout, copy)].ToHashSet()
            from i in PlanLayouts.Given(request, layouts[layout], cuts, ended.Contains((layout, copy)))
            where !wrong.Contains(new(record.Stored.Id, layout, copy, i))
            let piece = layouts[layout].Pieces[i].Part
            select new Entry(
                record.Stored.Id,
                record.Draft.Basis.Parts[piece].ProjectId,
                record.Draft.Basis.Rows[piece],
                request.Parts.Single(part => part.Id == piece)
            );
    }

    private sealed record PieceAt(Guid Plan, int Layout, int Copy, int Piece);

    private sealed record Entry(Guid Plan, Guid Project, Guid Row, CutPart Part);
}
