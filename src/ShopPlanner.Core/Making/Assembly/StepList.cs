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

    /// <summary>The last work before a step that can be done before the piece is where it is to stand: the step itself, or, where
    /// that is done in place, the ends of all that is not.</summary>
    public ImmutableArray<string> BeforePlace(string id)
    {
        if (all.Single(step => step.Id == id).Phase != WorkPhase.InPlace)
            return [id];
        var before = all.Where(step => step.Phase != WorkPhase.InPlace).ToList();
        var waited = before.SelectMany(step => step.After).ToHashSet(StringComparer.Ordinal);
        return [.. before.Select(step => step.Id).Where(one => !waited.Contains(one))];
    }

    /// <summary>By phase, as they were written within it: what was to come after something still does.</summary>
    public ImmutableArray<WorkStep> Sorted() => StepOrder.Sort(all);
}
