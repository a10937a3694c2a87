using System.Collections.Immutable;
using ShopPlanner.Drawing;

namespace ShopPlanner.Packets.Flow;

/// <summary>A finished page.</summary>
/// <param name="Drawing">All that is on it; one unit is a point of 1/72 in.</param>
/// <param name="Bookmarks">Headings that begin on it, for the file's outline.</param>
public sealed record Page(LineDrawing Drawing, ImmutableArray<string> Bookmarks);
