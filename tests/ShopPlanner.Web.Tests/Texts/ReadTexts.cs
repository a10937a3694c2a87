using System.Text;
using System.Text.RegularExpressions;

namespace ShopPlanner.Web.Tests.Texts;

/// <summary>A text that people read, with the file it stands in.</summary>
internal sealed record ReadText(string File, string Text);

/// <summary>Texts of source files that people read: string literals of programs and scripts, the text and attributes of pages,
/// designs.</summary>
internal static partial class ReadTexts
{
    /// <summary>Returns the texts of all files below a folder.</summary>
    public static IEnumerable<ReadText> Below(string folder) =>
        Directory
            .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(file => !Unread().IsMatch(file.Replace('\\', '/')))
            .SelectMany(Of);

    private static IEnumerable<ReadText> Of(string file) =>
        (
            Path.GetExtension(file) switch
            {
                ".cs" => Literals(File.ReadAllText(file)),
                ".razor" => Page(File.ReadAllText(file)),
                ".js" => Script(File.ReadAllText(file)),
                ".json" => Strings().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value),
                _ => [],
            }
        ).Select(text => new ReadText(file, Holes().Replace(text, "…")));

    private static IEnumerable<string> Script(string source) =>
        Quoted().Matches(source).Where(match => match.Groups["text"].Success).Select(match => match.Groups["text"].Value);

    private static IEnumerable<string> Page(string source)
    {
        var plain = Remarks().Replace(source, "");
        var code = plain.IndexOf("@code {", StringComparison.Ordinal);
        var markup = code < 0 ? plain : plain[..code];
        return Nodes()
            .Matches(markup)
            .Select(match => match.Groups[1].Value)
            .Concat(Strings().Matches(markup).Select(match => match.Groups[1].Value))
            .Concat(code < 0 ? [] : Literals(plain[code..]));
    }

    // Texts that are added to one another are one text.
    private static IEnumerable<string> Literals(string source)
    {
        var text = new StringBuilder();
        var end = -1;
        foreach (Match match in Tokens().Matches(source))
        {
            var literal = match.Groups["raw"].Success ? match.Groups["raw"] : match.Groups["text"];
            if (!literal.Success)
                continue;
            if (end >= 0 && !Joined().IsMatch(source[end..match.Index]))
            {
                yield return text.ToString();
                text.Clear();
            }

            text.Append(literal.Value);
            end = match.Index + match.Length;
        }

        yield return text.ToString();
    }

    // What is stored keeps its words: a builder's plans stay readable.
    [GeneratedRegex("/(obj|bin|Storage|Plans/Stored|Migrations)/")]
    private static partial Regex Unread();

    [GeneratedRegex(@"@\*.*?\*@", RegexOptions.Singleline)]
    private static partial Regex Remarks();

    [GeneratedRegex(@">([^<>]+)<")]
    private static partial Regex Nodes();

    [GeneratedRegex("\"((?:[^\"\\\\]|\\\\.)*)\"")]
    private static partial Regex Strings();

    [GeneratedRegex(
        "//[^\\n]*|/\\*.*?\\*/|'(?:[^'\\\\\\n]|\\\\.)+'|\"\"\"(?<raw>.*?)\"\"\"|\"(?<text>(?:[^\"\\\\\\n]|\\\\.)*)\"",
        RegexOptions.Singleline
    )]
    private static partial Regex Tokens();

    [GeneratedRegex(
        "//[^\\n]*|/\\*.*?\\*/|\"(?<text>(?:[^\"\\\\\\n]|\\\\.)*)\"|`(?<text>(?:[^`\\\\]|\\\\.)*)`",
        RegexOptions.Singleline
    )]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Holes();

    [GeneratedRegex(@"^\s*\+\s*\$?$")]
    private static partial Regex Joined();
}
