namespace ShopPlanner.Core.Bills;

/// <summary>Goes through a bill's statements and keeps what headings set for the parts below them.</summary>
/// <param name="statements">Of the text.</param>
internal sealed class BillReader(List<BillStatement> statements)
{
    private readonly List<BillEntry> entries = [];
    private readonly List<BillNote> notes = [];
    private BillHeading heading = new(BillNoteKind.Heading, "");
    private (BillColumns Columns, RowParser Rows)? table;
    private BillStatement? last;

    /// <summary>Returns the bill.</summary>
    public StockBill Read()
    {
        foreach (var statement in statements)
            Take(statement);
        return new BillInterpreter(entries, heading.Unit).Bill([.. notes]);
    }

    private void Take(BillStatement statement)
    {
        if (statement.IsColumnHeading)
            Head(statement, statement.Tokens, []);
        else if (statement.Columns is not { } columns || Rows(columns).Read(statement) is not { Sides.Length: > 0 } row)
            foreach (var sentence in Sentences(statement.Tokens))
                Sentence(statement, sentence);
        else
            Judge(statement, row);
    }

    private RowParser Rows(BillColumns columns)
    {
        if (table is not { } known || known.Columns != columns)
            table = (columns, new RowParser(columns));
        return table.Value.Rows;
    }

    // At semicolons and at the ends of sentences, outside of parentheses.
    private static IEnumerable<BillToken[]> Sentences(BillToken[] tokens)
    {
        var (start, depth) = (0, 0);
        for (var at = 0; at < tokens.Length; at++)
        {
            depth +=
                tokens[at].Kind == TokenKind.Open ? 1
                : tokens[at].Kind == TokenKind.Close && depth > 0 ? -1
                : 0;
            var isPeriod = tokens[at].Kind == TokenKind.Period && depth == 0 && !IsComma(tokens, at + 1);
            if (!isPeriod && tokens[at].Kind != TokenKind.Semicolon)
                continue;
            if (at > start)
                yield return tokens[start..at];
            start = at + 1;
        }

        if (start < tokens.Length)
            yield return tokens[start..];
    }

    // "S-2-S., oak": the period is that of an abbreviation.
    private static bool IsComma(BillToken[] tokens, int at) => at < tokens.Length && tokens[at].Kind == TokenKind.Comma;

    private void Sentence(BillStatement statement, BillToken[] tokens)
    {
        var sizes = SizeParser.FindAll(tokens, statement.Text);
        if (!sizes.Exists(size => size.Told >= 2))
        {
            Head(statement, tokens, sizes);
            return;
        }

        foreach (var entry in new EntryParser(tokens, statement, sizes).Read())
            Judge(statement, entry);
    }

    private void Head(BillStatement statement, BillToken[] tokens, List<WrittenSize> sizes)
    {
        var read = BillHeading.Of(tokens, statement.Text, sizes);
        if (read.Kind == BillNoteKind.Heading)
            heading = heading with
            {
                Material = read.IsText ? heading.Material ?? read.Material : read.Material ?? heading.Material,
                Surfacing = read.Surfacing ?? (read.Material is null ? heading.Surfacing : null),
                Thickness = read.Thickness ?? heading.Thickness,
                IsText = read.Thickness is null ? heading.IsText : read.IsText,
                Order = read.Order ?? heading.Order,
                Unit = read.Unit == SizeUnit.None ? heading.Unit : read.Unit,
                IsBought = read.IsBought ?? heading.IsBought,
                Group = read.Group,
                GroupCount = read.GroupCount,
            };
        Note(statement, tokens, read);
    }

    private void Note(BillStatement statement, BillToken[] tokens, BillHeading read)
    {
        var start = tokens[0].Start;
        notes.Add(new(statement.LineAt(start), read.Kind, read.Says, statement.Text[start..tokens[^1].End]));
    }

    private void Judge(BillStatement statement, BillEntry entry)
    {
        var words = BillScanner.Scan(entry.Name).Where(token => token.Kind == TokenKind.Word).ToList();
        var isHardware = BillHeading.IsHardware(words) && entry.Material is null && entry.Surfacing is null;
        if (entry is { Told: 1, Count: null } && entry.Sides is [{ Role: SizeRole.Thickness }])
            SetThickness(statement, entry);
        else if (isHardware && (entry.Told < 3 || !words.Exists(word => word.IsIn(BillWords.Grips))))
            notes.Add(new(entry.Line, BillNoteKind.Hardware, "Hardware, kept as a note.", entry.AsWritten));
        else if (IsTalk(statement, words, entry))
            notes.Add(new(entry.Line, BillNoteKind.Text, "Figures that aren't the size of a part.", entry.AsWritten));
        else if (entry is { Name: "", Count: null, IsBoughtOnly: true } && last == statement && entries[^1].Bought.IsEmpty)
            entries[^1] = entries[^1] with { Bought = entry.Sides, Doubts = [.. entries[^1].Doubts, .. entry.Doubts] };
        else
        {
            entries.Add(Placed(isHardware ? entry.Doubt($"‘{entry.Name}’ may be hardware.") : entry, statement));
            last = statement;
        }
    }

    private void SetThickness(BillStatement statement, BillEntry entry)
    {
        heading = heading with
        {
            Thickness = entry.Sides[0],
            Material = entry.Material ?? heading.Material,
            IsText = statement.IsProse,
        };
        notes.Add(new(entry.Line, BillNoteKind.Heading, $"Sets thickness: {entry.Sides[0].Plain}.", entry.AsWritten));
    }

    // What is cut into a part, or told in passing.
    private static bool IsTalk(BillStatement statement, List<BillToken> words, BillEntry entry) =>
        BillHeading.IsCut(words) || (entry.Count is null && (entry.Told < 2 || (statement.IsProse && entry.Told < 3)));

    private BillEntry Placed(BillEntry entry, BillStatement statement)
    {
        entry = EntryNames.OfGroup(Rounded(entry), heading.GroupCount);
        if (entry.SetsMaterial)
            heading = heading with { Material = entry.Material };
        var previous = entries.Count > 0 ? entries[^1] : null;
        var isNameless = entry.Name.Length == 0 || entry.IsGeneric;
        if (
            isNameless
            && previous is { IsGeneric: false }
            && (previous.IsNamedApart || entry.Name.Length == 0)
            && GoesOn(statement)
        )
            entry = entry with { Name = previous.Name, IsGeneric = false, IsNamedApart = true };
        else if (isNameless && heading.Group is { } group)
            entry = entry with { Name = group, IsGeneric = false };
        else if (entry is { IsDitto: true } && isNameless && previous is not null)
            entry = entry with { Name = previous.Name, IsGeneric = previous.IsGeneric };
        else if (!isNameless && heading.Group is { } use)
            entry = entry with { Notes = entry.Notes.Add($"for: {use}") };
        if (entry is { IsDitto: true, Material: null } && previous is not null)
            entry = entry with { Material = previous.Material };
        return entry with
        {
            Material = entry.Material ?? heading.Material,
            Surfacing = entry.Surfacing ?? heading.Surfacing,
            Order = entry.Order ?? statement.Columns?.Order ?? heading.Order,
            HeadingThickness = entry.Told < 3 ? heading.Thickness : null,
            IsThicknessFromText = heading.IsText,
            IsBoughtOnly = entry.IsBoughtOnly || (heading.IsBought == true && entry.Bought.IsEmpty),
        };
    }

    // "12 dowels, 3/8 by 2 in.": diameter and length.
    private static BillEntry Rounded(BillEntry entry)
    {
        var isRound = BillWords.Rounds.Contains(entry.Name.Split(' ')[^1].ToLowerInvariant());
        return isRound && entry.Sides is [{ Role: SizeRole.None } first, { Role: SizeRole.None }]
            ? entry with
            {
                Sides = entry.Sides.SetItem(0, first with { Role = SizeRole.Diameter }),
            }
            : entry;
    }

    // "Rails: 4 pieces ...; 2 pieces ...": what follows a semicolon is called the same.
    private bool GoesOn(BillStatement statement) => last == statement || last?.Tokens[^1].Kind == TokenKind.Semicolon;
}
