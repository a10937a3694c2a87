namespace ShopPlanner.Core.Bills;

/// <summary>Reads the parts of one sentence: each size with the words that belong to it.</summary>
/// <param name="tokens">Of the sentence.</param>
/// <param name="statement">That it is in.</param>
/// <param name="sizes">Found in it: at least one.</param>
internal sealed class EntryParser(BillToken[] tokens, BillStatement statement, List<WrittenSize> sizes)
{
    private const int LabelReach = 3;

    private readonly string text = statement.Text;

    // A size, a second one as bought or finished, and the tokens around them.
    private sealed record Group(int Start, WrittenSize Size)
    {
        public WrittenSize? Second { get; init; }

        public int End { get; init; }

        public bool HasStray { get; init; }

        public int SizeEnd => (Second ?? Size).End;
    }

    /// <summary>Returns the entries, in order.</summary>
    public List<BillEntry> Read()
    {
        var entries = new List<BillEntry>();
        foreach (var group in Groups())
            entries.Add(Inherit(Entry(group), entries.Count > 0 ? entries[^1] : null));
        return entries;
    }

    private List<Group> Groups()
    {
        var groups = new List<Group>();
        groups.Add(new(0, sizes[0]));
        for (var at = 1; at < sizes.Count; at++)
            Place(groups, sizes[at], sizes[at - 1].End);
        groups[^1] = groups[^1] with { End = tokens.Length };
        return groups;
    }

    private void Place(List<Group> groups, WrittenSize size, int from)
    {
        var last = groups[^1];
        var count = CountBetween(from, size.Start);
        if (count < 0 && last.Second is null && size.Told > 1 && IsPair(last, size))
            groups[^1] = last with { Second = size };
        else if (count < 0 && size.Told < 2)
            groups[^1] = last with { HasStray = last.HasStray || last.Size.Told < 3 || !IsAside(from, size) };
        else if (count < 0 && last.Size.Told < 2 && groups.Count == 1 && !last.HasStray)
            groups[^1] = last with { Size = size, HasStray = true };
        else
        {
            var start = count >= 0 ? NameStart(last, count, from) : AfterMark(from, size.Start);
            groups[^1] = last with { End = start };
            groups.Add(new(start, size));
        }
    }

    // A tenon's length, or a figure in parentheses, leaves a whole size as it is.
    private bool IsAside(int from, WrittenSize size) =>
        (size.End < tokens.Length && tokens[size.End].IsIn(BillWords.Cuts))
        || (size.Start > 1 && tokens[size.Start - 1].Is("to") && tokens[size.Start - 2].Text is "tapered" or "tapering")
        || Array.FindIndex(tokens, from, size.Start - from, token => token.Kind == TokenKind.Open) >= 0;

    private int CountBetween(int start, int end)
    {
        var depth = 0;
        for (var at = start; at < end; at++)
        {
            depth +=
                tokens[at].Kind == TokenKind.Open ? 1
                : tokens[at].Kind == TokenKind.Close ? -1
                : 0;
            if (depth <= 0 && BillCounts.Read(tokens, at) is not null && (at + 1 == end || IsCounted(tokens[at + 1])))
                return at;
        }

        return -1;
    }

    private static bool IsCounted(BillToken token) =>
        token.Kind is TokenKind.Word or TokenKind.Ditto or TokenKind.Dash or TokenKind.Comma or TokenKind.Close;

    // Two sizes of one part: one as bought, the other finished.
    private bool IsPair(Group last, WrittenSize size) =>
        IsLabeled(last.Start, last.Size.Start)
        || IsLabeled(last.Size.End, size.Start)
        || IsLabeled(size.End, Math.Min(tokens.Length, size.End + LabelReach));

    private bool IsLabeled(int start, int end)
    {
        for (var at = start; at < end; at++)
            if (tokens[at].IsIn(BillWords.Bought) || tokens[at].IsIn(BillWords.Finished))
                return true;
        return false;
    }

    // Where names come before counts, the next part begins with its name: "..., rails, 2 pieces, ...".
    private int NameStart(Group last, int count, int from)
    {
        var isNameFirst =
            CountBetween(last.Start, last.Size.Start) is var own && own > last.Start && tokens[last.Start].Kind == TokenKind.Word;
        if (!isNameFirst)
            return count;
        var at = count - 1;
        while (at > from && tokens[at].Kind is TokenKind.Comma or TokenKind.Colon or TokenKind.Dash or TokenKind.Open)
            at--;
        var end = at;
        while (at >= from && tokens[at].Kind == TokenKind.Word && WoodWords.End(tokens, at, tokens.Length) == at)
            at--;
        if (at < end && tokens[at + 1].Is("and"))
            at++;
        return at < end ? at + 1 : count;
    }

    private int AfterMark(int start, int end)
    {
        for (var at = end - 1; at >= start; at--)
            if (tokens[at].Kind is TokenKind.Comma or TokenKind.Dash || tokens[at].Is("and"))
                return at + 1;
        return end;
    }

    private BillEntry Entry(Group group)
    {
        var before = EntryWords.Of(tokens, text, group.Start, group.Size.Start, isAfter: false);
        var after = EntryWords.Of(tokens, text, group.SizeEnd, group.End, isAfter: true);
        var between = group.Second is { } second
            ? EntryWords.Of(tokens, text, group.Size.End, second.Start, isAfter: true)
            : null;
        var stock = EntryWords.Of(tokens, text, group.Size.Stock.Start.Value, group.Size.Stock.End.Value, isAfter: false);
        var start = tokens[group.Start].Start;
        var entry = new BillEntry(statement.LineAt(start), text[start..tokens[group.End - 1].End].TrimEnd(' ', ',', ';'))
        {
            Sides = group.Size.Sides,
            Material = before.Material ?? stock.Material ?? between?.Material ?? after.Material,
            Surfacing = before.Surfacing ?? between?.Surfacing ?? after.Surfacing,
            HasArticle = before.HasArticle,
            IsDitto = before.IsDitto || after.IsDitto,
            SetsMaterial = before.SetsMaterial,
        };
        entry = Labeled(entry, group, before, between, after);
        entry = EntryNames.Named(entry, before, stock, after);
        entry = EntryNames.Counted(entry, before, after, group.Size);
        return Doubted(entry, group, before, after);
    }

    private static BillEntry Labeled(BillEntry entry, Group group, EntryWords before, EntryWords? between, EntryWords after)
    {
        if (group.Second is not { } second || between is null)
            return entry with { IsBoughtOnly = (before.IsBought || after.IsBought) && !before.IsFinished && !after.IsFinished };
        var isFirstBought = before.IsBought || (between.IsBought && !after.IsBought && !before.IsFinished) || after.IsFinished;
        var isSecondBought = after.IsBought || before.IsFinished || (between.IsBought && !isFirstBought);
        if (isFirstBought == isSecondBought)
            entry = entry.Doubt("Which of the two sizes is the finished one isn't clear.");
        return isSecondBought || !isFirstBought
            ? entry with
            {
                Bought = second.Sides,
            }
            : entry with
            {
                Sides = second.Sides,
                Bought = group.Size.Sides,
            };
    }

    private static BillEntry Doubted(BillEntry entry, Group group, EntryWords before, EntryWords after)
    {
        var doubts = entry.Doubts.ToBuilder();
        doubts.AddRange(entry.Sides.Concat(entry.Bought).SelectMany(side => side.Doubts));
        if (group.Size.IsCutOff || group.Second is { IsCutOff: true })
            doubts.Add("The size breaks off.");
        if (before.IsCorrected)
            doubts.Add("The letter before the name was read as a count of 1.");
        if (group.HasStray)
            doubts.Add("There is one more figure on the line.");
        if (before.IsAbout || after.IsAbout)
            doubts.Add("The size is called approximate.");
        if (before.HasPair)
            doubts.Add("The count is in pairs: check how many pieces there are.");
        return entry with
        {
            // Two sides and one more figure may be anything.
            Sides = group.HasStray && entry.Told < 3 ? [] : entry.Sides,
            Doubts = doubts.ToImmutable(),
            Notes = [.. entry.Notes, .. before.Asides, .. after.Asides],
        };
    }

    // "Rails: 4 pieces ... and 2 pieces ...": the second is called what the first is.
    private static BillEntry Inherit(BillEntry entry, BillEntry? previous) =>
        previous is { Name.Length: > 0 } && (entry.Name.Length == 0 || (entry.IsGeneric && previous.IsNamedApart))
            ? entry with
            {
                Name = previous.Name,
                IsGeneric = previous.IsGeneric,
                IsNamedApart = previous.IsNamedApart,
            }
            : entry;
}
