using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>From the farthest part to the nearest, as seen from the front, the right and above.</summary>
internal static class PaintOrder
{
    private const double Hair = 1e-6;

    public static ImmutableArray<Placed> Of(ImmutableArray<Placed> parts)
    {
        var order = ImmutableArray.CreateBuilder<Placed>(parts.Length);
        var seen = new bool[parts.Length];
        foreach (var i in Enumerable.Range(0, parts.Length).OrderBy(i => Depth(parts[i])))
            Visit(i);
        return order.MoveToImmutable();

        // Whatever is behind a part is painted before it. Three parts that lie over one another in a circle have no order: the
        // circle is cut where it closes.
        void Visit(int i)
        {
            if (seen[i])
                return;
            seen[i] = true;
            for (var k = 0; k < parts.Length; k++)
                if (!seen[k] && Touch(parts[i].Extent, parts[k].Extent) && IsBehind(parts[k].Corners, parts[i].Corners))
                    Visit(k);
            order.Add(parts[i]);
        }
    }

    private static double Depth(Placed part) =>
        part.Corners[0] + part.Corners[3] - part.Corners[1] - part.Corners[4] + part.Corners[2] + part.Corners[5];

    private static bool Touch(Box a, Box b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;

    // A plane between two parts says which of them can cover the other. Where planes of two directions say both, neither does.
    private static bool IsBehind(double[] a, double[] b)
    {
        var behind = b[4] <= a[1] + Hair || b[0] >= a[3] - Hair || b[2] >= a[5] - Hair;
        var before = a[4] <= b[1] + Hair || a[0] >= b[3] - Hair || a[2] >= b[5] - Hair;
        return behind && !before;
    }
}
