using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>A row of a parts list as a plan holds it.</summary>
/// <param name="Row">The row's id.</param>
/// <param name="Material">Its material.</param>
/// <param name="Length">Cut length.</param>
/// <param name="Width">Cut width.</param>
/// <param name="Pieces">Pieces that are placed or were cut before.</param>
internal sealed record HeldRow(Guid Row, string Material, Length Length, Length Width, int Pieces);

/// <summary>What of a plan's documents is stored beside them, for lists to read.</summary>
internal static class PlanFigures
{
    /// <summary>Returns the cuts of all boards and sheets.</summary>
    public static int Cuts(CutPlan plan) => plan.Layouts.Sum(layout => layout.Copies * layout.Cuts.Length);

    /// <summary>Returns the boards and sheets of new stock.</summary>
    public static int ToBuy(CutPlan plan) => plan.Buy.Sum(buy => buy.Quantity);

    /// <summary>Returns the rows that a plan holds, those that were wholly cut before it with them. Test pieces are none of the
    /// piece of furniture.</summary>
    public static IEnumerable<StoredPlanPart> Parts(Guid planId, PlanDraft draft, CutPlan plan) =>
        draft
            .CutWhole.Concat(Placed(draft, plan))
            .Concat(Spared(draft))
            .Select(held => new StoredPlanPart
            {
                PlanId = planId,
                RowId = held.Row,
                MaterialId = held.Material,
                Length = held.Length,
                Width = held.Width,
                Pieces = held.Pieces,
            });

    // Nobody waits for what was wanted only if it comes free: such a row is held whole.
    private static IEnumerable<HeldRow> Spared(PlanDraft draft) =>
        draft.Spares.Select(spare => new HeldRow(
            draft.Basis.Rows[spare.Part.Id],
            spare.Part.Material,
            spare.Part.Length,
            spare.Part.Width,
            spare.Part.Quantity + draft.Basis.CutBefore.GetValueOrDefault(spare.Part.Id)
        ));

    private static IEnumerable<HeldRow> Placed(PlanDraft draft, CutPlan plan)
    {
        var missing = plan.Unplaced.ToLookup(part => part.Part, part => part.Quantity);
        return draft
            .Request.Parts.Where(part => part.PracticeFor is null && !draft.IsSpare(part.Id))
            .Select(part => new HeldRow(
                draft.Basis.Rows[part.Id],
                part.Material,
                part.Length,
                part.Width,
                part.Quantity - missing[part.Id].Sum() + draft.Basis.CutBefore.GetValueOrDefault(part.Id)
            ));
    }
}
