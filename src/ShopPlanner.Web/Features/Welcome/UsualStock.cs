using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Features.Welcome;

/// <summary>A size that stores usually stock.</summary>
/// <param name="Material">The material's id.</param>
/// <param name="Name">Material and size as a person says them: <c>Pine 1x4, 8 ft</c>.</param>
/// <param name="Label">The size alone, as the store labels it: <c>8 ft</c>, <c>4 × 8 ft</c>.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across the grain, of a sheet; null for a board.</param>
internal sealed record UsualSize(string Material, string Name, string Label, Length Length, Length? Width);

/// <summary>A material with its usual sizes.</summary>
/// <param name="Material">The material.</param>
/// <param name="Sizes">The usual sizes.</param>
internal sealed record UsualMaterial(StockMaterial Material, ImmutableArray<UsualSize> Sizes);

/// <summary>The boards and sheets that a first price list is typed for.</summary>
internal static class UsualStock
{
    // Of a dozen lengths two: a store's others are added to its price list later.
    private const int LengthsEach = 2;
    private static readonly Length Shortest = Length.FromFeet(6);

    /// <summary>Materials by kind, the most usual first.</summary>
    public static IReadOnlyList<(string Name, IReadOnlyList<UsualMaterial> Materials)> Groups { get; } =
    [
        ("Pine boards", Of("pine-")),
        ("Construction lumber", Of("whitewood-")),
        ("Plywood", Of("birch-ply-", "oak-ply-", "maple-ply-", "softwood-ply-", "birch-multiply-")),
        ("MDF and particleboard", Of("mdf-", "particleboard-")),
        ("Poplar, oak and maple boards", Of("poplar-", "oak-1", "maple-1")),
        ("Cedar and Douglas-fir", Of("cedar-", "fir-")),
    ];

    private static IReadOnlyList<UsualMaterial> Of(params string[] ids) =>
        [
            .. MaterialCatalogue
                .StoreMaterials.Where(one => ids.Any(id => one.Id.StartsWith(id, StringComparison.Ordinal)))
                .Select(one => new UsualMaterial(one, [.. Boards(one), .. Sheets(one)])),
        ];

    private static IEnumerable<UsualSize> Boards(StockMaterial one) =>
        one
            .Lengths.Where(length => length >= Shortest)
            .Take(LengthsEach)
            .Select(length => Size(one, Feet(length) ?? LengthFormat.WithUnit(length, LengthUnit.Inch), length, null));

    private static IEnumerable<UsualSize> Sheets(StockMaterial one) =>
        one.Sizes.Take(LengthsEach).Select(size => Size(one, Sheet(size), size.Length, size.Width));

    private static UsualSize Size(StockMaterial one, string label, Length length, Length? width) =>
        new(one.Id, $"{one.Name}, {label}", label, length, width);

    private static string Sheet(SheetSize size)
    {
        if (Whole(size.Width) is { } wide && Whole(size.Length) is { } far)
            return FormattableString.Invariant($"{wide} × {far} ft");
        var unit = LengthFormat.MadeIn(LengthUnit.Inch, size.Length, size.Width);
        return $"{LengthFormat.Plain(size.Width, unit).Text} × {LengthFormat.WithUnit(size.Length, unit)}";
    }

    private static string? Feet(Length length) => Whole(length) is { } feet ? FormattableString.Invariant($"{feet} ft") : null;

    private static long? Whole(Length length) =>
        length.Ticks % Length.TicksPerFoot == 0 ? length.Ticks / Length.TicksPerFoot : null;
}
