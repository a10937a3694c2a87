using System.Collections.Immutable;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making;

/// <summary>Puts the work on single parts, the assembly and the finish together in one order.</summary>
public static class WorkMerge
{
    /// <summary>Returns the plan: each part is worked on before it is first joined, what cannot be reached later is finished
    /// before that, the rest when the piece stands, and what goes on after the finish comes last.</summary>
    /// <param name="name">Of the piece.</param>
    /// <param name="unit">Unit of its lengths.</param>
    /// <param name="operations">Work on single parts.</param>
    /// <param name="assembly">How it goes together.</param>
    /// <param name="finish">The finish, before and after the assembly.</param>
    public static WorkPlan Of(
        string name,
        LengthUnit unit,
        ImmutableArray<WorkStep> operations,
        AssemblyPlan assembly,
        FinishPlan finish
    )
    {
        ArgumentNullException.ThrowIfNull(assembly);
        ArgumentNullException.ThrowIfNull(finish);
        var before = finish.Steps.Where(step => step.Phase == WorkPhase.FinishBefore).ToList();
        var later = finish.Steps.Where(step => step.Phase != WorkPhase.FinishBefore).ToList();
        var parts = operations.Where(step => step.Phase == WorkPhase.Parts).ToList();
        var worked = ByMark(parts);
        var coated = ByMark(before);
        List<WorkStep> joined = [.. First(LateWork.Left(assembly.Steps, parts), worked, _ => true)];
        joined = LateWork.BeforePlace(LateWork.Put([.. operations.Except(parts)], joined));
        joined = [.. First(joined, coated, step => step.Action != WorkAction.DryFit)];
        var standing = joined.Where(step => step.Phase != WorkPhase.InPlace).ToList();
        List<WorkStep> all =
        [
            .. parts,
            .. before.Select(step => step.Waiting(step.Handles.SelectMany(mark => worked.GetValueOrDefault(mark, [])))),
            .. standing,
            .. Begin(later, WorkPhase.Finish, Ends(standing)),
            .. Begin(
                joined.Except(standing).ToList(),
                WorkPhase.InPlace,
                Ends([.. later.Where(step => step.Phase == WorkPhase.Finish)])
            ),
        ];
        return new(
            name,
            unit,
            StepOrder.Sort(all),
            assembly.Subassemblies,
            finish.Amounts,
            [.. assembly.Findings.Concat(finish.Findings).OrderByDescending(one => one.Severity)]
        );
    }

    private static Dictionary<string, List<string>> ByMark(IEnumerable<WorkStep> steps) =>
        steps
            .SelectMany(step => step.Handles.Select(mark => (mark, step.Id)))
            .GroupBy(one => one.mark, StringComparer.Ordinal)
            .ToDictionary(same => same.Key, same => same.Select(one => one.Id).ToList(), StringComparer.Ordinal);

    // The first step that takes a part in hand waits for the work on it.
    private static IEnumerable<WorkStep> First(
        IReadOnlyList<WorkStep> steps,
        Dictionary<string, List<string>> work,
        Func<WorkStep, bool> counts
    )
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var step in steps)
            yield return counts(step)
                ? step.Waiting(step.Handles.Where(seen.Add).SelectMany(mark => work.GetValueOrDefault(mark, [])))
                : step;
    }

    // Steps of a phase that wait for no other of it wait for what comes before the phase.
    private static IEnumerable<WorkStep> Begin(List<WorkStep> steps, WorkPhase phase, List<string> before)
    {
        var own = steps.Where(step => step.Phase == phase).Select(step => step.Id).ToHashSet(StringComparer.Ordinal);
        return steps.Select(step => step.Phase == phase && !step.After.Any(own.Contains) ? step.Waiting(before) : step);
    }

    // Steps that no other one waits for.
    private static List<string> Ends(List<WorkStep> steps)
    {
        var waited = steps.SelectMany(step => step.After).ToHashSet(StringComparer.Ordinal);
        return [.. steps.Select(step => step.Id).Where(id => !waited.Contains(id))];
    }
}
