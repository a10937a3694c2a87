using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making;

/// <summary>What work on parts, assembly and finish would each tell is told by one of them: sanding before assembly, glue that
/// is scraped off, edge band.</summary>
internal static class ToldOnce
{
    /// <summary>Work on parts without the sanding that the finish begins with.</summary>
    /// <param name="operations">Work on single parts.</param>
    /// <param name="finish">Steps of the finish.</param>
    public static ImmutableArray<WorkStep> Parts(ImmutableArray<WorkStep> operations, ImmutableArray<WorkStep> finish) =>
        finish.Any(step => step is { Action: WorkAction.Sand, Phase: WorkPhase.FinishBefore })
            ? Without(operations, step => step is { Action: WorkAction.Sand, Phase: WorkPhase.Parts })
            : operations;

    /// <summary>The same, the piece's edge band in the step that uses it.</summary>
    /// <param name="operations">Work on single parts.</param>
    /// <param name="finish">Steps of the finish.</param>
    /// <param name="piece">The piece with its hardware.</param>
    public static ImmutableArray<WorkStep> Parts(
        ImmutableArray<WorkStep> operations,
        ImmutableArray<WorkStep> finish,
        Piece piece
    )
    {
        var kept = Parts(operations, finish);
        var band = piece
            .Hardware.Where(item => IsBand(item.Name))
            .Select(item => new WorkItem(item.Name, item.Quantity))
            .ToList();
        var banding = kept.FirstOrDefault(IsBanding);
        return banding is null
            ? kept
            : [.. kept.Select(step => step == banding ? step with { Fasteners = [.. step.Fasteners, .. band] } : step)];
    }

    /// <summary>The assembly without the band that was ironed on before.</summary>
    /// <param name="assembly">Steps of the assembly.</param>
    /// <param name="operations">Work on single parts.</param>
    public static ImmutableArray<WorkStep> Assembly(ImmutableArray<WorkStep> assembly, ImmutableArray<WorkStep> operations)
    {
        if (!operations.Any(IsBanding))
            return assembly;
        var less = assembly
            .Select(step =>
                step.Fasteners.Any(item => IsBand(item.Name))
                    ? step with
                    {
                        Fasteners = step.Fasteners.RemoveAll(item => IsBand(item.Name)),
                    }
                    : step
            )
            .ToImmutableArray();
        return Without(less, step => step is { Action: WorkAction.PutIn, Fasteners.IsEmpty: true, Handles.IsEmpty: true });
    }

    /// <summary>The finish without the scraping of glue: the assembly has it where something is glued.</summary>
    /// <param name="finish">Steps of the finish.</param>
    public static ImmutableArray<WorkStep> Finish(ImmutableArray<WorkStep> finish) =>
        Without(finish, step => step.Action == WorkAction.CleanGlue);

    private static bool IsBanding(WorkStep step) =>
        step is { Action: WorkAction.BandEdges, Phase: WorkPhase.Parts, Joints.IsEmpty: true };

    private static bool IsBand(string name) => name.StartsWith(EdgeSummary.Band, StringComparison.Ordinal);

    // Whatever waited for a step that is left out waits for what that waited for.
    private static ImmutableArray<WorkStep> Without(ImmutableArray<WorkStep> steps, Func<WorkStep, bool> isLeftOut)
    {
        var gone = steps.Where(isLeftOut).ToDictionary(step => step.Id, StringComparer.Ordinal);
        IEnumerable<string> Before(string id) => gone.TryGetValue(id, out var step) ? step.After.SelectMany(Before) : [id];
        return
        [
            .. steps
                .Where(step => !gone.ContainsKey(step.Id))
                .Select(step => step with { After = [.. step.After.SelectMany(Before).Distinct(StringComparer.Ordinal)] }),
        ];
    }
}
