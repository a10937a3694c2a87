namespace ShopPlanner.Core.Workings;

/// <summary>Where a fact comes from, as a sentence: a remembered or a customary figure always says so.</summary>
public static class SourceWords
{
    /// <summary>How sure it is: <c>from memory</c>.</summary>
    public static string Of(Certainty certainty) =>
        certainty switch
        {
            Certainty.Read => "read",
            Certainty.Quoted => "quoted",
            Certainty.Derived => "derived",
            Certainty.FromMemory => "from memory",
            _ => "common practice",
        };

    /// <summary>The source with how sure it is: <c>Wood Handbook, Eq. 4-5 (read)</c>.</summary>
    public static string Of(SourceNote source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return IsPlain(source) || SaysItself(source) ? source.Text : $"{source.Text} ({Meaning(source.Certainty)})";
    }

    /// <summary>True where there is nothing to look up: a figure typed in, plain geometry.</summary>
    public static bool IsPlain(SourceNote source) => source == Working.AsGiven || source == Working.Geometry;

    // "Common practice: …" need not be called so twice; "read" may stand in any word.
    private static bool SaysItself(SourceNote source) =>
        source.Certainty is Certainty.Quoted or Certainty.FromMemory or Certainty.CommonPractice
        && source.Text.Contains(Of(source.Certainty), StringComparison.OrdinalIgnoreCase);

    private static string Meaning(Certainty certainty) =>
        certainty switch
        {
            Certainty.Read => "read there",
            Certainty.Quoted => "as others quote it",
            Certainty.Derived => "derived",
            Certainty.FromMemory => "from memory: look it up before you rely on it",
            _ => "common practice: a habit of the trade, not a rule",
        };
}
