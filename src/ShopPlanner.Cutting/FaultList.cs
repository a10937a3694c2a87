using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>
/// Collects faults. A member is told once only: what was wrong with it first. A list nobody can read to the end is cut off and
/// counted.
/// </summary>
public sealed class FaultList
{
    /// <summary>The most faults that are told.</summary>
    public const int MostTold = 100;

    private readonly ImmutableArray<Fault>.Builder _told = ImmutableArray.CreateBuilder<Fault>();
    private readonly HashSet<string> _members = new(StringComparer.Ordinal);

    /// <summary>The faults told.</summary>
    public ImmutableArray<Fault> Told => _told.ToImmutable();

    /// <summary>How many more there were.</summary>
    public int More { get; private set; }

    /// <summary>True when there is a fault.</summary>
    public bool Any => _told.Count > 0;

    /// <summary>Adds one, unless its member has one already.</summary>
    public void Add(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        if (_told.Count >= MostTold)
            More++;
        else if (_members.Add(fault.Field))
            _told.Add(fault);
    }

    /// <summary>Adds one about a member's value.</summary>
    public void Add(string field, string? value, string message) => Add(Fault.Of(field, value, message));
}
