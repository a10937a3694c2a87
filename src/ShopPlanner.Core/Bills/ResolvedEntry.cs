using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>A side as a length.</summary>
/// <param name="Value">Null where it isn't read.</param>
/// <param name="Role">What the text calls it.</param>
internal readonly record struct ResolvedSide(Length? Value, SizeRole Role);

/// <summary>An entry whose figures are lengths.</summary>
/// <param name="Entry">As written.</param>
/// <param name="Sides">In the order written.</param>
/// <param name="Bought">The sides as bought, where both are told.</param>
/// <param name="Unit">The unit it is written in.</param>
/// <param name="Doubts">What isn't certain of the figures.</param>
internal sealed record ResolvedEntry(
    BillEntry Entry,
    ImmutableArray<ResolvedSide> Sides,
    ImmutableArray<ResolvedSide> Bought,
    LengthUnit Unit,
    ImmutableArray<string> Doubts
)
{
    /// <summary>The figures that the text doesn't name, where there are exactly so many and all are read; empty else.</summary>
    /// <param name="count">How many.</param>
    public Length[] Unnamed(int count)
    {
        Length[] found = [.. Sides.Where(side => side.Role == SizeRole.None).Select(side => side.Value).OfType<Length>()];
        return
            found.Length == count && Sides.All(side => side.Value is not null && side.Role is SizeRole.None or SizeRole.Thickness)
            ? found
            : [];
    }

    /// <summary>Reads the figures of an entry.</summary>
    /// <param name="entry">As written.</param>
    /// <param name="usual">The unit of a figure that shares none with its neighbors.</param>
    public static ResolvedEntry Of(BillEntry entry, SizeUnit usual)
    {
        var doubts = ImmutableArray.CreateBuilder<string>();
        var sides = Lengths(entry.Sides, usual, doubts);
        var bought = Lengths(entry.Bought, usual, doubts);
        var units = entry.Sides.Select((_, at) => UnitOf(entry.Sides, at, usual)).ToList();
        var isMetric = units.Count > 0 && units.TrueForAll(unit => unit >= SizeUnit.Millimetre);
        if (!isMetric && units.Exists(unit => unit >= SizeUnit.Millimetre))
            doubts.Add("The size mixes inches and metric units.");
        return new(entry, sides, bought, isMetric ? LengthUnit.Millimetre : LengthUnit.Inch, doubts.ToImmutable());
    }

    private static ImmutableArray<ResolvedSide> Lengths(
        ImmutableArray<WrittenSide> sides,
        SizeUnit usual,
        ImmutableArray<string>.Builder doubts
    )
    {
        var lengths = ImmutableArray.CreateBuilder<ResolvedSide>(sides.Length);
        for (var at = 0; at < sides.Length; at++)
        {
            var side = sides[at];
            var isBeforeFeet = IsBeforeFeet(sides, at);
            if (isBeforeFeet)
                doubts.Add($"‘{side.Plain}’ before feet has no unit.");
            var value = side.IsOpen || isBeforeFeet ? null : Value(side, UnitOf(sides, at, usual), doubts);
            if (side.Unit == SizeUnit.None && at > 0 && sides[at - 1].Unit == SizeUnit.Foot && usual == SizeUnit.Inch)
                doubts.Add($"‘{side.Plain}’ after feet has no unit.");
            lengths.Add(new(value, side.Role));
        }

        return lengths.MoveToImmutable();
    }

    // "4 by 8 ft." may be feet both; "2 by 4 by 6 ft." is inches and feet.
    private static bool IsBeforeFeet(ImmutableArray<WrittenSide> sides, int at) =>
        sides[at] is { Unit: SizeUnit.None, Role: SizeRole.None, Number.HasFraction: false }
        && at + 1 < sides.Length
        && sides[at + 1] is { Unit: SizeUnit.Foot or SizeUnit.Metre, Role: SizeRole.None }
        && (at == 0 || sides[at - 1].Role == SizeRole.Thickness);

    private static Length? Value(WrittenSide side, SizeUnit unit, ImmutableArray<string>.Builder doubts)
    {
        var text = side.In(unit);
        var read = LengthText.ParsePositive(text, LengthUnit.Inch);
        if (read.Ok)
            return read.Value;
        doubts.Add($"‘{text}’ {read.Fault.Message}.");
        return null;
    }

    // A figure without a unit shares that of the next one that has it: 2 by 4 in.; never feet or meters: 2 by 4 by 6 ft.
    private static SizeUnit UnitOf(ImmutableArray<WrittenSide> sides, int at, SizeUnit usual)
    {
        if (sides[at].Unit != SizeUnit.None)
            return sides[at].Unit;
        for (var next = at + 1; next < sides.Length; next++)
            if (sides[next].IsShared)
                return sides[next].Unit;
        for (var before = at - 1; before >= 0; before--)
            if (sides[before].IsShared)
                return sides[before].Unit;
        return usual;
    }
}
