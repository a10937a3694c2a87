using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A kind of joint of a piece, drawn.</summary>
/// <param name="Kind">How the parts are joined.</param>
/// <param name="Title">Which parts, and how: <c>Bottom into Side: dado</c>.</param>
/// <param name="Note">What to know beside the drawing; empty for nothing.</param>
/// <param name="Count">How many joints of the piece are like this.</param>
/// <param name="Marks">The copies that are let in, screwed or hung, in a few characters.</param>
/// <param name="Drawing">A section through it, to scale.</param>
public sealed record JointDetail(JointKind Kind, string Title, string Note, int Count, string Marks, LineDrawing Drawing);

/// <summary>Draws each kind of joint of a piece once.</summary>
public static class JointDetails
{
    private const double Width = 250,
        Height = 170;

    /// <summary>The joints that differ in kind, in the parts' names or in depth, in the piece's order.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="width">Of each drawing, in page units.</param>
    /// <param name="height">Of each drawing.</param>
    public static ImmutableArray<JointDetail> Of(Piece piece, double width = Width, double height = Height)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var copies = piece
            .Parts.SelectMany(part => part.Copies.Select(copy => (copy.Mark, Part: part, Copy: copy)))
            .ToDictionary(one => one.Mark);
        return
        [
            .. piece
                .Joints.GroupBy(joint =>
                    (joint.Kind, From: copies[joint.From].Part.Name, Into: copies[joint.Into].Part.Name, joint.Depth)
                )
                .Select(group =>
                {
                    var joint = group.First();
                    var scene = new JointScene(
                        piece,
                        joint,
                        copies[joint.From].Part,
                        copies[joint.From].Copy,
                        copies[joint.Into].Part,
                        copies[joint.Into].Copy
                    );
                    var (shapes, note) = new JointDrawing(scene, width, height).Draw();
                    var title = $"{group.Key.From} {Verb(joint.Kind)} {group.Key.Into.ToLowerInvariant()}: {NameOf(joint.Kind)}";
                    return new JointDetail(
                        joint.Kind,
                        title,
                        note,
                        group.Count(),
                        MarkRange.Of([.. group.Select(one => one.From).Distinct()]),
                        new(title, Describe(title, joint.Depth, piece.Unit), width, height, shapes)
                    );
                }),
        ];
    }

    /// <summary>The trade's word for a kind of joint.</summary>
    public static string NameOf(JointKind kind) =>
        kind switch
        {
            JointKind.Glued => "glued",
            JointKind.Screwed => "screwed",
            JointKind.PocketScrew => "pocket screws",
            JointKind.Dado => "dado",
            JointKind.Rabbet => "rabbet",
            JointKind.Groove => "groove",
            JointKind.MortiseAndTenon => "mortise and tenon",
            JointKind.Dovetail => "dovetails",
            JointKind.Dowel => "dowels",
            JointKind.Slotted => "slotted screws",
            JointKind.Hinged => "hinges",
            JointKind.Sliding => "slides",
            JointKind.Bolted => "bolted",
            JointKind.Beveled => "beveled cleats",
            JointKind.HalfLap => "half-lap",
            JointKind.Bridle => "bridle joint",
            JointKind.Miter => "miter with a spline",
            JointKind.Breadboard => "breadboard end",
            JointKind.SlidingGroove => "sliding in a groove",
            JointKind.Pinned => "brads in a rabbet",
            _ => "rests on it",
        };

    private static string Verb(JointKind kind) =>
        kind switch
        {
            JointKind.Dado or JointKind.Rabbet or JointKind.Groove or JointKind.MortiseAndTenon or JointKind.Bridle => "into",
            JointKind.Breadboard or JointKind.SlidingGroove or JointKind.Pinned => "into",
            JointKind.Resting or JointKind.Hinged or JointKind.Sliding => "on",
            _ => "to",
        };

    private static string Describe(string title, Length depth, LengthUnit unit) =>
        depth.IsPositive
            ? $"{title}, {PieceScale.Figure(depth, unit)} {Figures.UnitName(unit)} deep. Section, to scale."
            : $"{title}. Section, to scale.";
}
