namespace ShopPlanner.Core.Wood;

/// <summary>Names of woods and sheets as they read within a sentence.</summary>
public static class WoodNames
{
    private static readonly string[] Proper = ["American", "Douglas", "Sitka"];

    /// <summary>Returns the name with a small first letter, unless it begins with a proper name or is an abbreviation:
    /// <c>red oak</c>, <c>Douglas-fir, coast</c>, <c>MDF</c>.</summary>
    public static string InText(string name)
    {
        var isKept =
            (name.Length > 1 && char.IsUpper(name[1]))
            || Proper.Any(word => name.StartsWith(word, StringComparison.Ordinal))
            || name.Length == 0;
        return isKept ? name : char.ToLowerInvariant(name[0]) + name[1..];
    }
}
