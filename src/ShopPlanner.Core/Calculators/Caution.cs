using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A short warning where the work can hurt; the maker's instructions, local codes and licensed practice come before
/// it.</summary>
/// <param name="Id">Stable key.</param>
/// <param name="Text">What to mind, in our own words.</param>
/// <param name="Source">What it rests on.</param>
public sealed record Caution(string Id, string Text, SourceNote Source);
