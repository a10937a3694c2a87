using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>Like cuts of one material by direction and figure alone, whatever saw makes them: see
/// <see cref="SharedRuns"/>.</summary>
/// <param name="Material">The material's id.</param>
/// <param name="Runs">In the order to make them; every cut of every layout of the material is in one of them.</param>
public sealed record SharedSettings(string Material, ImmutableArray<SettingRun> Runs)
{
    /// <summary>How often fence or stop are set at home, the first time included.</summary>
    public int Changes => Runs.Count(run => !run.ByStore);

    /// <summary>One order for each material that the plan cuts, in the order of the request.</summary>
    /// <param name="request">The request that the plan answers.</param>
    /// <param name="plan">The plan; its stock is the request's.</param>
    public static ImmutableArray<SharedSettings> Of(CutRequest request, CutPlan plan) =>
        [
            .. SharedRuns
                .Of(request, plan, (_, cut) => (cut.Kind, cut.At))
                .Select(shared => new SharedSettings(shared.Material, [.. shared.Runs.Select(run => Run(plan, run))])),
        ];

    private static SettingRun Run(CutPlan plan, SharedRun run)
    {
        var first = plan.Layouts[run.Cuts[0].Layout].Cuts[run.Cuts[0].N - 1];
        return new(first.Kind, first.At, run.ByStore, run.Cuts);
    }
}

/// <summary>Cuts made one after another at one setting.</summary>
/// <param name="Kind">Which way they run.</param>
/// <param name="At">The setting.</param>
/// <param name="ByStore">Whether the store makes them.</param>
/// <param name="Cuts">In the order to make them.</param>
public sealed record SettingRun(CutKind Kind, Length At, bool ByStore, ImmutableArray<SharedCut> Cuts);
