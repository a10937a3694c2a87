using System.Globalization;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Sawing;

/// <summary>
/// The mark of every physical piece of a plan: the part's letter, with a number where there are several. Numbers run over the
/// layouts, in each over its pieces, in each over the copies, so that a drawing that stands for several boards can name all of
/// them shortly.
/// </summary>
public sealed class PlanMarks
{
    private readonly PlanView plan;
    private readonly Dictionary<(int Layout, int Piece), int> first = [];
    private readonly Dictionary<string, int> pieces = [];

    /// <summary>Numbers the pieces of a plan.</summary>
    public PlanMarks(PlanView plan)
    {
        this.plan = plan;
        for (var layout = 0; layout < plan.Plan.Layouts.Length; layout++)
        for (var piece = 0; piece < plan.Plan.Layouts[layout].Pieces.Length; piece++)
            Count(layout, piece);
    }

    /// <summary>The mark of one piece: <c>C3</c>, or <c>C</c> where the part is wanted once.</summary>
    /// <param name="layout">Index into the plan's layouts.</param>
    /// <param name="piece">Index into the layout's pieces.</param>
    /// <param name="copy">Which of the layout's copies, from 1.</param>
    public string Of(int layout, int piece, int copy) =>
        Mark(plan.Plan.Layouts[layout].Pieces[piece].Part, first[(layout, piece)] + copy - 1);

    /// <summary>The marks of one place in all copies of a layout: <c>C1–C3</c>.</summary>
    /// <param name="layout">Index into the plan's layouts.</param>
    /// <param name="piece">Index into the layout's pieces.</param>
    public string OfAllCopies(int layout, int piece) =>
        MarkRange.Of([.. Enumerable.Range(1, plan.Plan.Layouts[layout].Copies).Select(copy => Of(layout, piece, copy))]);

    /// <summary>The marks of all placed pieces of a part, in order.</summary>
    public IEnumerable<string> Placed(string part) =>
        Enumerable.Range(1, pieces.GetValueOrDefault(part)).Select(n => Mark(part, n));

    /// <summary>The marks of the pieces of a part that were not placed: numbers after the placed ones.</summary>
    public IEnumerable<string> Unplaced(string part, int quantity) =>
        Enumerable.Range(pieces.GetValueOrDefault(part) + 1, quantity).Select(n => Mark(part, n));

    private void Count(int layout, int piece)
    {
        var part = plan.Plan.Layouts[layout].Pieces[piece].Part;
        var before = pieces.GetValueOrDefault(part);
        first[(layout, piece)] = before + 1;
        pieces[part] = before + plan.Plan.Layouts[layout].Copies;
    }

    // Numbers go on from the pieces that were cut before.
    private string Mark(string part, int number)
    {
        var (mark, before) = (plan.Parts[part].Mark, plan.CutBefore.GetValueOrDefault(part));
        return plan.Request.Parts.Single(p => p.Id == part).Quantity + before == 1
            ? mark
            : mark + (number + before).ToString(CultureInfo.InvariantCulture);
    }
}
