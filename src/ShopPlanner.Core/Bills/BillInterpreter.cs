using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>Makes parts of entries, by what the bill as a whole tells: its unit, the order of its figures, whether it writes
/// counts of one.</summary>
/// <param name="entries">In the order written.</param>
/// <param name="named">The unit that a heading names.</param>
internal sealed class BillInterpreter(IReadOnlyList<BillEntry> entries, SizeUnit named)
{
    private const int Evidence = 2;

    /// <summary>Returns the bill.</summary>
    /// <param name="notes">Its lines that aren't parts.</param>
    public StockBill Bill(ImmutableArray<BillNote> notes)
    {
        var (usual, isAssumed) = Unit();
        var resolved = entries.Select(entry => ResolvedEntry.Of(entry, usual)).ToList();
        var votes = OrderVotes.Of(resolved);
        var counted = entries.Count(entry => entry.Count is not null);
        var parts = resolved.Select(entry => Part(entry, votes, usual, isAssumed, counted >= Evidence));
        var unit = usual >= SizeUnit.Millimetre ? LengthUnit.Millimetre : LengthUnit.Inch;
        return new(unit, votes.Order, [.. parts], notes, [.. Remarks(resolved)]);
    }

    private (SizeUnit Unit, bool IsAssumed) Unit()
    {
        if (named != SizeUnit.None)
            return (named, false);
        var sides = entries.SelectMany(entry => entry.Sides).ToList();
        var hasInches = sides.Exists(side => side.Unit is SizeUnit.Inch or SizeUnit.Foot || side.Number.HasFraction);
        if (hasInches)
            return (SizeUnit.Inch, false);
        var metric = sides.Find(side => side.Unit is SizeUnit.Millimetre or SizeUnit.Centimetre);
        return metric is null ? (SizeUnit.Inch, true) : (metric.Unit, false);
    }

    private static BillPart Part(ResolvedEntry resolved, OrderVotes votes, SizeUnit usual, bool isAssumed, bool hasCounts)
    {
        var entry = resolved.Entry;
        var heading = entry.HeadingThickness is { } thick ? Thickness(thick, usual) : null;
        var (size, doubts, notes) = SizeAssignment.Of(resolved.Sides, votes, entry.Order, heading);
        BillSize? bought = resolved.Bought.IsEmpty ? null : SizeAssignment.Of(resolved.Bought, votes, entry.Order, null).Size;
        if (heading is not null && size.Thickness == heading)
            (entry.IsThicknessFromText ? doubts : notes).Add("The thickness is from the text above.");
        if (isAssumed && entry.Sides.Any(side => side.Unit == SizeUnit.None))
            doubts.Add("No unit is written in the bill: inches were assumed.");
        if (entry.IsBoughtOnly)
            doubts.Add("This is the size as bought: the finished size isn't written.");
        var (count, doubt) = PartCounts.Of(entry, hasCounts);
        IEnumerable<string> all =
        [
            .. entry.Doubts,
            .. resolved.Doubts,
            .. doubts,
            .. PartDoubts.Of(entry.Name, count, size, bought),
            .. doubt is null ? Array.Empty<string>() : [doubt],
        ];
        return new BillPart(entry.Line, entry.Name, count, size, resolved.Unit, entry.AsWritten)
        {
            Bought = bought,
            Material = entry.Material,
            Surfacing = entry.Surfacing,
            Notes = [.. entry.Notes.Concat(notes).Distinct()],
            Doubts = [.. all.Distinct()],
        };
    }

    private static Length? Thickness(WrittenSide side, SizeUnit usual) =>
        LengthText.ParsePositive(side.In(usual), LengthUnit.Inch) is { Ok: true } read ? read.Value : null;

    // Lumber is sold under larger figures than it measures; a bill may mean either.
    private static IEnumerable<string> Remarks(List<ResolvedEntry> resolved)
    {
        if (resolved.Exists(entry => entry.Unit == LengthUnit.Inch))
            yield return "Sizes are taken as written. A board that a store calls 1 × 4 or 2 × 4 measures less.";
    }
}
