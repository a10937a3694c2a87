using ShopPlanner.Core.Angles;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>What both diagonals of a unit should read when it is square.</summary>
internal static class SquareChecks
{
    /// <summary>How far off is still good.</summary>
    public static readonly SourceNote Allowance = new(
        "Common practice: 1/32 in up to 1 ft, 1/16 in up to 4 ft, 1/8 in above; no source gives a figure",
        Certainty.CommonPractice
    );

    private static readonly bool[] Sides = [true, false];

    /// <summary>Returns the check; null where the four outside corners aren't all there to measure between.</summary>
    /// <param name="solids">The piece.</param>
    /// <param name="copies">What stands.</param>
    /// <param name="isGlued">Whether glue holds it, or screws.</param>
    public static WorkCheck? Of(Solids solids, IReadOnlyCollection<int> copies, bool isGlued)
    {
        var box = solids.Around(copies);
        foreach (var normal in Normals(box))
            if (HasCorners(solids, copies, box, normal))
                return Of(box, normal, isGlued);
        return null;
    }

    /// <summary>How far the diagonals of something so long may differ.</summary>
    public static Length Off(Length longest) =>
        longest <= Length.FromInches(12) ? Length.FromInches(0, 1, 32)
        : longest <= Length.FromInches(48) ? Length.FromInches(0, 1, 16)
        : Length.FromInches(0, 1, 8);

    // Across its thinnest side first: that is the plane in which it is open.
    private static IEnumerable<Axis> Normals(Box box) => Way.Axes.OrderBy(axis => box.Extent(axis).Ticks);

    private static bool HasCorners(Solids solids, IReadOnlyCollection<int> copies, Box box, Axis normal)
    {
        var (one, other) = BoxSides.Others(normal);
        return Sides.All(first =>
            Sides.All(second =>
                copies.Any(copy =>
                    Reaches(solids.Box(copy), box, new Way(one, first)) && Reaches(solids.Box(copy), box, new Way(other, second))
                )
            )
        );
    }

    private static bool Reaches(Box part, Box whole, Way way) => way.Ahead(part) == way.Ahead(whole);

    private static WorkCheck Of(Box box, Axis normal, bool isGlued)
    {
        var (one, other) = BoxSides.Others(normal);
        var reads = Squareness.Diagonal(Side(box, one), Side(box, other));
        var remedy = isGlued
            ? "Loosen the clamps, set one along the longer diagonal, and draw it in until both read the same. Do it before the "
                + "glue grabs."
            : "Loosen the screws, push the corners of the longer diagonal together, and drive the screws again.";
        var off = Off(Length.Max(box.Extent(one), box.Extent(other)));
        return new("Both diagonals, from outside corner to outside corner", reads, off, remedy, Allowance);
    }

    private static Working<Length> Side(Box box, Axis axis) =>
        Working.Given(
            axis switch
            {
                Axis.X => "Width",
                Axis.Y => "Depth",
                _ => "Height",
            },
            box.Extent(axis)
        );
}
