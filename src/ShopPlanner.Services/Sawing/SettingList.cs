using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Sequence;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Sawing;

/// <summary>A cut of a layout, to be made in each of its copies.</summary>
/// <param name="Layout">Index into the plan's layouts.</param>
/// <param name="Copies">Boards or sheets to make it in.</param>
/// <param name="Step">What to do.</param>
public sealed record SettingCut(int Layout, int Copies, CutStep Step);

/// <summary>Cuts made one after another with one saw at one setting.</summary>
/// <param name="Cuts">In the order to make them; one or more.</param>
/// <param name="Unit">Of the figure: the layouts' own where they agree, since one fence stands at one figure.</param>
/// <param name="IsAgain">Whether the same setting came before: a piece for these cuts was not there yet.</param>
public sealed record SettingStep(ImmutableArray<SettingCut> Cuts, LengthUnit Unit, bool IsAgain)
{
    /// <summary>A cut that tells the setting of all of them.</summary>
    public CutStep Like => Cuts.Select(cut => cut.Step).FirstOrDefault(step => !step.TakesOff) ?? Cuts[0].Step;

    /// <summary>Whether the store makes them.</summary>
    public bool ByStore => Like.Cut.ByStore;
}

/// <summary>The settings of one material.</summary>
/// <param name="Material">Its id in the request.</param>
/// <param name="Steps">In the order to set them, the store's first.</param>
public sealed record MaterialSettings(string Material, ImmutableArray<SettingStep> Steps);

/// <summary>
/// The cuts of a plan by saw and setting instead of by board, in an order in which every piece is in hand before it is cut.
/// Page, bench and packet print it.
/// </summary>
public static class SettingList
{
    /// <summary>Returns the settings by material, in the order of the request.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<MaterialSettings> Of(PlanView plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var steps = StepsOf(plan);
        return
        [
            .. SharedRuns
                .Of(plan.Request, plan.Plan, (layout, cut) => SettingOf(steps[layout][cut.N - 1]))
                .Select(shared => new MaterialSettings(shared.Material, Steps(plan, shared, steps))),
        ];
    }

    /// <summary>Returns how often a fence or a stop is set at home, the first time included.</summary>
    /// <param name="settings">Of all materials.</param>
    public static int Changes(IEnumerable<MaterialSettings> settings) =>
        settings.Sum(material => material.Steps.Count(step => !step.ByStore));

    private static ImmutableArray<CutStep>[] StepsOf(PlanView plan)
    {
        var marks = new PlanMarks(plan);
        return [.. Enumerable.Range(0, plan.Plan.Layouts.Length).Select(layout => CutTexts.Steps(plan, layout, null, marks))];
    }

    // The same figure on another saw, or with the fence on the other side, is another setting.
    private static (string Way, Length At) SettingOf(CutStep step) => (CutSentences.Way(step), step.Setting);

    private static ImmutableArray<SettingStep> Steps(PlanView plan, SharedRuns shared, ImmutableArray<CutStep>[] steps)
    {
        var seen = new HashSet<(bool, (string, Length))>();
        return
        [
            .. shared.Runs.Select(run => new SettingStep(
                [.. run.Cuts.Select(cut => new SettingCut(cut.Layout, cut.Copies, steps[cut.Layout][cut.N - 1]))],
                UnitOf(plan, run),
                !seen.Add((run.ByStore, SettingOf(steps[run.Cuts[0].Layout][run.Cuts[0].N - 1])))
            )),
        ];
    }

    private static LengthUnit UnitOf(PlanView plan, SharedRun run) =>
        run.Cuts.Select(cut => plan.UnitOfLayout(cut.Layout)).Distinct().ToList() is [var only] ? only : plan.Request.Unit;
}
