using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Steps while they are written, each with an id of its own.</summary>
internal sealed class StepList
{
    private readonly List<WorkStep> all = [];
    private readonly HashSet<string> ids = [];

    public void Add(WorkStep step)
    {
        ids.Add(step.Id);
        all.Add(step);
    }

    /// <summary>What is done to what; numbered only where that is done twice.</summary>
    public string Id(string does, string to, string what)
    {
        var name = what.Length > 0 ? $"{does}:{to}:{what}" : $"{does}:{to}";
        var id = name;
        for (var number = 2; ids.Contains(id); number++)
            id = FormattableString.Invariant($"{name}-{number}");
        return id;
    }

    /// <summary>By phase, as they were written within it: what was to come after something still does.</summary>
    public ImmutableArray<WorkStep> Sorted() => StepOrder.Sort(all);
}
