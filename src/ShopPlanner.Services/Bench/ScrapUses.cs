using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Bench;

/// <summary>What comes off leftovers before they go into the bin: test pieces and spacers that no board gives, and a piece
/// of each material on which settings are tried.</summary>
internal sealed class ScrapUses(BenchView view, BenchStock stock, bool allCutsMade, IReadOnlyList<WorkView> works)
{
    private readonly CutStock whole = PlanLayouts.StockOf(view.Plan, stock.Layout);

    /// <summary>Returns what each leftover serves for, in their order; the smallest that will do serves.</summary>
    public ImmutableArray<ImmutableArray<string>> Of(ImmutableArray<ExpectedLeftover> left)
    {
        var serves = left.Select(_ => ImmutableArray.CreateBuilder<string>()).ToArray();
        var bySize = left.Index().OrderBy(one => (decimal)one.Item.Length.Ticks * one.Item.Width.Ticks).ToList();
        var room = left.Select(one => one.Length).ToArray();
        foreach (var part in Missing())
        {
            var at = bySize.FirstOrDefault(one => part.Length <= room[one.Index] && part.Width <= one.Item.Width, (-1, null!));
            if (at.Index < 0)
                continue;
            room[at.Index] -= Length.Min(room[at.Index], part.Length + view.Plan.Request.Saw.Kerf);
            serves[at.Index].Add($"{view.Plan.Parts[part.Id].Mark} {view.Plan.Parts[part.Id].Name}".TrimEnd());
        }

        if (IsTriedOnOffcut() && bySize.Count > 0)
            serves[bySize[0].Index].Add("a piece to try settings on");
        return [.. serves.Select(one => one.ToImmutable())];
    }

    // Test pieces and spacers of this material that were to be cut and are not, or that found no place.
    private IEnumerable<CutPart> Missing()
    {
        var spacers = works
            .SelectMany(work => work.Piece?.Parts ?? [])
            .Where(part => part.Purpose == PartPurpose.Spacer)
            .Select(part => part.Id)
            .ToHashSet(StringComparer.Ordinal);
        var wanted = view
            .Plan.Request.Parts.Where(part => part.Material == whole.Material)
            .Where(part => part.PracticeFor is not null || spacers.Contains(view.Plan.Parts[part.Id].Mark));
        return wanted.SelectMany(part => Enumerable.Repeat(part, LeftOut(part)));
    }

    private int LeftOut(CutPart part) =>
        view.Plan.Plan.Unplaced.Where(one => one.Part == part.Id).Sum(one => one.Quantity)
        + view.Stocks.Where(one => one.Finished || one.Number == stock.Number).Sum(one => LeftOut(part, one));

    private int LeftOut(CutPart part, BenchStock of)
    {
        var layout = view.Plan.Plan.Layouts[of.Layout];
        if (of.Number == stock.Number && allCutsMade)
            return 0;
        var made = of.Cuts.Where(cut => cut.Made).Select(cut => cut.Cut.N).ToHashSet();
        var given = PlanLayouts.Given(view.Plan.Request, layout, made, isFinished: true).ToHashSet();
        return layout.Pieces.Where((piece, i) => piece.Part == part.Id && !given.Contains(i)).Count();
    }

    // Steps still open that ask for it, on parts of this material.
    private bool IsTriedOnOffcut()
    {
        var marks = view
            .Plan.Request.Parts.Where(part => part.Material == whole.Material)
            .Select(part => view.Plan.Parts[part.Id].Mark)
            .ToHashSet(StringComparer.Ordinal);
        return works
            .SelectMany(work => work.Steps)
            .Where(step => step.Mark == StepMark.Open && OffcutTrials.AreAsked(step.Step))
            .Any(step => step.Step.Handles.Any(handle => marks.Any(mark => IsOf(handle, mark))));
    }

    // A handle is a copy of a part: C2 of C.
    private static bool IsOf(string handle, string mark) =>
        handle.StartsWith(mark, StringComparison.Ordinal) && handle.AsSpan(mark.Length).IndexOfAnyExceptInRange('0', '9') < 0;
}
