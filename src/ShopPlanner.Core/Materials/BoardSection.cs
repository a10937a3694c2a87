using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Materials;

/// <summary>A board's section: what it is called and what it measures.</summary>
/// <param name="Nominal">As sold: <c>1x3</c>, <c>5/4x4</c>.</param>
/// <param name="Kind">Softwood or hardwood: the same name measures differently.</param>
/// <param name="Thickness">Actual, dry and planed.</param>
/// <param name="Width">Actual, dry and planed.</param>
/// <param name="Source">Where the actual size comes from.</param>
public sealed record BoardSection(string Nominal, WoodKind Kind, Length Thickness, Length Width, SourceNote Source);
