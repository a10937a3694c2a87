namespace ShopPlanner.Core.Bills;

/// <summary>What a part is called and how many there are, from the words around its size.</summary>
internal static class EntryNames
{
    /// <summary>Returns the entry with its name, and what is left of the words as notes.</summary>
    /// <param name="entry">Without a name.</param>
    /// <param name="before">The words before the size.</param>
    /// <param name="stock">The words for what the size is of.</param>
    /// <param name="after">The words after the size.</param>
    public static BillEntry Named(BillEntry entry, EntryWords before, EntryWords stock, EntryWords after)
    {
        var names = before.Phrases;
        var notes = after.Phrases;
        if (names.Count == 0 && notes.Count > 0 && !IsAside(notes[0]))
        {
            names = notes[..1];
            notes = notes[1..];
        }
        else if (names.Count == 0 && notes.Count == 0 && after.Asides.Count > 0)
            names = [after.Asides[0]];
        var name = BillNames.Short(string.Join(", ", names.Take(3)));
        if (name.Length > 0)
            return entry with
            {
                Name = name,
                IsGeneric = IsGeneric(name),
                IsNamedApart = before.Generic is not null,
                Notes = [.. notes],
            };
        var generic = before.Generic ?? stock.Phrases.FirstOrDefault() ?? stock.Generic ?? after.Generic ?? "";
        return entry with { Name = generic, IsGeneric = true, Notes = [.. notes] };
    }

    /// <summary>Returns the entry with its count.</summary>
    /// <param name="entry">Without a count.</param>
    /// <param name="before">The words before the size.</param>
    /// <param name="after">The words after the size.</param>
    /// <param name="size">The size, whose first figure may hold the count.</param>
    public static BillEntry Counted(BillEntry entry, EntryWords before, EntryWords after, WrittenSize size)
    {
        if (before.Counts.Count > 0)
            return After(Before(entry, before.Counts), after);
        if (after.Counts.Count > 0)
            return entry with { Count = after.Counts[0].Value };
        return size.Sides[0].Number is { IsSpaced: true } ? SpacedCount.Split(entry) : entry;
    }

    private static BillEntry Before(BillEntry entry, List<FoundCount> counts)
    {
        if (counts.Count == 1)
            return entry with { Count = counts[0].Value };
        if (counts is [{ IsOfGroup: true } group, var own])
            return OfGroup(entry with { Count = own.Value }, group.Value);
        if (counts[^1].IsBare && !counts[^1].IsAdded)
            return (entry with { Count = counts[^1].Value }).Doubt(
                $"Two figures may be the count: {counts[^2].Value} and {counts[^1].Value}."
            );
        var sum = entry with { Count = (int)Math.Min(int.MaxValue, counts.Sum(count => (long)count.Value)) };
        return counts.Skip(1).All(count => count.IsAdded)
            ? sum
            : sum.Doubt($"The counts before the size were added up to {sum.Count}.");
    }

    /// <summary>Returns the entry as one of a group of so many pieces of furniture.</summary>
    public static BillEntry OfGroup(BillEntry entry, int group) =>
        group == 1 ? entry : entry.Doubt($"It is for {group} alike: check whether the count is for one or for all.");

    private static BillEntry After(BillEntry entry, EntryWords after) =>
        after.Counts.Exists(count => count.Value != entry.Count)
            ? entry.Doubt($"Two figures may be the count: {entry.Count} and {after.Counts[0].Value}.")
            : entry;

    private static bool IsGeneric(string name) => BillWords.Pieces.Contains(name.ToLowerInvariant());

    // "planed on two sides" isn't a name.
    private static bool IsAside(string phrase) =>
        phrase.Split(' ', 2)[0].ToLowerInvariant()
            is "planed"
                or "surfaced"
                or "dressed"
                or "two"
                or "four"
                or "smoothed"
                or "sandpapered";
}
