using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making;

/// <summary>What work on parts and the assembly would each tell is told by one of them: the edge band that a design asks
/// for.</summary>
internal static class ToldOnce
{
    /// <summary>Work on parts with the edge band of the hardware in the step that uses it.</summary>
    /// <param name="operations">Work on single parts.</param>
    /// <param name="piece">The piece with its hardware.</param>
    public static ImmutableArray<WorkStep> Parts(ImmutableArray<WorkStep> operations, Piece piece)
    {
        var band = piece
            .Hardware.Where(item => EdgeSummary.IsBand(item.Name))
            .Select(item => new WorkItem(item.Name, item.Quantity))
            .ToList();
        var banding = operations.FirstOrDefault(IsBanding);
        return banding is null
            ? operations
            : operations.Replace(banding, banding with { Fasteners = [.. banding.Fasteners, .. band] });
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
                step.Fasteners.Any(item => EdgeSummary.IsBand(item.Name))
                    ? step with
                    {
                        Fasteners = step.Fasteners.RemoveAll(item => EdgeSummary.IsBand(item.Name)),
                    }
                    : step
            )
            .ToImmutableArray();
        return Without(less, step => step is { Action: WorkAction.PutIn, Fasteners.IsEmpty: true, Handles.IsEmpty: true });
    }

    private static bool IsBanding(WorkStep step) =>
        step is { Action: WorkAction.BandEdges, Phase: WorkPhase.Parts, Joints.IsEmpty: true };

    private static ImmutableArray<WorkStep> Without(ImmutableArray<WorkStep> steps, Func<WorkStep, bool> isLeftOut) =>
        [.. steps.Where(step => !isLeftOut(step)).Select(Precedence.Past(steps.Where(isLeftOut)))];
}
