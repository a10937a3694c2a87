namespace ShopPlanner.Services.Projects;

/// <summary>A project's short code, which stands before marks where several projects meet.</summary>
internal static class ProjectCodes
{
    public const int MostLetters = 3;

    public static bool IsCode(string code) => code.Length is > 0 and <= MostLetters && code.All(char.IsAsciiLetterUpper);

    /// <summary>A code that nobody has: the words' first letters, else letters of the name, else the next free letters.</summary>
    public static string Make(string name, IReadOnlySet<string> taken)
    {
        var words = name.ToUpperInvariant()
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(word => string.Concat(word.Where(char.IsAsciiLetterUpper)))
            .Where(word => word.Length > 0)
            .ToList();
        var initials = string.Concat(words.Select(word => word[0]).Take(MostLetters));
        var letters = string.Concat(words);
        string[] wishes = [initials.Length > 1 ? initials : "", Start(letters, 2), Start(letters, 3), Start(initials, 1)];
        return wishes.FirstOrDefault(code => IsCode(code) && !taken.Contains(code)) ?? PartMarks.Free(taken).First();
    }

    private static string Start(string letters, int most) => letters[..Math.Min(most, letters.Length)];
}
