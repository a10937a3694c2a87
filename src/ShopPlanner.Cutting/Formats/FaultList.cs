using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>The faults found while a document is read: all are counted, the first hundred are kept.</summary>
internal sealed class FaultList
{
    public const int MostKept = 100;

    private readonly List<Fault> kept = [];

    public int Count { get; private set; }

    public void Add(Fault fault)
    {
        if (Count++ < MostKept)
            kept.Add(fault);
    }

    public void Add(string path, string value, string message) => Add(Fault.Of(path, value, message));

    public ImmutableArray<Fault> ToImmutable() =>
        Count <= MostKept
            ? [.. kept]
            : [.. kept, new Fault("", $"and {Count - MostKept} more", "faults are not listed: mend these first")];
}
