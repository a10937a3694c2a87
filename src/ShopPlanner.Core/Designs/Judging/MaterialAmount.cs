using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>How much of a material the parts of a piece take as they are cut, without kerf and waste.</summary>
/// <param name="Material">The material.</param>
/// <param name="Pieces">Pieces to cut.</param>
/// <param name="Running">Length of boards, one after the other; nothing for a sheet.</param>
/// <param name="Face">Area of the faces.</param>
/// <param name="Wood">Volume at the true thickness.</param>
public sealed record MaterialAmount(RoleMaterial Material, int Pieces, Length Running, Area Face, Volume Wood)
{
    /// <summary>By material, boards before sheets; spacers and practice pieces come from scrap and are not counted.</summary>
    public static ImmutableArray<MaterialAmount> Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var members = piece.Parts.Where(part => part.Purpose == PartPurpose.Member).GroupBy(part => part.Material);
        return [.. members.Select(Of).OrderBy(one => one.Material.Form).ThenBy(one => one.Material.Name, StringComparer.Ordinal)];
    }

    private static MaterialAmount Of(IGrouping<RoleMaterial, PiecePart> parts)
    {
        var face = parts.Aggregate(Area.Zero, (sum, part) => sum + (Area.Of(part.RoughLength, part.RoughWidth) * part.Quantity));
        var running =
            parts.Key.Form == MaterialForm.Sheet
                ? Length.Zero
                : parts.Aggregate(Length.Zero, (sum, part) => sum + (part.RoughLength * part.Quantity));
        return new(parts.Key, parts.Sum(part => part.Quantity), running, face, face * parts.Key.Thickness);
    }
}
