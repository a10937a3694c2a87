using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Documents;

/// <summary>The faults of a document: all are counted, the first hundred are kept. Nobody mends more at a time.</summary>
public sealed class FaultList
{
    /// <summary>The most that are kept.</summary>
    public const int MostKept = 100;

    private readonly List<Fault> kept = [];
    private readonly HashSet<string> members = new(StringComparer.Ordinal);

    /// <summary>How many were added.</summary>
    public int Count { get; private set; }

    /// <summary>Returns each of some faults once, the first hundred; one more says how many are left out.</summary>
    public static ImmutableArray<Fault> Cap(IEnumerable<Fault> faults)
    {
        var list = new FaultList();
        foreach (var fault in faults.Distinct())
            list.Add(fault);
        return list.ToImmutable();
    }

    /// <summary>Adds a fault.</summary>
    public void Add(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        members.Add(fault.Field);
        if (Count++ < MostKept)
            kept.Add(fault);
    }

    /// <summary>Adds a fault.</summary>
    /// <param name="path">The member.</param>
    /// <param name="value">As it stands in the document.</param>
    /// <param name="message">What is wrong with it.</param>
    public void Add(string path, string value, string message) => Add(Fault.Of(path, value, message));

    /// <summary>Adds a fault of a member that has none yet: a member that is wrong by itself is not judged beside
    /// others.</summary>
    public void AddOnce(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        if (!Names(fault.Field))
            Add(fault);
    }

    /// <summary>Whether a fault of the member was added, kept or only counted.</summary>
    public bool Names(string member) => members.Contains(member);

    /// <summary>Returns those that are kept; one more says how many are not.</summary>
    public ImmutableArray<Fault> ToImmutable() =>
        Count <= MostKept
            ? [.. kept]
            : [.. kept, new Fault("", $"and {Count - MostKept} more", "errors are not shown: fix these first")];
}
