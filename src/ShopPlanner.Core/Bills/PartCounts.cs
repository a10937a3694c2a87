using System.Collections.Frozen;

namespace ShopPlanner.Core.Bills;

/// <summary>How many pieces a line without a count means.</summary>
internal static class PartCounts
{
    private static readonly FrozenSet<string> Several = new[]
    {
        "leg",
        "post",
        "side",
        "end",
        "slat",
        "cleat",
        "rail",
        "stile",
        "bracket",
        "foot",
        "arm",
        "rocker",
        "piece",
        "pc",
        "pcs",
    }.ToFrozenSet();

    /// <summary>Returns the count, and the doubt about it; null for none.</summary>
    /// <param name="entry">As written.</param>
    /// <param name="hasCounts">Whether other lines of the bill have counts, so that one without means one piece.</param>
    public static (int? Count, string? Doubt) Of(BillEntry entry, bool hasCounts)
    {
        if (entry.Count is { } count)
            return (count, null);
        var last = entry.Name.Split(' ')[^1].ToLowerInvariant();
        var isPlural = last.Length == 0 || (last.EndsWith('s') && !last.EndsWith("ss", StringComparison.Ordinal));
        if (isPlural || entry.Name.Contains(" and ", StringComparison.Ordinal))
            return (null, "No count is written.");
        // A name in small letters may be the end of a line that was broken, with its count lost.
        var isOne = !Several.Contains(last) && (entry.HasArticle || (hasCounts && char.IsUpper(entry.Name[0])));
        return (1, isOne ? null : "No count is written: one was assumed.");
    }
}
