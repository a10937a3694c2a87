using System.Globalization;
using System.Text;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>A line of text as it is set from left to right: what is read from the right is turned, its figures are not. A short
/// form of the Unicode Bidirectional Algorithm (UAX #9): one line, without embeddings, since names hold no more.</summary>
public static class WritingOrder
{
    private const string Open = "([{<«",
        Close = ")]}>»";

    /// <summary>The characters in the order in which they stand on paper, Arabic letters joined.</summary>
    public static string Visual(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (!line.AsSpan().ContainsAnyInRange('\u0590', '\u08FF') && !line.AsSpan().ContainsAnyInRange('\uFB1D', '\uFEFC'))
            return line;
        var clusters = Clusters(ArabicForms.Join(line));
        var levels = Levels(clusters);
        for (var level = levels.Max(); level > 0; level--)
            Turn(clusters, levels, level);
        var set = new StringBuilder();
        foreach (var (i, cluster) in clusters.Index())
            set.Append(levels[i] % 2 == 1 ? Mirror(cluster) : cluster);
        return set.ToString();
    }

    // A letter with the marks on it.
    private static List<string> Clusters(string text)
    {
        var clusters = new List<string>();
        foreach (var rune in text.EnumerateRunes())
            if (clusters.Count > 0 && Rune.GetUnicodeCategory(rune) == UnicodeCategory.NonSpacingMark)
                clusters[^1] += rune;
            else
                clusters.Add(rune.ToString());
        return clusters;
    }

    private static List<int> Levels(List<string> clusters)
    {
        var kinds = clusters.Select(cluster => KindOf(Rune.GetRuneAt(cluster, 0))).ToList();
        var isRight = kinds.FirstOrDefault(kind => kind is Kind.Left or Kind.Right) == Kind.Right;
        var (@base, last) = (isRight ? 1 : 0, isRight ? Kind.Right : Kind.Left);
        var levels = new List<int>();
        foreach (var kind in kinds)
        {
            levels.Add(
                kind switch
                {
                    Kind.Right => 1,
                    Kind.Left => isRight ? 2 : 0,
                    Kind.Figure => last == Kind.Right ? 2 : @base,
                    _ => -1,
                }
            );
            last = kind is Kind.Left or Kind.Right ? kind : last;
        }

        Settle(levels, @base);
        Pair(clusters, levels);
        return levels;
    }

    // A bracket goes with the one that it closes (rule N0).
    private static void Pair(List<string> clusters, List<int> levels)
    {
        var open = new Stack<int>();
        for (var i = 0; i < clusters.Count; i++)
            if (clusters[i].Length == 1 && Open.Contains(clusters[i][0], StringComparison.Ordinal))
                open.Push(i);
            else if (clusters[i].Length == 1 && Close.Contains(clusters[i][0], StringComparison.Ordinal) && open.Count > 0)
                levels[i] = levels[open.Pop()];
    }

    // What has no direction of its own goes with both neighbors where they agree, else with the line.
    private static void Settle(List<int> levels, int line)
    {
        for (var i = 0; i < levels.Count; i++)
        {
            if (levels[i] >= 0)
                continue;
            var end = levels.FindIndex(i, level => level >= 0);
            var before = i == 0 ? line : levels[i - 1];
            var after = end < 0 ? line : levels[end];
            var level = before > 0 && after > 0 ? 1 : line;
            for (end = end < 0 ? levels.Count : end; i < end; i++)
                levels[i] = level;
            i--;
        }
    }

    private static void Turn(List<string> clusters, List<int> levels, int level)
    {
        for (var i = 0; i < levels.Count; i++)
        {
            var start = i;
            while (i < levels.Count && levels[i] >= level)
                i++;
            clusters.Reverse(start, i - start);
            levels.Reverse(start, i - start);
        }
    }

    private static string Mirror(string cluster) =>
        cluster.Length != 1 ? cluster
        : Open.IndexOf(cluster[0], StringComparison.Ordinal) is var open and >= 0 ? Close[open].ToString()
        : Close.IndexOf(cluster[0], StringComparison.Ordinal) is var close and >= 0 ? Open[close].ToString()
        : cluster;

    private static Kind KindOf(Rune rune) =>
        IsRight(rune) ? Kind.Right
        : Rune.IsLetter(rune) ? Kind.Left
        : Rune.IsDigit(rune) ? Kind.Figure
        : Kind.None;

    // Hebrew, Arabic, Syriac, Thaana, N'Ko and the presentation forms.
    private static bool IsRight(Rune rune) =>
        rune.Value
            is (>= 0x0590 and <= 0x08FF and not (>= 0x0660 and <= 0x0669))
                or (>= 0xFB1D and <= 0xFDFF)
                or (>= 0xFE70 and <= 0xFEFC);

    private enum Kind
    {
        None,
        Left,
        Right,
        Figure,
    }
}
