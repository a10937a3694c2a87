using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>A door that is hung at its side, and what carries it.</summary>
/// <param name="Joint">Hung on what.</param>
/// <param name="Leaf">The box of the whole door.</param>
/// <param name="IsFrame">Whether it is made of more than one part.</param>
/// <param name="Count">Its hinges.</param>
internal sealed record HungDoor(WorkJoint Joint, Box Leaf, bool IsFrame, Working<int> Count)
{
    // The form for hinges proposes it; the least that leaves wood behind a cup is there, too.
    public static readonly Working<Length> Edge = Working.Given("Wood between cup and edge", Length.FromMillimetres(5));
    private static readonly Length Behind = Length.FromMillimetres(2);

    public string Name => PartWords.Lower(Joint.From.Name) + " " + Joint.From.Mark;

    /// <summary>On a face frame, and on what is deep enough for a plate.</summary>
    public bool TakesCups =>
        Joint.Into.Part.Assembly == "Face frame" || Hinges.TakesPlate(Joint.Into.Box.Dy, IsInset ? Leaf.Dy : Length.Zero);

    public Length CupDepth => Length.Min(HingesMade.CupDepth, Leaf.Dy - Behind);

    public ImmutableArray<Length> Places => Hinges.Places(Height, Count).Value;

    public Working<Length> Butt => ButtHinges.Size(Height, Working.Given("Width", Leaf.Dx), Working.Given("Thickness", Leaf.Dy));

    /// <summary>None where the door is too low for the hinges.</summary>
    public ImmutableArray<Length> ButtPlaces =>
        ButtHinges.Fits(Leaf.Dz, Butt.Value, IsHouse) ? ButtHinges.Places(Height, Butt, Count, IsHouse).Value : [];

    /// <summary>Whether it is hung at its left.</summary>
    public bool IsLeft => Joint.Into.Box.X + Joint.Into.Box.EndX < Leaf.X + Leaf.EndX;

    private Working<Length> Height => Working.Given("Height", Leaf.Dz);

    private bool IsHouse => ButtHinges.IsHouse(Leaf.Dz, Leaf.Dy);

    private bool IsInset => Leaf.EndY > Joint.Into.Box.Y;

    /// <summary>The doors of a piece, less flaps, which hang from above or below.</summary>
    public static IEnumerable<HungDoor> All(PieceWork work) =>
        work
            .Joints.Where(one => one is { Kind: JointKind.Hinged, Along: Axis.X, From.Part.Assembly: "Door" })
            .Select(one => Of(one, work));

    private static HungDoor Of(WorkJoint joint, PieceWork work)
    {
        var leaf = work.UnitBox(joint.From);
        return new(
            joint,
            leaf,
            work.Together(joint.From).Count > 1,
            DoorHinges.Count(
                Working.Given("Width", leaf.Dx),
                Working.Given("Height", leaf.Dz),
                leaf.Dy,
                joint.From.Part.Material.Species
            )
        );
    }
}
