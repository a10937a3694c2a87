using ShopPlanner.Packets.Flow;

namespace ShopPlanner.Packets.Sections;

/// <summary>A section that was asked for: what it prints, or why it prints nothing.</summary>
/// <param name="Title">In the contents and above it.</param>
/// <param name="Add">Puts it into the pages; null where there is nothing to print.</param>
/// <param name="Missing">Why there is nothing: a few words; empty where it is printed.</param>
internal sealed record Printed(string Title, Action<PageFlow>? Add, string Missing)
{
    /// <summary>A section that is printed.</summary>
    public static Printed Of(string title, Action<PageFlow> add) => new(title, add, "");

    /// <summary>A section that has nothing to print.</summary>
    public static Printed None(string title, string why) => new(title, null, why);
}
