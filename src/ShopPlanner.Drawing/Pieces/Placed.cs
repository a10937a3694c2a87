using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A part with its corners in millimetres and its picture seen at a slant, from the front, the right and
/// above.</summary>
internal sealed class Placed
{
    private static readonly double Cos = Math.Cos(Math.PI / 6),
        Sin = 0.5;

    /// <summary>Projects it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="corners">x, y, z of the near lower left corner and of the far upper right one.</param>
    public Placed(ShownPart part, double[] corners)
    {
        (Part, Corners) = (part, corners);
        Hexagon = [At(0, 1, 2), At(3, 1, 2), At(3, 4, 2), At(3, 4, 5), At(0, 4, 5), At(0, 1, 5)];
        Extent = PieceScale.Around(Hexagon);
    }

    public ShownPart Part { get; }

    public double[] Corners { get; }

    /// <summary>The picture's outline, before it is scaled.</summary>
    public ImmutableArray<Spot> Hexagon { get; }

    /// <summary>The least box around the picture.</summary>
    public Box Extent { get; }

    /// <summary>Front, right side and top, each from its lower left corner round.</summary>
    public ImmutableArray<ImmutableArray<Spot>> Faces =>
        [
            [At(0, 1, 2), At(3, 1, 2), At(3, 1, 5), At(0, 1, 5)],
            [At(3, 1, 2), At(3, 4, 2), At(3, 4, 5), At(3, 1, 5)],
            [At(0, 1, 5), At(3, 1, 5), At(3, 4, 5), At(0, 4, 5)],
        ];

    /// <summary>What is painted: the faces; of a part with a notch, the L of its right side and the back of the notch.</summary>
    public ImmutableArray<(ImmutableArray<Spot> Spots, int Side)> Painted
    {
        get
        {
            var faces = Faces;
            if (Part.Copy.ToeNotch is not { } notch)
                return [(faces[0], 0), (faces[1], 1), (faces[2], 2)];
            var (x, endX, y, endY, z, endZ) = (Corners[0], Corners[3], Corners[1], Corners[4], Corners[2], Corners[5]);
            var (back, over) = (y + PieceScale.Mm(notch.Deep), z + PieceScale.Mm(notch.High));
            return
            [
                ([Flat(x, back, z), Flat(endX, back, z), Flat(endX, back, over), Flat(x, back, over)], 0),
                ([Flat(x, y, over), Flat(endX, y, over), Flat(endX, y, endZ), Flat(x, y, endZ)], 0),
                (
                    [
                        Flat(endX, back, z),
                        Flat(endX, endY, z),
                        Flat(endX, endY, endZ),
                        Flat(endX, y, endZ),
                        Flat(endX, y, over),
                        Flat(endX, back, over),
                    ],
                    1
                ),
                (faces[2], 2),
            ];
        }
    }

    /// <summary>Whether a spot lies in the picture.</summary>
    public bool Covers(Spot spot)
    {
        if (spot.X < Extent.X || spot.X > Extent.Right || spot.Y < Extent.Y || spot.Y > Extent.Bottom)
            return false;
        for (var i = 0; i < Hexagon.Length; i++)
        {
            var (a, b) = (Hexagon[i], Hexagon[(i + 1) % Hexagon.Length]);
            if (((b.X - a.X) * (spot.Y - a.Y)) - ((b.Y - a.Y) * (spot.X - a.X)) > 0)
                return false;
        }

        return true;
    }

    private Spot At(int x, int y, int z) => Flat(Corners[x], Corners[y], Corners[z]);

    /// <summary>Where a place in space is seen, before it is scaled.</summary>
    public static Spot Flat(double x, double y, double z) => new((x + y) * Cos, ((x - y) * Sin) - z);
}
