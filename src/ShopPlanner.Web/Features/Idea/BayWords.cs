using System.Globalization;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Bays as a person finds them.</summary>
internal static class BayWords
{
    /// <summary><c>Whole inside</c>, <c>Bay 1</c>, <c>Bay 1.2</c>: counted from the left or from below.</summary>
    public static string Name(string path) => Number(path) is { Length: > 0 } number ? "Bay " + number : "Whole inside";

    /// <summary>The number alone; empty for the whole inside.</summary>
    public static string Number(string path) =>
        string.Join(
            '.',
            path.Split('.')
                .Where(step => int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out _))
                .Select(step => (int.Parse(step, CultureInfo.InvariantCulture) + 1).ToString(CultureInfo.InvariantCulture))
        );

    /// <summary>What is in it, in a few words.</summary>
    public static string Contents(BayNode bay)
    {
        var kinds = bay.Fills.Select(fill => Title(fill.Kind));
        var split = bay.Split is { } node
            ? [$"{bay.Bays.Length} bays, {Title(node.Kind).ToLowerInvariant()} between"]
            : Array.Empty<string>();
        var words = string.Join(", ", kinds.Concat(split));
        return words.Length == 0 ? "empty" : words;
    }

    /// <summary>A kind's title.</summary>
    public static string Title(string kind) => DesignKinds.Find(kind)?.Title ?? kind;
}
