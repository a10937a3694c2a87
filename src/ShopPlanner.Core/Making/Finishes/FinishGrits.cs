using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>The grits that bare wood is sanded with.</summary>
internal static class FinishGrits
{
    /// <summary>From the chosen first grit to the chosen last one, or to what suits the finish.</summary>
    public static ImmutableArray<int> Of(FinishWork work)
    {
        var start = IsGrit(work.Choices.StartGrit) ? work.Choices.StartGrit : WorkChoices.Usual.StartGrit;
        var end = work.Choices.EndGrit is { } chosen && chosen >= start && IsGrit(chosen) ? chosen : Usual(work);
        return Grits.From(start, Math.Max(start, end));
    }

    /// <summary>What is wrong with the grits that were chosen.</summary>
    public static IEnumerable<WorkFinding> Findings(FinishWork work)
    {
        var choices = work.Choices;
        if (!IsGrit(choices.StartGrit))
            yield return Watch(
                $"Sanding can't begin at {choices.StartGrit} grit: enter {Grits.Coarsest} to {Grits.Finest}. "
                    + $"{WorkChoices.Usual.StartGrit} is used."
            );
        if (choices.EndGrit is { } end && (!IsGrit(end) || end < choices.StartGrit))
            yield return Watch(
                $"Sanding can't end at {end} grit: enter a grit from the first one to {Grits.Finest}. {Usual(work)} is used."
            );
        var last = Of(work)[^1];
        if (work.Recipe.HidesWood && last > (int)FinishFigures.FinestForPaint.Value)
            yield return Watch(
                $"Paint holds poorly on wood sanded to {last} grit. End at {(int)FinishFigures.FinestForPaint.Value} or coarser."
            );
        if (!work.Recipe.HidesWood && !work.Recipe.IsBare && last < (int)FinishFigures.CoarsestForClear.Value)
            yield return Watch(
                $"Scratches of {last} grit show through a clear finish. End at {(int)FinishFigures.CoarsestForClear.Value} or "
                    + "finer."
            );
    }

    private static bool IsGrit(int grit) => grit is >= Grits.Coarsest and <= Grits.Finest;

    private static int Usual(FinishWork work) =>
        work.Recipe.IsBare ? (int)FinishFigures.BareGrit.Value
        : ScuffsOutdoors(work) ? (int)FinishFigures.OutdoorGrit.Value
        : work.Recipe.Layers[0].Product.StopGrit;

    /// <summary>Whether planed softwood is left rough, so that paint holds outdoors.</summary>
    public static bool ScuffsOutdoors(FinishWork work) =>
        work.IsOutdoors && work.Recipe.HidesWood && work.Surfaces.Any(one => one.Wood.IsSoftwood);

    private static WorkFinding Watch(string text) => new(Severity.Watch, text, []);
}
