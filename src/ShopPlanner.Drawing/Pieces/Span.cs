using ShopPlanner.Core.Measures;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>From where to where something reaches along an axis.</summary>
/// <param name="From">Its start.</param>
/// <param name="To">Its end.</param>
internal readonly record struct Span(Length From, Length To)
{
    public Length Size => To - From;

    public bool Overlaps(Span other) => From < other.To && other.From < To;
}
