using System.Text;

namespace ShopPlanner.Core.Bills;

/// <summary>Joins the lines that a page's width has broken: a part may go over several lines, and a sentence over more.</summary>
internal sealed class BillStatements
{
    private const int ProseWidth = 25;

    private const int LongLine = 100;

    // A list that is set as one paragraph goes over no more.
    private const int MostLines = 60;

    // A longer line without figures ends a table.
    private const int LongestSubheading = 8;

    private readonly List<BillStatement> found = [];
    private readonly List<BillLine> block = [];
    private BillColumns? columns;

    /// <summary>Returns the statements of a text. Lines without a letter or digit are passed over.</summary>
    public static List<BillStatement> Of(string text)
    {
        var statements = new BillStatements();
        var number = 0;
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n'))
            statements.Take(line, ++number);
        statements.EndBlock();
        return statements.found;
    }

    private void Take(string line, int number)
    {
        if (!line.Any(char.IsLetterOrDigit))
        {
            if (string.IsNullOrWhiteSpace(line))
                EndBlock();
            return;
        }

        var read = Line(line, number);
        if (BillColumns.Find(read.Tokens, read.Text, block.Count > 0 ? block[^1] : null) is { } heading)
        {
            EndBlock();
            columns = heading;
            found.Add(Joined([read]) with { Columns = heading, IsColumnHeading = true });
        }
        else if (columns is not null && BillColumns.Fits(read.Tokens))
        {
            EndBlock();
            found.Add(Joined([read]) with { Columns = columns });
        }
        else
        {
            if (read.Tokens.Length > LongestSubheading)
                columns = null;
            block.Add(read);
        }
    }

    private static BillLine Line(string line, int number)
    {
        var text = line.Trim();
        var tokens = BillScanner.Scan(text);
        var sizes = SizeParser.FindAll(tokens, text);
        return new BillLine(number, text, line.Length - line.TrimStart().Length, tokens)
        {
            HasSize = sizes.Any(size => size.Told >= 2),
            HasWholeSize = sizes.Any(size => size.Told >= 3),
            HasOpenEnd = sizes.Count > 0 ? BillCounts.IsOpen(tokens, sizes[^1].End) : false,
        };
    }

    private void EndBlock()
    {
        var lines = block.Where(line => line.Tokens.Length > 0).ToList();
        block.Clear();
        if (lines.Count == 0)
            return;
        if (lines.Count > 1 && IsHeading(lines[0]))
        {
            found.Add(Joined(lines[..1]));
            lines = lines[1..];
        }

        if (IsProse(lines))
        {
            found.Add(Joined(lines) with { IsProse = true });
            return;
        }

        var together = new List<BillLine>();
        foreach (var line in lines)
        {
            if (together.Count == MostLines || (together.Count > 0 && !LineJoining.GoesOn(together, line)))
            {
                found.Add(Joined(together));
                together.Clear();
            }

            together.Add(line);
        }

        found.Add(Joined(together));
    }

    private static bool IsHeading(BillLine line) =>
        line.Tokens[^1].Kind == TokenKind.Colon && line.Tokens.All(token => token.Kind != TokenKind.Number);

    // Most lines begin in the middle of a sentence, and aren't parts by themselves.
    private static bool IsProse(List<BillLine> lines)
    {
        var after = lines.Count - 1;
        if (after == 0)
            return lines[0].Text.Length > LongLine;
        var starts = lines.Count(line => line.HasCountFirst || (line.HasCountAfterName && line.Tokens[0].IsCapital));
        return lines.Skip(1).Count(line => line.IsInSentence) * 2 >= after
            && lines.Take(after).Sum(line => (long)line.Text.Length) >= (long)ProseWidth * after
            && starts * 3 < lines.Count
            && lines.Count(line => line.HasSize) * 5 < lines.Count * 4;
    }

    private static BillStatement Joined(List<BillLine> lines)
    {
        var text = new StringBuilder();
        var starts = new List<(int, int)>();
        foreach (var line in lines)
        {
            if (text.Length > 0 && !IsBroken(text))
                text.Append(' ');
            starts.Add((text.Length, line.Number));
            text.Append(line.Text);
        }

        var whole = text.ToString();
        var tokens = lines.Count == 1 ? lines[0].Tokens : BillScanner.Scan(whole);
        return new BillStatement(whole, tokens) { Lines = starts };
    }

    // "quarter-" and "1-" go on at once in the next line.
    private static bool IsBroken(StringBuilder text) => text[^1] == '-' && text.Length > 1 && char.IsLetterOrDigit(text[^2]);
}
