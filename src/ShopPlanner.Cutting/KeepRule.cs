using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>
/// Which leftovers are worth keeping. This is the only place that decides it for the planner; sizes are those of the wood, kerfs
/// taken off.
/// <para>A leftover of a sheet is kept when its longer side is at least the longer, and its shorter side at least the shorter, of
/// <see cref="SheetLength"/> and <see cref="SheetWidth"/>. Where one of the two is null, none is kept.</para>
/// <para>A leftover of a board is kept when it is at least <see cref="BoardLength"/> long and at least half as wide as its
/// material (our rule: a narrower strip is rarely found again). Where the length is null, none is kept.</para>
/// </summary>
/// <param name="BoardLength">The least length of a board's leftover, along the grain, zero or more.</param>
/// <param name="SheetLength">The least longer side of a sheet's leftover, zero or more.</param>
/// <param name="SheetWidth">The least shorter side of a sheet's leftover, zero or more.</param>
public sealed record KeepRule(Length? BoardLength, Length? SheetLength, Length? SheetWidth)
{
    /// <summary>The usual rule. Common practice: a foot of a board, a foot by half a foot of a sheet.</summary>
    public static readonly KeepRule Usual = new(Length.FromInches(12), Length.FromInches(12), Length.FromInches(6));

    /// <summary>Returns the least sizes that are kept: a leftover is worth keeping when it is at least as long and as wide as one
    /// of them. Empty where none is kept.</summary>
    /// <param name="material">The material of the leftover.</param>
    public ImmutableArray<LeastSize> LeastSizes(CutMaterial material)
    {
        ArgumentNullException.ThrowIfNull(material);
        if (material.Form == StockForm.Board)
            return BoardLength is { } least ? [new(least, Half(material.Width!.Value))] : [];
        if (this is not { SheetLength: { } one, SheetWidth: { } other })
            return [];
        var (longer, shorter) = (Length.Max(one, other), Length.Min(one, other));
        return longer == shorter ? [new(longer, longer)] : [new(longer, shorter), new(shorter, longer)];
    }

    /// <summary>Returns the least length that is kept of a leftover so wide; null where none is.</summary>
    /// <param name="material">The material of the leftover.</param>
    /// <param name="across">The leftover's size across the grain.</param>
    public Length? LeastAlong(CutMaterial material, Length across) =>
        LeastSizes(material).Where(least => across >= least.Across).Select(least => (Length?)least.Along).Min();

    /// <summary>Returns whether a leftover is worth keeping.</summary>
    /// <param name="material">The material of the leftover.</param>
    /// <param name="along">The leftover's size along the grain.</param>
    /// <param name="across">The leftover's size across the grain.</param>
    public bool Keeps(CutMaterial material, Length along, Length across) => along >= LeastAlong(material, across);

    // Half a tick is no size, so half of an odd number is the next whole one.
    private static Length Half(Length width) => Length.FromTicks((width.Ticks + 1) / 2);
}

/// <summary>A size that a leftover must reach both ways to be worth keeping.</summary>
/// <param name="Along">The size along the grain.</param>
/// <param name="Across">The size across the grain.</param>
public readonly record struct LeastSize(Length Along, Length Across);
