using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>A row of shelf pin holes.</summary>
/// <param name="Mark">The copy that is drilled.</param>
/// <param name="X">The face that is drilled, from the left.</param>
/// <param name="Y">Where the row is, from the front.</param>
/// <param name="Bay">The bay of the shelves.</param>
/// <param name="Shelves">The loose shelves of that bay.</param>
public sealed record PinHoles(string Mark, Length X, Length Y, Box Bay, ImmutableArray<Box> Shelves);

/// <summary>The hinge cups of a door.</summary>
/// <param name="Mark">The copy that is bored.</param>
/// <param name="Leaf">The whole door.</param>
/// <param name="X">Their centers, from the left.</param>
/// <param name="FromEdge">Their centers, from the edge that is hung.</param>
/// <param name="Places">Their centers, from the lower end of the door.</param>
public sealed record CupHoles(string Mark, Box Leaf, Length X, Length FromEdge, ImmutableArray<Length> Places);

/// <summary>The screws or dowels of a joint, in one line along the face in which the parts meet.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="From">What is screwed or doweled.</param>
/// <param name="Into">What it is joined to.</param>
/// <param name="Through">Mark of the copy that screws go through; null for dowels.</param>
/// <param name="Face">Where the two meet.</param>
/// <param name="Run">Direction of the line.</param>
/// <param name="Places">Along it, from the end of that face.</param>
/// <param name="Diameter">Of a screw's shank, or of a dowel.</param>
public sealed record FastenerHoles(
    Joint Joint,
    PartCopy From,
    PartCopy Into,
    string? Through,
    Box Face,
    Axis Run,
    ImmutableArray<Length> Places,
    Length Diameter
);

/// <summary>Where the holes of a piece are bored, by the same rules as the steps of work tell them.</summary>
/// <param name="piece">The piece.</param>
public sealed class PieceHoles(Piece piece)
{
    private readonly PieceWork work = new(piece, WorkChoices.Usual);

    /// <summary>Returns the rows of shelf pin holes.</summary>
    public IEnumerable<PinHoles> Pins() =>
        PinRows
            .Of(work)
            .Select(row => new PinHoles(
                row.Piece.Mark,
                row.AtEnd ? row.Piece.Box.EndX : row.Piece.Box.X,
                row.Y,
                row.Bay,
                [.. work.Workpieces.Where(one => PinRows.IsLoose(one, row.Bay)).Select(one => one.Box)]
            ));

    /// <summary>Returns the hinge cups, door by door.</summary>
    public IEnumerable<CupHoles> Cups()
    {
        var centre = Hinges.CupCentre(HungDoor.Edge).Value;
        return HungDoor
            .All(work)
            .Where(door => door.TakesCups)
            .Select(door => new CupHoles(
                door.Joint.From.Mark,
                door.Leaf,
                door.IsLeft ? door.Leaf.X + centre : door.Leaf.EndX - centre,
                centre,
                door.Places
            ));
    }

    /// <summary>Returns the screws and dowels that are bored straight through the face of a joint, in a direction.</summary>
    /// <param name="along">The direction.</param>
    public IEnumerable<FastenerHoles> Fasteners(Axis along)
    {
        // Many joints of a piece are alike.
        var known =
            new Dictionary<(JointKind, Length, Length, Length, Length), (ImmutableArray<Length> Places, Length Diameter)?>();
        foreach (var joint in work.Joints.Where(one => one.Along == along && one.Kind is JointKind.Screwed or JointKind.Dowel))
        {
            if (joint.Fit.Meeting is not { } face)
                continue;
            var (from, into) = (joint.From.Box.Extent(along), joint.Into.Box.Extent(along));
            var key = (joint.Kind, from, into, joint.Fit.Narrow, joint.Fit.Long);
            if (!known.TryGetValue(key, out var found))
                known[key] = found = Places(joint);
            if (found is not { } held)
                continue;
            var through = joint.Kind == JointKind.Screwed ? Spots.Near(joint).Mark : null;
            yield return new(
                joint.Fit.Joint,
                joint.From.Copy,
                joint.Into.Copy,
                through,
                face,
                Spots.Run(joint),
                held.Places,
                held.Diameter
            );
        }
    }

    // None where nothing that is sold fits.
    private static (ImmutableArray<Length> Places, Length Diameter)? Places(WorkJoint joint)
    {
        if (joint.Kind == JointKind.Dowel)
            return joint.Fit.Dowels() is { } dowels ? (dowels.Places.Value, dowels.Diameter.Value) : null;
        return joint.Fit.Screw().Choice is { } screw ? (Fastenings.Places(joint.Fit, screw), screw.Gauge.Diameter) : null;
    }
}
