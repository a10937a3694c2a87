namespace ShopPlanner.Core.Workings;

/// <summary>Where a fact comes from, in words: a remembered or a customary figure always says so.</summary>
public static class SourceWords
{
    private const string Named = "Source: ";

    /// <summary>Returns how sure a fact is, as a mark: <c>from memory</c>.</summary>
    public static string Of(Certainty certainty) =>
        certainty switch
        {
            Certainty.Read => "read",
            Certainty.Quoted => "quoted",
            Certainty.Derived => "derived",
            Certainty.FromMemory => "from memory",
            _ => "common practice",
        };

    /// <summary>Returns the full note, the source with how sure it is: <c>A handbook (from memory: check it before you rely on
    /// it)</c>.</summary>
    public static string Of(SourceNote source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Meaning(source.Certainty) is not { } meaning || IsPlain(source) || SaysItself(source)
            ? source.Text
            : $"{source.Text} ({meaning})";
    }

    /// <summary>Returns what a page shows first: <c>Source: Wood Handbook, Eq. 4-5</c>, <c>Common practice</c>,
    /// <c>Unverified: check before you rely on it</c>. The full note is a tap away.</summary>
    public static string Short(SourceNote source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Certainty switch
        {
            _ when IsPlain(source) => source.Text,
            Certainty.FromMemory => "Unverified: check before you rely on it",
            Certainty.CommonPractice => "Common practice",
            _ => Named + source.Text,
        };
    }

    /// <summary>Whether the full note says more than the short one.</summary>
    public static bool SaysMore(SourceNote source) =>
        Short(source) is var first && first != Of(source) && first != Named + Of(source);

    /// <summary>Whether there is nothing to look up: a figure typed in, plain geometry.</summary>
    public static bool IsPlain(SourceNote source) => source == Working.AsGiven || source == Working.Geometry;

    // "Common practice: …" need not be called so twice.
    private static bool SaysItself(SourceNote source) =>
        source.Certainty is Certainty.Quoted or Certainty.FromMemory or Certainty.CommonPractice
        && source.Text.Contains(Of(source.Certainty), StringComparison.OrdinalIgnoreCase);

    private static string? Meaning(Certainty certainty) =>
        certainty switch
        {
            Certainty.Read => null,
            Certainty.Quoted => "as quoted by others",
            Certainty.Derived => "worked out from it",
            Certainty.FromMemory => "from memory: check it before you rely on it",
            _ => "common practice: a habit of the trade, not a rule",
        };
}
