using ShopPlanner.Core.Designs.Expressions;

namespace ShopPlanner.Core.Designs.Documents;

/// <summary>Names that arithmetic can use.</summary>
internal static class DimensionName
{
    /// <summary>What is wrong with a name; null where nothing is.</summary>
    public static string? Flaw(string name) =>
        name.Length == 0 ? "is missing"
        : !IsName(name) ? "isn't a name: use lowercase letters, digits and underscores, a letter first"
        : ExpressionParser.Words.Contains(name) ? "is a word of arithmetic: use another name"
        : null;

    /// <summary>Whether a text that is not empty is written as a name is.</summary>
    public static bool IsName(string text) => char.IsAsciiLetterLower(text[0]) && text.All(IsOfName);

    private static bool IsOfName(char c) => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '_';
}
