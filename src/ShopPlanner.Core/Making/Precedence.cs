using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making;

/// <summary>What steps wait for when steps are added to a list or left out of it.</summary>
internal static class Precedence
{
    /// <summary>Returns a step that waits for more steps; never for itself.</summary>
    /// <param name="step">The step.</param>
    /// <param name="more">Ids of the steps that come before it.</param>
    public static WorkStep Waiting(this WorkStep step, IEnumerable<string> more) =>
        step with
        {
            After = [.. step.After.Concat(more).Where(id => id != step.Id).Distinct(StringComparer.Ordinal)],
        };

    /// <summary>Returns how a step waits when others are passed over: instead of one of those, for what that one waits
    /// for.</summary>
    /// <param name="passed">The steps that are passed over.</param>
    public static Func<WorkStep, WorkStep> Past(IEnumerable<WorkStep> passed)
    {
        var steps = passed.ToDictionary(step => step.Id, StringComparer.Ordinal);
        var known = new Dictionary<string, string[]>(StringComparer.Ordinal);
        return step => step with { After = [.. step.After.SelectMany(Before).Distinct(StringComparer.Ordinal)] };

        string[] Before(string id)
        {
            if (!steps.TryGetValue(id, out var step))
                return [id];
            if (!known.TryGetValue(id, out var before))
                known[id] = before = [.. step.After.SelectMany(Before).Distinct(StringComparer.Ordinal)];
            return before;
        }
    }
}
