using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>The faults of a request or a document: all are counted, the first hundred are kept.</summary>
internal sealed class FaultList
{
    public const int MostKept = 100;

    private readonly List<Fault> kept = [];
    private readonly HashSet<string> members = new(StringComparer.Ordinal);

    public int Count { get; private set; }

    public void Add(Fault fault)
    {
        members.Add(fault.Field);
        if (Count++ < MostKept)
            kept.Add(fault);
    }

    public void Add(string path, string value, string message) => Add(Fault.Of(path, value, message));

    /// <summary>Adds a fault of a member that has none yet: a member that is wrong by itself is not judged beside
    /// others.</summary>
    public void AddOnce(Fault fault)
    {
        if (!Names(fault.Field))
            Add(fault);
    }

    /// <summary>Whether a fault of the member was added, kept or only counted.</summary>
    public bool Names(string member) => members.Contains(member);

    public ImmutableArray<Fault> ToImmutable() =>
        Count <= MostKept
            ? [.. kept]
            : [.. kept, new Fault("", $"and {Count - MostKept} more", "faults are not listed: mend these first")];
}
