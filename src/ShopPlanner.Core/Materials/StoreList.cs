using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Materials;

/// <summary>What a home-improvement store in North America stocks as a rule: a start for a shop's own list (common
/// practice).</summary>
internal static class StoreList
{
    private static readonly ImmutableArray<Length> BoardLengths = Feet(4, 6, 8, 10, 12);
    private static readonly ImmutableArray<Length> DimensionLengths = Feet(8, 10, 12, 16);
    private static readonly ImmutableArray<Length> HardwoodLengths = Feet(4, 6, 8);

    /// <summary>Boards by wood, then sheets.</summary>
    public static readonly ImmutableArray<StockMaterial> All =
    [
        .. Boards("pine", "Pine", "pine-eastern-white", BoardLengths, "1x2", "1x3", "1x4", "1x6", "1x8", "1x10", "1x12"),
        .. Boards(
            "whitewood",
            "Whitewood",
            "spruce-pine-fir",
            DimensionLengths,
            "2x2",
            "2x3",
            "2x4",
            "2x6",
            "2x8",
            "2x10",
            "2x12",
            "4x4"
        ),
        .. Boards("fir", "Douglas-fir", "douglas-fir-coast", DimensionLengths, "2x4", "2x6", "4x4"),
        .. Boards("cedar", "Cedar", "cedar-western-red", BoardLengths, "1x2", "1x4", "1x6", "5/4x6", "2x4"),
        .. Boards("poplar", "Poplar", "yellow-poplar", HardwoodLengths, "1x2", "1x3", "1x4", "1x6", "1x8"),
        .. Boards("oak", "Red oak", "oak-red", HardwoodLengths, "1x2", "1x3", "1x4", "1x6", "1x8"),
        .. Boards("maple", "Maple", "maple-sugar", HardwoodLengths, "1x2", "1x3", "1x4", "1x6"),
        .. Sheets(
            "birch-ply-1-4",
            "birch-ply-1-2",
            "birch-ply-3-4",
            "oak-ply-1-4",
            "oak-ply-3-4",
            "maple-ply-1-4",
            "maple-ply-3-4"
        ),
        .. Sheets("softwood-ply-11-32", "softwood-ply-15-32", "softwood-ply-19-32", "softwood-ply-23-32"),
        .. Sheets("mdf-1-4", "mdf-1-2", "mdf-3-4", "particleboard-3-4"),
        .. Sheets("birch-multiply-6-5mm", "birch-multiply-12mm", "birch-multiply-18mm", "mdf-12mm", "mdf-18mm"),
    ];

    private static IEnumerable<StockMaterial> Boards(
        string id,
        string name,
        string speciesId,
        ImmutableArray<Length> lengths,
        params string[] sections
    )
    {
        var species = SpeciesList.All.Single(s => s.Id == speciesId);
        return sections.Select(section => Board(id, name, species, lengths, section));
    }

    private static StockMaterial Board(string id, string name, Species species, ImmutableArray<Length> lengths, string nominal)
    {
        if (!MaterialCatalogue.TryFindSection(nominal, species.Kind, out var section))
            throw new InvalidOperationException($"the list of materials names a section that is not known: {nominal}");
        return new(
            $"{id}-{nominal.Replace('/', '-')}",
            $"{name} {nominal}",
            MaterialForm.Board,
            species.Id,
            null,
            section.Thickness,
            section.Width,
            species.Tint,
            lengths,
            [],
            section.Source
        );
    }

    private static IEnumerable<StockMaterial> Sheets(params string[] ids) =>
        ids.Select(id =>
        {
            var good = SheetList.All.Single(g => g.Id == id);
            return new StockMaterial(
                id,
                good.Name,
                MaterialForm.Sheet,
                null,
                id,
                good.Thickness,
                null,
                good.Tint,
                [],
                good.Sizes,
                good.Source
            );
        });

    private static ImmutableArray<Length> Feet(params int[] feet) => [.. feet.Select(f => Length.FromFeet(f))];
}
