using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making;

/// <summary>Fits the work on single parts to the assembly: what is glued up as a panel is not joined again, and what needs joined
/// parts, such as a door that is trimmed, comes after they are joined.</summary>
internal static class LateWork
{
    // A door's ends are sawn off and its glass rabbet is routed before it is fitted; the rest is measured from the fitted door.
    private static readonly WorkAction[] BeforeFitting = [WorkAction.TrimToSize, WorkAction.Rabbet];

    /// <summary>Returns the assembly without the units that the work on parts has glued up already.</summary>
    /// <param name="assembly">All steps of the assembly.</param>
    /// <param name="parts">Work on single parts.</param>
    public static IReadOnlyList<WorkStep> Left(ImmutableArray<WorkStep> assembly, IReadOnlyList<WorkStep> parts)
    {
        var glued = parts
            .Where(step => step.Action is WorkAction.GlueUp or WorkAction.BandEdges)
            .SelectMany(step => step.Joints)
            .ToHashSet();
        var made = assembly
            .Where(step => step.Subassembly is not null && !step.Joints.IsEmpty)
            .GroupBy(step => step.Subassembly!, StringComparer.Ordinal)
            .Where(unit => unit.SelectMany(step => step.Joints).All(glued.Contains))
            .Select(unit => unit.Key)
            .ToHashSet(StringComparer.Ordinal);
        var gone = assembly.Where(step => step.Subassembly is { } unit && made.Contains(unit)).ToList();
        return [.. assembly.Except(gone).Select(Precedence.Past(gone))];
    }

    /// <summary>Returns the assembly with the work that needs joined parts among it.</summary>
    /// <param name="late">That work.</param>
    /// <param name="assembly">What is left of the assembly.</param>
    public static List<WorkStep> Put(IReadOnlyList<WorkStep> late, IReadOnlyList<WorkStep> assembly)
    {
        var steps = assembly.Select(step =>
            step.Action switch
            {
                WorkAction.FitDoor => step.Waiting(Ids(late.Where(one => IsBeforeFitting(one) && one.Shares(step)))),
                WorkAction.Hang or WorkAction.PutIn or WorkAction.TakeOff => step.Waiting(Ids(late.Where(step.Shares))),
                _ => step,
            }
        );
        return
        [
            .. steps,
            .. late.Select(one =>
                one.Waiting(
                    Ids(
                        assembly.Where(step =>
                            (step.Phase == WorkPhase.Assembly || (step.Action == WorkAction.FitDoor && !IsBeforeFitting(one)))
                            && step.Shares(one)
                        )
                    )
                )
            ),
        ];
    }

    /// <summary>Returns the steps so that nothing that comes before the finish waits for what is put together where the piece
    /// stands: it waits for what that waits for.</summary>
    /// <param name="steps">The assembly.</param>
    public static List<WorkStep> BeforePlace(IReadOnlyList<WorkStep> steps)
    {
        var past = Precedence.Past(steps.Where(step => step.Phase == WorkPhase.InPlace));
        return [.. steps.Select(step => step.Phase == WorkPhase.InPlace ? step : past(step))];
    }

    private static bool IsBeforeFitting(WorkStep step) => BeforeFitting.Contains(step.Action);

    private static bool Shares(this WorkStep one, WorkStep other) =>
        one.Handles.Intersect(other.Handles, StringComparer.Ordinal).Any();

    private static IEnumerable<string> Ids(IEnumerable<WorkStep> steps) => steps.Select(step => step.Id);
}
