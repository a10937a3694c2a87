namespace ShopPlanner.Services.Projects;

/// <summary>How tables say which way the grain runs, and whether a part can rotate (common practice).</summary>
internal static class GrainWords
{
    private static readonly HashSet<string> Along = new(StringComparer.OrdinalIgnoreCase)
    {
        "length",
        "along",
        "with",
        "yes",
        "long",
        "lengthwise",
    };

    private static readonly HashSet<string> Any = new(StringComparer.OrdinalIgnoreCase)
    {
        "any",
        "none",
        "no",
        "free",
        "turn",
        "either",
    };

    private static readonly HashSet<string> Yes = new(StringComparer.OrdinalIgnoreCase) { "yes", "y", "true", "1", "x" };

    private static readonly HashSet<string> No = new(StringComparer.OrdinalIgnoreCase) { "no", "n", "false", "0", "" };

    /// <summary>Whether a cell says something about the grain.</summary>
    public static bool IsGrain(string cell) => CanTurnBy(cell.Trim()) is not null;

    /// <summary>Returns whether a part with that grain can rotate; null where the words are not known.</summary>
    public static bool? CanTurnBy(string grain) =>
        Any.Contains(grain) ? true
        : Along.Contains(grain) ? false
        : null;

    /// <summary>Returns whether a cell says that a part can rotate; null where it says neither yes nor no.</summary>
    public static bool? CanTurn(string cell) =>
        Yes.Contains(cell) ? true
        : No.Contains(cell) ? false
        : null;
}
