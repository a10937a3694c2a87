using System.Text;

namespace ShopPlanner.Services.Publishing;

/// <summary>Writes HTML: every text that comes from a person is escaped, and nothing else goes in by way of one.</summary>
internal sealed class Html
{
    private readonly StringBuilder text = new();

    /// <summary>Adds markup of this program's own.</summary>
    public Html Raw(string markup)
    {
        text.Append(markup).Append('\n');
        return this;
    }

    /// <summary>Adds an element with a text in it; nothing where the text is empty.</summary>
    public Html Add(string name, string content, string? kind = null) =>
        content.Length == 0 ? this : Raw($"<{name}{(kind is null ? "" : $" class=\"{kind}\"")}>{Escape(content)}</{name}>");

    /// <summary>Adds a table.</summary>
    /// <param name="caption">What is in it.</param>
    /// <param name="kind">Its class.</param>
    /// <param name="columns">Headings, each with its class or nothing.</param>
    /// <param name="rows">Texts of the cells.</param>
    public Html Table(string caption, string kind, (string Heading, string Kind)[] columns, IEnumerable<string[]> rows)
    {
        Raw($"<div class=\"scroll\" role=\"region\" aria-label=\"{Escape(caption)}\" tabindex=\"0\"><table class=\"{kind}\">");
        Add("caption", caption);
        var heads = columns.Select(one => $"<th scope=\"col\"{Class(one.Kind)}>{Escape(one.Heading)}</th>");
        Raw($"<thead><tr>{string.Concat(heads)}</tr></thead><tbody>");
        foreach (var row in rows)
            Raw($"<tr>{string.Concat(row.Zip(columns, (cell, column) => $"<td{Class(column.Kind)}>{Escape(cell)}</td>"))}</tr>");
        return Raw("</tbody></table></div>");
    }

    /// <summary>A text as it stands inside an element or a quoted attribute. What HTML has no place for is left out.</summary>
    public static string Escape(string value)
    {
        var escaped = new StringBuilder();
        foreach (var rune in value.EnumerateRunes())
            escaped.Append(
                rune.Value switch
                {
                    '&' => "&amp;",
                    '<' => "&lt;",
                    '>' => "&gt;",
                    '"' => "&quot;",
                    '\'' => "&#39;",
                    '\n' or '\t' => rune.ToString(),
                    < 0x20 or (>= 0x7F and <= 0x9F) or 0xFFFD => "",
                    >= 0xFDD0 and <= 0xFDEF => "",
                    var code when (code & 0xFFFE) == 0xFFFE => "",
                    _ => rune.ToString(),
                }
            );
        return escaped.ToString();
    }

    /// <inheritdoc />
    public override string ToString() => text.ToString();

    private static string Class(string kind) => kind.Length == 0 ? "" : $" class=\"{kind}\"";
}
