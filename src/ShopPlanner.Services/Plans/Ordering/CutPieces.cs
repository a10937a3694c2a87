using Microsoft.EntityFrameworkCore;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
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

    /// <summary>Reads what is cut for some projects, of those still being worked on and those whose plans stand. A project
    /// that is finished or put away starts from nothing when it is planned again.</summary>
    public static async Task<CutPieces> LoadAsync(
        ShopContext db,
        ReadPlans plans,
        IReadOnlyCollection<Guid> projects,
        CancellationToken cancel
    )
    {
        var wanted = projects.Count == 0 ? [] : await WantedAsync(db, projects, cancel);
        if (wanted.Count == 0)
            return None;
        var begun = await db.Plans.AsNoTracking().Where(plan => wanted.Contains(plan.Id)).ToListAsync(cancel);
        var made = await db.Cuts.AsNoTracking().Where(cut => wanted.Contains(cut.PlanId) && cut.Made).ToListAsync(cancel);
        var finished = await db
            .Finishes.AsNoTracking()
            .Where(finish => wanted.Contains(finish.PlanId) && finish.Standing)
            .ToListAsync(cancel);
        var (cuts, ends) = (made.ToLookup(cut => cut.PlanId), finished.ToLookup(finish => finish.PlanId));
        return new(begun.SelectMany(plan => Entries(plans.Read(plan), cuts[plan.Id], ends[plan.Id])));
    }

    // Whole plans are large: which are wanted is told by what stands beside their documents.
    private static Task<List<Guid>> WantedAsync(ShopContext db, IReadOnlyCollection<Guid> projects, CancellationToken cancel)
    {
        var planned =
            from own in db.PlanProjects
            join plan in db.Plans on own.PlanId equals plan.Id
            where plan.State == PlanState.Ready || plan.State == PlanState.Cutting
            select own.ProjectId;
        var inWork = db
            .Projects.Where(project => project.State == ProjectState.Planning || project.State == ProjectState.Building)
            .Select(project => project.Id)
            .Union(planned);
        return db
            .Plans.Where(plan =>
                db.Cuts.Any(cut => cut.PlanId == plan.Id && cut.Made)
                || db.Finishes.Any(finish => finish.PlanId == plan.Id && finish.Standing)
            )
            .Where(plan => db.PlanProjects.Any(own => own.PlanId == plan.Id && projects.Contains(own.ProjectId)))
            .Where(plan => db.PlanProjects.Any(own => own.PlanId == plan.Id && inWork.Contains(own.ProjectId)))
            .Select(plan => plan.Id)
            .ToListAsync(cancel);
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

    private static IEnumerable<Entry> Entries(PlanRecord record, IEnumerable<StoredCut> made, IEnumerable<StoredFinish> finished)
    {
        var (request, layouts) = (record.Draft.Request, record.Plan.Layouts);
        var ticks = made.ToLookup(cut => (cut.Layout, cut.Copy), cut => cut.Cut);
        var ended = finished.Select(finish => (finish.Layout, finish.Copy)).ToHashSet();
        return from layout in Enumerable.Range(0, layouts.Length)
            from copy in Enumerable.Range(1, layouts[layout].Copies)
            from piece in Freed(request, layouts[layout], ticks[(layout, copy)].ToHashSet(), ended.Contains((layout, copy)))
            select new Entry(record.Stored.Id, record.Draft.Basis.Rows[piece], request.Parts.Single(part => part.Id == piece));
    }

    // A piece that no cut frees is as long as its board, and is there when the board is finished.
    private static IEnumerable<string> Freed(CutRequest request, Layout layout, HashSet<int> made, bool isFinished)
    {
        var cuts = PlanLayouts.Trace(request, layout);
        var freed = cuts.Where(cut => made.Contains(cut.Cut.N)).SelectMany(PlanLayouts.PartsOf).Select(part => part.Part);
        if (!isFinished)
            return freed;
        var byCut = cuts.SelectMany(PlanLayouts.PartsOf).ToHashSet();
        var whole = layout.Pieces.Where(piece => !byCut.Contains((piece.Part, piece.X, piece.Y)));
        return freed.Concat(whole.Select(piece => piece.Part));
    }

    private sealed record Entry(Guid Plan, Guid Row, CutPart Part);
}
