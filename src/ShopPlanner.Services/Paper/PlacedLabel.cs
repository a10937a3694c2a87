using ShopPlanner.Packets.Labels;

namespace ShopPlanner.Services.Paper;

/// <summary>A label with what it can be asked for by.</summary>
/// <param name="Label">The label, without its code.</param>
/// <param name="Letter">The part's letter, shared by its copies.</param>
/// <param name="Project">The part's project; null for an offcut.</param>
internal sealed record PlacedLabel(Label Label, string Letter, Guid? Project)
{
    private static readonly char[] Between = [',', ';', ' ', '\t', '\n', '\r'];

    /// <summary>The marks that are asked for; empty for all.</summary>
    public static string[] Asked(string? only) =>
        (only ?? "").Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>The mark without its project's letters.</summary>
    public string Own => Label.Mark[(Label.Mark.LastIndexOf(' ') + 1)..];

    /// <summary>Whether a mark asks for it: its own, the same without the hand of a mirrored pair, or its letter.</summary>
    public bool IsAsked(IReadOnlyCollection<string> marks) =>
        marks.Count == 0
        || marks.Any(mark => Is(mark, Own) || Is(mark, Letter) || (Own[^1] is 'L' or 'R' && Is(mark, Own[..^1])));

    private static bool Is(string asked, string mark) => asked.Equals(mark, StringComparison.OrdinalIgnoreCase);
}
