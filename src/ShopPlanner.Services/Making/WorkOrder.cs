using System.Collections.Immutable;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Services.Making;

/// <summary>The order of steps that a builder wants, as far as precedence allows it.</summary>
internal static class WorkOrder
{
    /// <summary>Returns the steps in the wanted order. A step that the order does not name stands behind the one that it
    /// follows in the plan; one that has to wait for another stands behind that.</summary>
    /// <param name="steps">In the plan's order.</param>
    /// <param name="wanted">Ids, some of steps that may be gone; empty for the plan's order.</param>
    public static ImmutableArray<WorkStep> Arrange(ImmutableArray<WorkStep> steps, ImmutableArray<string> wanted)
    {
        var byId = steps.ToDictionary(step => step.Id, StringComparer.Ordinal);
        var line = wanted.Where(byId.ContainsKey).Distinct(StringComparer.Ordinal).ToList();
        if (line.Count == 0)
            return steps;
        var known = line.ToHashSet(StringComparer.Ordinal);
        foreach (var (i, step) in steps.Index().Where(one => !known.Contains(one.Item.Id)).ToList())
            line.Insert(i == 0 ? 0 : line.IndexOf(steps[i - 1].Id) + 1, step.Id);
        return StepOrder.AsGiven([.. line.Select(id => byId[id])]);
    }

    /// <summary>Returns the step that has to be done before another, among those that lie from one place of the line to the
    /// place before that other; null where none has to.</summary>
    /// <param name="line">Steps in order.</param>
    /// <param name="from">The first place.</param>
    /// <param name="to">The place of the step that is asked about.</param>
    public static WorkStep? Before(ImmutableArray<WorkStep> line, int from, int to) =>
        Enumerable.Range(from, to - from).Select(i => line[i]).LastOrDefault(step => line[to].After.Contains(step.Id));

    /// <summary>Returns the step that has to wait for another, among those from the place behind that other up to a place;
    /// null where none has to.</summary>
    /// <param name="line">Steps in order.</param>
    /// <param name="from">The place of the step that is asked about.</param>
    /// <param name="to">The last place.</param>
    public static WorkStep? After(ImmutableArray<WorkStep> line, int from, int to) =>
        Enumerable.Range(from + 1, to - from).Select(i => line[i]).FirstOrDefault(step => step.After.Contains(line[from].Id));
}
