using ArchUnitNET.Domain;
using ArchUnitNET.Loader;

namespace ShopPlanner.Architecture.Tests;

/// <summary>Inside a project the namespaces have an order too: none leads back to itself by way of another.</summary>
public sealed class CycleTests
{
    public static TheoryData<string> Rooms() => [.. ArrowTests.Rooms];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_namespace_leads_back_to_itself(string room)
    {
        var graph = References(room);
        Assert.True(graph.Count > 1, $"{room} has no namespaces that refer to each other: were its types read?");
        var circles = graph.Keys.Order().Select(start => Circle(graph, start)).OfType<string>().ToList();
        Assert.True(circles.Count == 0, string.Join(Environment.NewLine, circles));
    }

    // For each namespace those that it needs, and for each of those one pair of types that says why.
    private static Dictionary<string, Dictionary<string, string>> References(string room)
    {
        var name = "ShopPlanner." + room;
        var types = new ArchLoader()
            .LoadAssembly(System.Reflection.Assembly.Load(room == "Cli" ? "shop-planner" : name))
            .Build()
            .Types.Where(type => IsIn(type, name));
        var pairs =
            from type in types
            from target in type.Dependencies.Select(dependency => dependency.Target)
            where IsIn(target, name) && target.Namespace.FullName != type.Namespace.FullName
            select (From: type.Namespace.FullName, To: target.Namespace.FullName, Why: $"{type.Name} → {target.Name}");
        return pairs
            .GroupBy(pair => pair.From)
            .ToDictionary(
                from => from.Key,
                from => from.GroupBy(pair => pair.To).ToDictionary(to => to.Key, to => to.First().Why)
            );
    }

    // Type parameters have no namespace.
    private static bool IsIn(IType type, string project) =>
        type.Namespace?.FullName is { } name && (name + ".").StartsWith(project + ".", StringComparison.Ordinal);

    // The shortest way from a namespace back to itself, with a type for each step; null where there is none.
    private static string? Circle(Dictionary<string, Dictionary<string, string>> graph, string start)
    {
        var ways = new Queue<(string At, string Way)>([(start, start)]);
        var seen = new HashSet<string>();
        while (ways.TryDequeue(out var here))
            foreach (var (next, why) in graph.GetValueOrDefault(here.At, []))
            {
                var way = $"{here.Way} —({why})→ {next}";
                if (next == start)
                    return way;
                if (seen.Add(next))
                    ways.Enqueue((next, way));
            }

        return null;
    }
}
