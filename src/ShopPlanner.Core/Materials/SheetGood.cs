using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Materials;

/// <summary>What a sheet is made of.</summary>
public enum SheetKind
{
    /// <summary>Structural plywood of softwood veneers, sold by performance category.</summary>
    SoftwoodPlywood,

    /// <summary>Plywood with decorative hardwood faces.</summary>
    HardwoodPlywood,

    /// <summary>Plywood of many thin birch plies, sold in millimetres.</summary>
    BirchMultiply,

    /// <summary>Medium-density fibreboard: no grain.</summary>
    Mdf,

    /// <summary>Particleboard: no grain.</summary>
    Particleboard,
}

/// <summary>A sheet's two sides.</summary>
/// <param name="Length">Along the face grain.</param>
/// <param name="Width">Across it.</param>
public sealed record SheetSize(Length Length, Length Width);

/// <summary>A sheet: what it is called and what it measures.</summary>
/// <param name="Id">Stable key: <c>birch-ply-3-4</c>.</param>
/// <param name="Name">As a person says it.</param>
/// <param name="Kind">What it is made of.</param>
/// <param name="Nominal">Thickness as sold: <c>3/4</c>, <c>18 mm</c>.</param>
/// <param name="Thickness">To plan with until the sheet has been measured.</param>
/// <param name="Thinnest">Least thickness allowed.</param>
/// <param name="Thickest">Greatest thickness allowed.</param>
/// <param name="Sizes">Sides as sold, the usual one first.</param>
/// <param name="Tint">Fill for drawings, <c>#RRGGBB</c>, pale.</param>
/// <param name="Source">Where the thicknesses come from.</param>
public sealed record SheetGood(
    string Id,
    string Name,
    SheetKind Kind,
    string Nominal,
    Length Thickness,
    Length Thinnest,
    Length Thickest,
    ImmutableArray<SheetSize> Sizes,
    string Tint,
    SourceNote Source
)
{
    /// <summary>True when the face shows grain, so that the way a part lies matters.</summary>
    public bool HasGrain => Kind is not (SheetKind.Mdf or SheetKind.Particleboard);
}
