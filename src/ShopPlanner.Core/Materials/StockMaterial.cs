using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Materials;

/// <summary>How a material comes.</summary>
public enum MaterialForm
{
    /// <summary>A fixed section, cut to length.</summary>
    Board,

    /// <summary>Cut both ways.</summary>
    Sheet,
}

/// <summary>A material that a home-improvement store stocks.</summary>
/// <param name="Id">Stable key: <c>pine-1x3</c>, <c>birch-ply-3-4</c>.</param>
/// <param name="Name">As a person says it.</param>
/// <param name="Form">Board or sheet.</param>
/// <param name="SpeciesId">Of a board; null for a sheet.</param>
/// <param name="SheetGoodId">Of a sheet; null for a board.</param>
/// <param name="Thickness">Actual, to plan with until it has been measured.</param>
/// <param name="Width">A board's actual width; null for a sheet.</param>
/// <param name="Tint">Fill for drawings, <c>#RRGGBB</c>, pale.</param>
/// <param name="Lengths">Lengths a board is usually sold in (common practice: softwood boards from 4 ft, dimension lumber and
/// hardwood from 6 ft, in 2 ft steps); empty for a sheet.</param>
/// <param name="Sizes">Sides a sheet is usually sold in; empty for a board.</param>
/// <param name="Source">Where the actual sizes come from.</param>
public sealed record StockMaterial(
    string Id,
    string Name,
    MaterialForm Form,
    string? SpeciesId,
    string? SheetGoodId,
    Length Thickness,
    Length? Width,
    string Tint,
    ImmutableArray<Length> Lengths,
    ImmutableArray<SheetSize> Sizes,
    SourceNote Source
);
