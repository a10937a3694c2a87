namespace ShopPlanner.Core.Bills;

/// <summary>A line of the text, as it stands there.</summary>
/// <param name="Number">Of the line, from 1.</param>
/// <param name="Text">Without the spaces around it.</param>
/// <param name="Indent">Spaces before it.</param>
/// <param name="Tokens">Of the text.</param>
internal sealed record BillLine(int Number, string Text, int Indent, BillToken[] Tokens)
{
    /// <summary>Whether a size of two sides or more is in it.</summary>
    public bool HasSize { get; init; }

    /// <summary>Whether a whole size is in it.</summary>
    public bool HasWholeSize { get; init; }

    /// <summary>Whether a count at its end waits for a size in the next line; null where it may belong to the size before it.
    /// </summary>
    public bool? HasOpenEnd { get; init; } = false;

    /// <summary>Whether it begins with a count: <c>2 rails</c>, <c>Two rails</c>, <c>4 2 x 2 x 30</c>.</summary>
    public bool HasCountFirst => BillCounts.Begins(Tokens);

    /// <summary>Whether it tells a count after a name: <c>Rails, 2 pieces</c>.</summary>
    public bool HasCountAfterName => BillCounts.FollowsName(Tokens);

    /// <summary>Whether it begins in the middle of a sentence.</summary>
    public bool IsInSentence =>
        Tokens[0].Kind == TokenKind.Word
            ? !Tokens[0].IsCapital && !HasCountFirst
            : Tokens[0].Kind == TokenKind.Number && !HasCountFirst;
}

/// <summary>One or more lines that belong together.</summary>
/// <param name="Text">The lines, joined.</param>
/// <param name="Tokens">Of the text.</param>
internal sealed record BillStatement(string Text, BillToken[] Tokens)
{
    /// <summary>Where each line begins in the text, with its number.</summary>
    public required IReadOnlyList<(int Start, int Line)> Lines { get; init; }

    /// <summary>The columns of the table that it is a row of; null outside of tables.</summary>
    public BillColumns? Columns { get; init; }

    /// <summary>Whether it is the heading of those columns.</summary>
    public bool IsColumnHeading { get; init; }

    /// <summary>Whether it is running text.</summary>
    public bool IsProse { get; init; }

    /// <summary>Returns the number of the line that a place is in.</summary>
    public int LineAt(int place)
    {
        var (low, high) = (0, Lines.Count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (Lines[middle].Start <= place)
                low = middle;
            else
                high = middle - 1;
        }

        return Lines[low].Line;
    }
}
