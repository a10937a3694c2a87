using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Labels;

/// <summary>What the label of one copy tells: stuck on the face that it names, its edges stand for the copy's edges.</summary>
/// <param name="Part">The kind of part.</param>
/// <param name="View">The face that the label is stuck on, and how it lies there.</param>
/// <param name="FaceWords">That face in words: <c>outside face</c>.</param>
/// <param name="RightWords">The end that the label's right edge points to: <c>upper end</c>.</param>
/// <param name="Hints">What is done to its edges.</param>
/// <param name="Triangle">Its piece of the triangle of its assembly; null where it belongs to none.</param>
public sealed record PartLabel(
    PiecePart Part,
    FaceView View,
    string FaceWords,
    string RightWords,
    EdgeHints Hints,
    TrianglePiece? Triangle
)
{
    /// <summary>The copy's mark.</summary>
    public string Mark => View.Copy.Mark;
}

/// <summary>What is done at the edges of a copy, as they lie in its view, in a few words: <c>groove</c>, <c>2 pocket
/// holes</c>.</summary>
/// <param name="Left">At the left end.</param>
/// <param name="Right">At the right end.</param>
/// <param name="Top">Along the upper edge.</param>
/// <param name="Bottom">Along the lower edge.</param>
/// <param name="Faces">Away from all edges.</param>
public sealed record EdgeHints(
    ImmutableArray<string> Left,
    ImmutableArray<string> Right,
    ImmutableArray<string> Top,
    ImmutableArray<string> Bottom,
    ImmutableArray<string> Faces
)
{
    /// <summary>Nothing is known.</summary>
    public static EdgeHints None { get; } = new([], [], [], [], []);
}

/// <summary>A rectangle of a view: from its left and its top.</summary>
/// <param name="X">From the left.</param>
/// <param name="Y">From the top.</param>
/// <param name="Wide">Its width.</param>
/// <param name="High">Its height.</param>
public readonly record struct FlatBox(Length X, Length Y, Length Wide, Length High);

/// <summary>
/// A copy's piece of the cabinetmaker's triangle: parts that belong together lie as they stand in their assembly, one triangle is
/// drawn across all of them, and each carries its piece of the lines, so that it is found again which is which and which end is
/// up (common practice).
/// </summary>
/// <param name="Whole">The assembly, from zero; it lies on the label as the label lies on the copy.</param>
/// <param name="Copy">The copy within it.</param>
/// <param name="IsUpright">Whether the triangle's point is at the top; else at the right, where the top of the assembly
/// is.</param>
public sealed record TrianglePiece(FlatBox Whole, FlatBox Copy, bool IsUpright);
