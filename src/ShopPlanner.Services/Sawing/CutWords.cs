using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Sawing;

/// <summary>Says what a cut gives, as the packet prints it and the bench shows it.</summary>
/// <param name="plan">The plan.</param>
/// <param name="layoutIndex">Index into its layouts.</param>
/// <param name="marks">Of all its pieces.</param>
/// <param name="copy">Which of the layout's copies is meant, from 1; null for all of them.</param>
internal sealed class CutWords(PlanView plan, int layoutIndex, PlanMarks marks, int? copy = null)
{
    private readonly Layout layout = plan.Plan.Layouts[layoutIndex];
    private readonly BadPlaces bad = PlanLayouts.StockOf(plan, layoutIndex).BadPlaces;

    /// <summary>Returns what a cut gives: <c>C1 Rail, keep 3b</c>; a part that is cut long says to what it is trimmed.</summary>
    public string Gives(TracedCut cut)
    {
        if (IsCutLater(cut.Cut.First) && cut.Cut.Second is { } other && IsCutLater(other))
            return $"keep {cut.Cut.First}{Bad(cut.First)} and {other}{Bad(cut.Second!.Value)}";
        var second = cut.Second is { } area ? Piece(cut.Cut.Second!, cut.Cut.SecondPart, area) : null;
        return string.Join(", ", new[] { Piece(cut.Cut.First, cut.Cut.FirstPart, cut.First), second }.OfType<string>());
    }

    private string? Piece(string name, string? part, Drawing.Layouts.StockArea area)
    {
        if (part is not null)
            return $"{MarkAt(part, area)} {plan.Parts[part].Name}".TrimEnd() + Turned(part, area) + Trim(part);
        if (IsCutLater(name))
            return $"keep {name}{Bad(area)}";
        if (!area.Dx.IsPositive || !area.Dy.IsPositive)
            return null;
        return layout.Leftovers.Any(left => left.Keep && LiesIn(left, area))
            ? $"{name} for the bin"
            : $"{name} is scrap{Bad(area)}";
    }

    private string Bad(Drawing.Layouts.StockArea area) =>
        bad.Any(place => place.Touches(area.X, area.Y, area.Dx, area.Dy)) ? " (bad place)" : "";

    private bool IsCutLater(string name) => layout.Cuts.Any(cut => cut.Piece == name);

    // A leftover may be smaller than the piece that holds it: bruised edges of a new sheet are not counted.
    private static bool LiesIn(Leftover left, Drawing.Layouts.StockArea area) =>
        left.X >= area.X && left.Y >= area.Y && left.X + left.Dx <= area.X + area.Dx && left.Y + left.Dy <= area.Y + area.Dy;

    private string Trim(string part) =>
        TrimWords.Of(plan.Request.Parts.Single(one => one.Id == part), plan.UnitOfLayout(layoutIndex)) is { } words
            ? $" ({words})"
            : "";

    private string Turned(string part, Drawing.Layouts.StockArea area) =>
        PieceAt(part, area) is { } i && layout.Pieces[i].Turned ? $" ({Drawing.Layouts.TurnedWords.Both})" : "";

    private string MarkAt(string part, Drawing.Layouts.StockArea area)
    {
        if (PieceAt(part, area) is not { } i)
            return plan.Parts[part].Mark;
        return copy is { } one ? marks.Of(layoutIndex, i, one) : marks.OfAllCopies(layoutIndex, i);
    }

    private int? PieceAt(string part, Drawing.Layouts.StockArea area)
    {
        for (var i = 0; i < layout.Pieces.Length; i++)
            if (layout.Pieces[i].Part == part && layout.Pieces[i].X == area.X && layout.Pieces[i].Y == area.Y)
                return i;
        return null;
    }
}
