using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Projects;

/// <summary>How many pieces of a row a plan that is all cut has given, with those that were cut before it.</summary>
internal sealed record HeldRowFact(Guid Plan, Guid Row, string Material, Length Length, Length Width, int Pieces);

/// <summary>Reads what plans have given: what they placed, less what their boards left out when they were stopped, and less the
/// pieces that were cut wrong.</summary>
internal static class HeldRows
{
    /// <summary>Returns the rows of some plans.</summary>
    public static Task<List<HeldRowFact>> LoadAsync(ShopContext db, IReadOnlySet<Guid> plans, CancellationToken cancel) =>
        (
            from part in db.PlanParts
            where plans.Contains(part.PlanId)
            join plan in db.Plans on part.PlanId equals plan.Id
            let left = db
                .LeftOut.Where(one => one.PlanId == part.PlanId && one.RowId == part.RowId)
                .Where(one => db.Finishes.Any(finish => finish.Id == one.FinishId && finish.Standing))
                .Sum(one => one.Pieces)
            // A plan counts its own pieces and those cut before it; one that was made after the wrong cut never counted it.
            let wrong = (
                from piece in db.WrongPieces
                join cut in db.WrongCuts on piece.WrongCutId equals cut.Id
                join own in db.Plans on cut.PlanId equals own.Id
                where piece.RowId == part.RowId && !piece.IsPractice && cut.Standing
                where cut.LastPlan >= plan.Number && own.Number <= plan.Number
                select piece
            ).Count()
            select new HeldRowFact(part.PlanId, part.RowId, part.MaterialId, part.Length, part.Width, part.Pieces - left - wrong)
        ).ToListAsync(cancel);
}
