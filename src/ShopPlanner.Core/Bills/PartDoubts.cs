using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>Sizes and counts that no furniture has, or that are missing. The limits are ours: common practice.</summary>
internal static class PartDoubts
{
    private const int MostPieces = 200;

    private static readonly Length Thickest = Length.FromInches(6);
    private static readonly Length Thinnest = Length.FromInches(0, 1, 32);
    private static readonly Length Widest = Length.FromInches(60);
    private static readonly Length Longest = Length.FromFeet(20);

    /// <summary>Returns what isn't likely.</summary>
    /// <param name="name">What the part is called.</param>
    /// <param name="count">How many.</param>
    /// <param name="size">The size.</param>
    /// <param name="bought">The size as bought.</param>
    public static IEnumerable<string> Of(string name, int? count, BillSize size, BillSize? bought)
    {
        if (name.Length == 0)
            yield return "No name is written.";
        if (count is 0 or > MostPieces)
            yield return $"{count} pieces is unlikely.";
        foreach (var (side, word) in Sides(size))
            if (side is null)
                yield return $"The {word} isn't known.";
        if (size.Thickness > size.Width)
            yield return "It is thicker than wide.";
        if (size.Thickness > Thickest || size.Width > Widest || size.Length > Longest)
            yield return "It is unusually large.";
        if (size.Thickness < Thinnest || size.Width < Thinnest || size.Length < Thinnest)
            yield return "It is unusually small.";
        if (bought is { } stock && IsLess(stock, size))
            yield return "The size as bought is less than the finished size.";
    }

    private static IEnumerable<(Length? Side, string Word)> Sides(BillSize size) =>
        [(size.Thickness, "thickness"), (size.Width, "width"), (size.Length, "length")];

    private static bool IsLess(BillSize a, BillSize b) => a.Thickness < b.Thickness || a.Width < b.Width || a.Length < b.Length;
}
