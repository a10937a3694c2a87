using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Lengths in page units.</summary>
internal static class PieceScale
{
    /// <summary>Millimetres.</summary>
    public static double Mm(Length length) => (double)length.ToMillimetres();

    /// <summary>The scale at which an extent fits.</summary>
    public static double Fit(double across, double up, double width, double height) => Math.Min(width / Math.Max(1, across), height / Math.Max(1, up));

    /// <summary>A figure of a dimension line.</summary>
    public static string Figure(Length length, LengthUnit unit) => LengthFormat.Set(length, unit, 32).WithSign;

    /// <summary>The least box around some spots.</summary>
    public static Box Around(IEnumerable<Spot> spots)
    {
        var all = spots.ToList();
        var (x, y) = (all.Min(s => s.X), all.Min(s => s.Y));
        return new(x, y, all.Max(s => s.X) - x, all.Max(s => s.Y) - y);
    }
}
