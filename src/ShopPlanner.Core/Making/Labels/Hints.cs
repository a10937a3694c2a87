using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Labels;

/// <summary>One thing that is done to a copy.</summary>
/// <param name="Mark">The copy's mark.</param>
/// <param name="Side">The edge or end where it is; null for the midst of a face.</param>
/// <param name="Word">What it is: <c>dado</c>.</param>
internal sealed record Hint(string Mark, BoxSide? Side, string Word)
{
    /// <summary>How many there are of it; null where no number helps.</summary>
    public int? Count { get; init; }
}

/// <summary>Finds what is done at which edge of which copy: joints, edge treatments, bevels.</summary>
internal static class HintList
{
    // What lies in a face within this share of the edge is told at the edge.
    private const int Share = 4;

    /// <summary>All hints of a piece.</summary>
    public static IEnumerable<Hint> Of(PieceWork work) =>
        [
            .. work.Trenches.Select(Trenched),
            .. work.Joints.Where(one => one.Fit.Meeting is not null).SelectMany(one => Joined(one, work)).Where(IsTold),
            .. work.Workpieces.SelectMany(Edged),
        ];

    // What is glued or screwed to the midst of a face asks for nothing there.
    private static bool IsTold(Hint hint) => hint.Side is not null || hint.Word is not ("glue" or "screws");

    private static Hint Trenched(Trench trench)
    {
        var word = trench.Kind switch
        {
            TrenchKind.Groove => "groove",
            TrenchKind.Rabbet => "rabbet",
            TrenchKind.Lap => "lap",
            _ => "dado",
        };
        var (side, copy) = (BoxSides.Of(trench.Along, trench.AtEnd), trench.Into.Copy);
        var isInFace = side.Axis() == copy.Flat;
        var least = Length.Min(trench.Near, trench.Far);
        var edge = BoxSides.Of(trench.Across, trench.Far < trench.Near);
        return new(
            copy.Mark,
            !isInFace ? side
                : least * Share <= trench.Stock ? edge
                : null,
            word
        )
        {
            Count = isInFace ? 1 : null,
        };
    }

    private static IEnumerable<Hint> Joined(WorkJoint joint, PieceWork work)
    {
        if (FromWord(joint, work) is { } from)
            yield return At(joint.From, joint.Into, joint, from);
        if (IntoWord(joint) is { } into)
            yield return At(joint.Into, joint.From, joint, into);
    }

    private static string? FromWord(WorkJoint joint, PieceWork work) =>
        joint.Kind switch
        {
            JointKind.PocketScrew => "pocket hole",
            JointKind.Screwed => "screws",
            JointKind.MortiseAndTenon or JointKind.Bridle => "tenon",
            JointKind.Dado => IsTongued(joint, work) ? "tongue" : "in dado",
            JointKind.Rabbet => "in rabbet",
            JointKind.Groove or JointKind.Breadboard => IsTongued(joint, work) ? "tongue" : "in groove",
            JointKind.Hinged => "hinges",
            JointKind.Beveled => "bevel",
            _ => Both(joint.Kind),
        };

    private static string? IntoWord(WorkJoint joint) =>
        joint.Kind switch
        {
            JointKind.MortiseAndTenon => "mortise",
            JointKind.Bridle => "open mortise",
            JointKind.Beveled => "bevel",
            _ => Both(joint.Kind),
        };

    private static string? Both(JointKind kind) =>
        kind switch
        {
            JointKind.Dowel => "dowel",
            JointKind.Dovetail => "dovetails",
            JointKind.HalfLap => "half lap",
            JointKind.Miter => "miter",
            JointKind.Glued => "glue",
            JointKind.Bolted => "bolts",
            _ => null,
        };

    private static bool IsTongued(WorkJoint joint, PieceWork work) =>
        work.Trenches.Any(one => one.Joints.Contains(joint) && one.AsksForTongue(joint));

    // The side that looks at the other part; where that is a face, the edge that the two meet near to.
    private static Hint At(Workpiece piece, Workpiece other, WorkJoint joint, string word)
    {
        var side = BoxSides.Of(joint.Along, Middle(piece.Box, joint.Along) < Middle(other.Box, joint.Along));
        var count = Count(joint);
        return new(piece.Mark, side.Axis() == piece.Copy.Flat ? Near(piece, joint.Fit.Meeting!.Value) : side, word)
        {
            Count = count,
        };
    }

    private static int? Count(WorkJoint joint) =>
        joint.Kind switch
        {
            JointKind.PocketScrew when joint.Fit.Screw().Choice is { } screw => Fastenings.Places(joint.Fit, screw).Length,
            JointKind.Dowel => joint.Fit.Dowels()?.Places.Value.Length,
            _ => null,
        };

    private static BoxSide? Near(Workpiece piece, Box met)
    {
        foreach (var axis in new[] { piece.Copy.Across, piece.Copy.Along })
        {
            var (near, far) = (met.End(axis) - piece.Box.Start(axis), piece.Box.End(axis) - met.Start(axis));
            if (Length.Min(near, far) * Share <= piece.Box.Extent(axis))
                return BoxSides.Of(axis, far < near);
        }

        return null;
    }

    private static Length Middle(Box box, Axis axis) => Length.FromTicks((box.Start(axis).Ticks + box.End(axis).Ticks) / 2);

    private static IEnumerable<Hint> Edged(Workpiece piece) =>
        piece
            .Copy.Edges.Where(edge => edge.Side.Axis() != piece.Copy.Flat)
            .Select(edge => new Hint(piece.Mark, edge.Side, Word(edge.Work)))
            .Concat(
                piece
                    .Copy.Features.OfType<Bevel>()
                    .Where(bevel => bevel.Edge.Axis() != piece.Copy.Flat)
                    .Select(bevel => new Hint(piece.Mark, bevel.Edge, FormattableString.Invariant($"bevel {bevel.Degrees:0.#}°")))
            );

    private static string Word(EdgeWork work) =>
        work switch
        {
            EdgeWork.Band => "band",
            EdgeWork.Lipping => "lipping",
            EdgeWork.Strip => "edge strip",
            _ => "round over",
        };
}
