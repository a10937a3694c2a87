namespace ShopPlanner.Core.Bills;

/// <summary>What a sentence without a size says for the parts below it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Says">What was understood, in plain words.</param>
internal sealed record BillHeading(BillNoteKind Kind, string Says)
{
    private const int MostWords = 8;
    private const int MostGroupWords = 5;

    /// <summary>The wood that it sets.</summary>
    public string? Material { get; init; }

    /// <summary>The planing that it sets.</summary>
    public string? Surfacing { get; init; }

    /// <summary>The thickness that it sets.</summary>
    public WrittenSide? Thickness { get; init; }

    /// <summary>The order of figures that it names.</summary>
    public SizeOrder? Order { get; init; }

    /// <summary>The unit that it names.</summary>
    public SizeUnit Unit { get; init; }

    /// <summary>Whether it says that sizes are as bought, or as finished.</summary>
    public bool? IsBought { get; init; }

    /// <summary>What the pieces below it are for.</summary>
    public string? Group { get; init; }

    /// <summary>How many of those there are.</summary>
    public int GroupCount { get; init; } = 1;

    /// <summary>Whether it is running text, and not a heading.</summary>
    public bool IsText { get; init; }

    /// <summary>Reads a sentence.</summary>
    /// <param name="tokens">Of the sentence.</param>
    /// <param name="text">The statement that it is in.</param>
    /// <param name="sizes">The single sides in it.</param>
    public static BillHeading Of(BillToken[] tokens, string text, List<WrittenSize> sizes)
    {
        var words = tokens.Where(token => token.Kind == TokenKind.Word).ToList();
        var isShort = words.Count <= MostWords;
        if (isShort && IsHardware(words))
            return new(BillNoteKind.Hardware, "Hardware, kept as a note.");
        var hasCount = BillCounts.Begins(tokens) || BillCounts.FollowsName(tokens);
        var thickness = sizes.Find(size => size.Sides is [{ Role: SizeRole.Thickness, IsOpen: false }])?.Sides[0];
        var wood = Wood(tokens, text, isShort);
        var set = new BillHeading(BillNoteKind.Heading, "")
        {
            Material = wood,
            Surfacing =
                isShort && (wood is not null || words.Count == 0)
                    ? tokens.FirstOrDefault(token => token.Kind == TokenKind.Surfacing)?.Text
                    : null,
            Thickness = thickness,
            Order = words.Count <= 2 * MostWords ? SizeOrders.Named(words.Select(RoleOf)) : null,
            Unit = isShort ? UnitOf(words) : SizeUnit.None,
            IsBought = isShort ? Label(words) : null,
            Group = isShort ? GroupOf(tokens, text, words) : null,
            IsText = !isShort,
        };
        if (set.Order is not null)
            set = set with { Group = null };
        if (hasCount && set.Group is not null)
            set = set with { GroupCount = CountOf(tokens) };
        else if (hasCount && thickness is null && isShort)
            return new(BillNoteKind.NoSize, "No size is written.");
        var says = set.Words();
        return set with
        {
            Kind = says.Length > 0 || (isShort && sizes.Count == 0) ? BillNoteKind.Heading : BillNoteKind.Text,
            Says = says,
        };
    }

    /// <summary>Whether the words name hardware, or something that isn't wood.</summary>
    public static bool IsHardware(IReadOnlyList<BillToken> words)
    {
        var end = HeadEnd(words);
        if (end == 0)
            return false;
        var isPiece = words[end - 1].IsIn(BillWords.Pieces) && end < words.Count && words[end].Is("of");
        return words[end - 1].IsIn(BillWords.Hardware)
            || words.Any(word => word.IsIn(BillWords.Metals))
            || (words[0].IsIn(BillWords.Hardware) && words.Count > 1 && IsCounting(words[1]))
            || (isPiece && words.Skip(end).Any(word => word.IsIn(BillWords.Hardware)));
    }

    /// <summary>Whether the words name what is cut into a part: a tenon, a hole.</summary>
    public static bool IsCut(IReadOnlyList<BillToken> words) =>
        HeadEnd(words) is > 0 and var end && words[end - 1].IsIn(BillWords.Cuts);

    // The noun ends before the first "for" or "of".
    private static int HeadEnd(IReadOnlyList<BillToken> words)
    {
        var end = 0;
        while (end < words.Count && !(end > 0 && words[end].Text is "for" or "of" or "with" or "to" or "on" or "in" or "at"))
            end++;
        return end;
    }

    private static bool IsCounting(BillToken word) => word.IsIn(BillWords.Bare) || BillWords.Numbers.ContainsKey(word.Text);

    private string Words()
    {
        var set = new List<string>();
        if (Material is not null)
            set.Add($"wood: {Material}");
        if (Surfacing is not null)
            set.Add($"planing: {Surfacing}");
        if (Thickness is not null)
            set.Add($"thickness: {Thickness.Plain}");
        if (Order is { } order)
            set.Add($"order of figures: {SizeOrders.Words(order)}");
        if (Unit != SizeUnit.None)
            set.Add("the unit");
        if (IsBought is { } bought)
            set.Add(bought ? "sizes as bought" : "finished sizes");
        if (Group is not null)
            set.Add($"what it is for: {Group}");
        return set.Count > 0 ? "Sets " + string.Join("; ", set) + "." : "";
    }

    private static int CountOf(BillToken[] tokens) =>
        Enumerable.Range(0, tokens.Length).Select(at => BillCounts.Read(tokens, at)).FirstOrDefault(count => count is not null)
        ?? 1;

    private static SizeRole RoleOf(BillToken word) =>
        BillWords.Nouns.TryGetValue(word.Text, out var role) || BillWords.After.TryGetValue(word.Text, out role)
            ? role
            : SizeRole.None;

    // A heading names its wood; in running text "of", "in" or "use" comes before it, and no other wood is named.
    private static string? Wood(BillToken[] tokens, string text, bool isShort)
    {
        string? wood = null;
        for (var at = 0; at < tokens.Length; )
        {
            var end = WoodWords.End(tokens, at, tokens.Length);
            if (end == at)
            {
                at++;
                continue;
            }

            var found = BillNames.Join(text, tokens[at..end]);
            if (wood is not null && wood != found)
                return null;
            if (isShort || (at > 0 && tokens[at - 1].Text is "of" or "in" or "use" or "from" or "selected"))
                wood = found;
            at = end;
        }

        return wood;
    }

    private static SizeUnit UnitOf(List<BillToken> words)
    {
        // "in" is a unit in tables alone, and nobody writes a bill in meters.
        var units = words.Select(word => word.Is("in") ? SizeUnit.None : BillWords.UnitOf(word.Text));
        return units.FirstOrDefault(unit => unit is SizeUnit.Inch or SizeUnit.Millimetre or SizeUnit.Centimetre);
    }

    private static bool? Label(List<BillToken> words)
    {
        var isBought = words.Where((_, at) => BillWords.IsBought(words, at)).Any();
        var isFinished = words.Exists(word => word.IsIn(BillWords.Finished));
        return isBought == isFinished ? null : isBought;
    }

    // "For the drawer:", "Sides:"; not "Stock bill:".
    private static string? GroupOf(BillToken[] tokens, string text, List<BillToken> words)
    {
        var isNamed = tokens[^1].Kind == TokenKind.Colon || words is [{ Text: "for" }, ..];
        if (!isNamed || words.Count > MostGroupWords || words.Exists(word => word.IsIn(BillWords.Lists)))
            return null;
        return EntryWords.Of(tokens, text, 0, tokens.Length, isAfter: false).Phrases is [var named] ? named : null;
    }
}
