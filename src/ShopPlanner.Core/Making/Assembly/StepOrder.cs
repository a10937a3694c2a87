using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Puts steps in an order that keeps all precedence.</summary>
public static class StepOrder
{
    /// <summary>Returns the steps, each after all that it names; else by phase, then as they were given.</summary>
    /// <param name="steps">Each with an id of its own; what they name and isn't among them counts as done.</param>
    /// <exception cref="InvalidOperationException">Some wait for each other in a circle.</exception>
    public static ImmutableArray<WorkStep> Sort(IReadOnlyList<WorkStep> steps) => Sort(steps, step => step.Phase);

    /// <summary>Returns the steps, each after all that it names; else as they were given, whatever their phase.</summary>
    /// <inheritdoc cref="Sort(IReadOnlyList{WorkStep})" path="/param" />
    /// <inheritdoc cref="Sort(IReadOnlyList{WorkStep})" path="/exception" />
    public static ImmutableArray<WorkStep> AsGiven(IReadOnlyList<WorkStep> steps) => Sort(steps, _ => WorkPhase.Parts);

    private static ImmutableArray<WorkStep> Sort(IReadOnlyList<WorkStep> steps, Func<WorkStep, WorkPhase> phase)
    {
        ArgumentNullException.ThrowIfNull(steps);
        var places = steps.Select((step, i) => (step.Id, i)).ToDictionary(one => one.Id, one => one.i, StringComparer.Ordinal);
        var waits = steps.Select(step => step.After.Where(places.ContainsKey).Distinct().Count()).ToArray();
        var next = steps.Select(_ => new List<int>()).ToArray();
        for (var i = 0; i < steps.Count; i++)
            foreach (var before in steps[i].After.Where(places.ContainsKey).Distinct())
                next[places[before]].Add(i);
        var ready = new PriorityQueue<int, (WorkPhase, int)>();
        for (var i = 0; i < steps.Count; i++)
            if (waits[i] == 0)
                ready.Enqueue(i, (phase(steps[i]), i));
        var sorted = ImmutableArray.CreateBuilder<WorkStep>(steps.Count);
        while (ready.TryDequeue(out var place, out _))
        {
            sorted.Add(steps[place]);
            foreach (var later in next[place])
                if (--waits[later] == 0)
                    ready.Enqueue(later, (phase(steps[later]), later));
        }

        return sorted.Count == steps.Count
            ? sorted.MoveToImmutable()
            : throw new InvalidOperationException(
                "Steps wait for each other in a circle: "
                    + string.Join(", ", steps.Where((_, i) => waits[i] > 0).Select(step => step.Id))
            );
    }
}
