using System.Collections.Frozen;
using System.Collections.Immutable;

namespace ShopPlanner.Core.Bills;

/// <summary>What a column of a bill holds.</summary>
internal enum ColumnKind
{
    /// <summary>How many.</summary>
    Count,

    /// <summary>What it is called.</summary>
    Name,

    /// <summary>The thickness.</summary>
    Thickness,

    /// <summary>The width.</summary>
    Width,

    /// <summary>The length.</summary>
    Length,

    /// <summary>The whole size.</summary>
    Size,

    /// <summary>The wood.</summary>
    Material,

    /// <summary>Remarks.</summary>
    Note,
}

/// <summary>A column.</summary>
/// <param name="Kind">What it holds.</param>
/// <param name="Unit">Of its figures; none where the heading doesn't say.</param>
/// <param name="IsBought">Whether its sizes are those as bought.</param>
internal sealed record BillColumn(ColumnKind Kind, SizeUnit Unit, bool IsBought)
{
    /// <summary>Whether its cells are figures.</summary>
    public bool IsFigure => Kind is ColumnKind.Count or ColumnKind.Thickness or ColumnKind.Width or ColumnKind.Length;
}

/// <summary>The columns that a heading names: <c>No. | Name | Thick | Wide | Long</c>.</summary>
/// <param name="All">From the left.</param>
/// <param name="Separator">What stands between two cells: <c>|</c>, a comma or a tab; a space where only room does.</param>
internal sealed record BillColumns(ImmutableArray<BillColumn> All, char Separator)
{
    private const int MostWords = 30;

    private static readonly FrozenDictionary<string, ColumnKind> Words = new Dictionary<string, ColumnKind>
    {
        ["no"] = ColumnKind.Count,
        ["nos"] = ColumnKind.Count,
        ["number"] = ColumnKind.Count,
        ["pcs"] = ColumnKind.Count,
        ["pieces"] = ColumnKind.Count,
        ["qty"] = ColumnKind.Count,
        ["quantity"] = ColumnKind.Count,
        ["count"] = ColumnKind.Count,
        ["required"] = ColumnKind.Count,
        ["name"] = ColumnKind.Name,
        ["part"] = ColumnKind.Name,
        ["parts"] = ColumnKind.Name,
        ["piece"] = ColumnKind.Name,
        ["item"] = ColumnKind.Name,
        ["member"] = ColumnKind.Name,
        ["description"] = ColumnKind.Name,
        ["use"] = ColumnKind.Name,
        ["thickness"] = ColumnKind.Thickness,
        ["thick"] = ColumnKind.Thickness,
        ["thk"] = ColumnKind.Thickness,
        ["t"] = ColumnKind.Thickness,
        ["width"] = ColumnKind.Width,
        ["wide"] = ColumnKind.Width,
        ["wd"] = ColumnKind.Width,
        ["w"] = ColumnKind.Width,
        ["length"] = ColumnKind.Length,
        ["long"] = ColumnKind.Length,
        ["lgth"] = ColumnKind.Length,
        ["lg"] = ColumnKind.Length,
        ["l"] = ColumnKind.Length,
        ["size"] = ColumnKind.Size,
        ["sizes"] = ColumnKind.Size,
        ["dimensions"] = ColumnKind.Size,
        ["wood"] = ColumnKind.Material,
        ["material"] = ColumnKind.Material,
        ["kind"] = ColumnKind.Material,
        ["species"] = ColumnKind.Material,
        ["remarks"] = ColumnKind.Note,
        ["notes"] = ColumnKind.Note,
        ["note"] = ColumnKind.Note,
        ["surface"] = ColumnKind.Note,
    }.ToFrozenDictionary();

    /// <summary>The columns of figures, from the left.</summary>
    public IEnumerable<BillColumn> Figures => All.Where(column => column.IsFigure);

    /// <summary>The order in which the heading names the three sides; null where it doesn't.</summary>
    public SizeOrder? Order => SizeOrders.Named(All.Select(column => RoleOf(column.Kind)));

    /// <summary>Returns the side that a column holds.</summary>
    public static SizeRole RoleOf(ColumnKind kind) =>
        kind switch
        {
            ColumnKind.Thickness => SizeRole.Thickness,
            ColumnKind.Width => SizeRole.Width,
            ColumnKind.Length => SizeRole.Length,
            _ => SizeRole.None,
        };

    /// <summary>Returns the columns that a line names; null where it is no heading of columns.</summary>
    /// <param name="tokens">Of the line.</param>
    /// <param name="text">The line.</param>
    /// <param name="above">The line above, which may say which columns are sizes as bought.</param>
    public static BillColumns? Find(BillToken[] tokens, string text, BillLine? above)
    {
        if (tokens.Any(token => token.Kind is TokenKind.Number or TokenKind.Surfacing))
            return null;
        var words = tokens.Where(token => token.Kind == TokenKind.Word).ToList();
        var known = words.Count(token => Words.ContainsKey(token.Text) || IsAside(token));
        if (words.Count is 0 or > MostWords || known * 3 < words.Count * 2)
            return null;
        var labels = Labels(words);
        if (labels.Count == 0 && above is { HasSize: false })
            labels = Labels(above.Tokens);
        var columns = Columns(words, labels);
        var sides = columns.Select(column => RoleOf(column.Kind)).Where(role => role != SizeRole.None).Distinct().Count();
        var hasSize = columns.Exists(column => column.Kind == ColumnKind.Size);
        return (sides >= 2 && columns.Count >= 3) || (hasSize && columns.Count >= 2)
            ? new([.. columns], SeparatorOf(text, columns.Count))
            : null;
    }

    /// <summary>Whether a line can be a row: it has a figure.</summary>
    public static bool Fits(BillToken[] tokens) => tokens.Any(token => token.Kind == TokenKind.Number);

    private static bool IsAside(BillToken token) =>
        BillWords.UnitOf(token.Text) != SizeUnit.None
        || IsLabel(token)
        || token.Text is "of" or "and" or "in" or "stock" or "x" or "by";

    private static bool IsLabel(BillToken token) => token.IsIn(BillWords.Bought) || token.IsIn(BillWords.Finished);

    // One entry for each group of sides: whether it is as bought.
    private static List<bool> Labels(IReadOnlyList<BillToken> words)
    {
        var labels = new List<bool>();
        for (var at = 0; at < words.Count; at++)
            if (words[at].IsIn(BillWords.Finished))
                labels.Add(false);
            else if (BillWords.IsBought(words, at))
                labels.Add(true);
        return labels;
    }

    private static List<BillColumn> Columns(List<BillToken> words, List<bool> labels)
    {
        var columns = new List<BillColumn>();
        var group = 0;
        foreach (var word in words)
            if (BillWords.UnitOf(word.Text) is not SizeUnit.None and var unit && columns.Count > 0)
                columns[^1] = columns[^1] with { Unit = unit };
            else if (Words.TryGetValue(word.Text, out var kind) && (columns.Count == 0 || columns[^1].Kind != kind))
            {
                if (kind is >= ColumnKind.Thickness and <= ColumnKind.Size && columns.Exists(one => one.Kind == kind))
                    group = 1;
                columns.Add(new(kind, SizeUnit.None, group < labels.Count && labels[group]));
            }

        return columns;
    }

    private static char SeparatorOf(string text, int columns) =>
        text.Count(c => c == '|') >= columns - 1 ? '|'
        : text.Count(c => c == '\t') >= columns - 1 ? '\t'
        : text.Count(c => c == ',') >= columns - 1 ? ','
        : ' ';
}
