namespace ShopPlanner.Services.Projects;

/// <summary>A part's letter: A to Z, then AA, AB and so on. I and O are not given, since they read as 1 and 0 (common practice of
/// drawing offices); one who types them may have them.</summary>
internal static class PartMarks
{
    private const int MostLetters = 3;
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    public static string Plain(string mark) => mark.Trim().ToUpperInvariant();

    public static bool IsMark(string mark)
    {
        var plain = Plain(mark);
        return plain.Length is > 0 and <= MostLetters && plain.All(char.IsAsciiLetterUpper);
    }

    /// <summary>The mark of practice pieces: <c>pA</c>, which no part can have.</summary>
    public static string Practice(string mark) => "p" + mark;

    /// <summary>Marks that none of the given rows has, in order.</summary>
    public static IEnumerable<string> Free(IEnumerable<string> taken)
    {
        var used = taken.Select(Plain).ToHashSet();
        return Enumerable.Range(0, int.MaxValue).Select(Nth).Where(mark => !used.Contains(mark));
    }

    // Counting with letters: there is no nought, so each further place takes one less.
    private static string Nth(int n)
    {
        var letter = Letters[n % Letters.Length].ToString();
        return n < Letters.Length ? letter : Nth((n / Letters.Length) - 1) + letter;
    }
}
