using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>What lies under a part that carries a load.</summary>
internal static class Support
{
    /// <summary>The longest stretch of a shelf, slat or beam that nothing carries; its ends are taken to be held.</summary>
    /// <param name="shelf">The part.</param>
    /// <param name="copies">Of the whole piece.</param>
    /// <param name="props">Marks of what is fastened to its side and stands on the floor.</param>
    public static Length Span(PartCopy shelf, IEnumerable<PartCopy> copies, IReadOnlyCollection<string>? props = null)
    {
        var (axis, box) = (shelf.Along, shelf.Box);
        var supports = copies
            .Where(one => one.Mark != shelf.Mark && (Carries(one.Box, box) || props?.Contains(one.Mark) == true))
            .Select(one =>
                (From: Length.Max(one.Box.Start(axis), box.Start(axis)), To: Length.Min(one.Box.End(axis), box.End(axis)))
            )
            .Append((From: box.Start(axis), To: box.Start(axis)))
            .Append((From: box.End(axis), To: box.End(axis)))
            .OrderBy(one => one.From);
        var (longest, reached) = (Length.Zero, box.Start(axis));
        foreach (var (from, to) in supports)
            (longest, reached) = (Length.Max(longest, from - reached), Length.Max(reached, to));
        return longest;
    }

    // Touches it from below over its depth, or lets it in: moved down by a tick the shelf would meet it.
    private static bool Carries(Box other, Box shelf) =>
        other.Shared(shelf.Moved(Length.Zero, Length.Zero, Length.FromTicks(-1))) is not null;
}
