using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>From where to where along a line, in millimetres.</summary>
internal readonly record struct Stretch(double From, double To)
{
    public double Size => To - From;

    public double Middle => (From + To) / 2;

    public Stretch Shared(Stretch other) => new(Math.Max(From, other.From), Math.Min(To, other.To));
}

/// <summary>
/// A joint cut through: the section plane holds the direction in which one part is let into the other, and the direction in which
/// the two are thinnest, so that tongue and groove are seen.
/// </summary>
internal sealed class JointScene
{
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    public JointScene(Piece piece, Joint joint, PiecePart fromPart, PartCopy from, PiecePart intoPart, PartCopy into)
    {
        (Piece, Joint, FromPart, From, IntoPart, Into) = (piece, joint, fromPart, from, intoPart, into);
        Across = ChooseAcross();
        Normal = Axes.Single(axis => axis != Along && axis != Across);
        (FromAlong, IntoAlong) = (Of(from.Box, Along), Of(into.Box, Along));
        (FromAcross, IntoAcross) = (Of(from.Box, Across), Of(into.Box, Across));
        Toward = IntoAlong.Middle >= FromAlong.Middle ? 1 : -1;
    }

    public Piece Piece { get; }

    public Joint Joint { get; }

    public PiecePart FromPart { get; }

    public PartCopy From { get; }

    public PiecePart IntoPart { get; }

    public PartCopy Into { get; }

    /// <summary>The direction in which the one is let into the other.</summary>
    public Axis Along => Joint.Along;

    /// <summary>The other direction of the section.</summary>
    public Axis Across { get; }

    /// <summary>The direction that the section is seen along.</summary>
    public Axis Normal { get; }

    public Stretch FromAlong { get; }

    public Stretch IntoAlong { get; }

    public Stretch FromAcross { get; }

    public Stretch IntoAcross { get; }

    /// <summary>1 where the part that takes the other lies toward the end of the axis, else −1.</summary>
    public int Toward { get; }

    /// <summary>The face of the part that takes the other, along the axis.</summary>
    public double Contact => Toward > 0 ? IntoAlong.From : IntoAlong.To;

    /// <summary>How far the one is let in.</summary>
    public double Depth => PieceScale.Mm(Joint.Depth);

    /// <summary>Where the two meet, across.</summary>
    public Stretch Meeting
    {
        get
        {
            var shared = FromAcross.Shared(IntoAcross);
            return shared.Size > 0 ? shared : new(Math.Min(shared.From, shared.To), Math.Max(shared.From, shared.To));
        }
    }

    /// <summary>Where a stretch of the axes lies: millimetres.</summary>
    public static Stretch Of(Solid box, Axis axis) => new(PieceScale.Mm(box.Start(axis)), PieceScale.Mm(box.End(axis)));

    /// <summary>The tongue's extent across: as thick as the part, or less where the part is as thick as what takes it.</summary>
    public Stretch Tongue
    {
        get
        {
            var third = FromAcross.Size / 3;
            var centred = new Stretch(FromAcross.Middle - (third / 2), FromAcross.Middle + (third / 2));
            return IsThird ? centred
                : Joint.Kind == JointKind.HalfLap ? FromAcross with { To = FromAcross.Middle }
                : Joint.Kind == JointKind.Groove && !Slips ? PanelOfTheGroove() ?? centred
                : FromAcross;
        }
    }

    /// <summary>Whether the tongue's thickness follows from other parts and not from a rule of thumb.</summary>
    public bool IsTongueKnown =>
        Joint.Kind == JointKind.HalfLap || (!IsThird && (!HasShoulders || PanelOfTheGroove() is not null));

    // A third of its part by a rule of thumb.
    private bool IsThird => Joint.Kind is JointKind.MortiseAndTenon or JointKind.Bridle or JointKind.Breadboard;

    /// <summary>Whether the tongue is thinner than its part.</summary>
    public bool HasShoulders => Tongue.Size < FromAcross.Size - 0.01;

    // A part with wood of the other on both sides of it slips in as it is.
    private bool Slips => FromAcross.From > IntoAcross.From + 0.1 && FromAcross.To < IntoAcross.To - 0.1;

    // A rail's tongue runs in the groove that takes the panel.
    private Stretch? PanelOfTheGroove()
    {
        var copies = Piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, copy => copy.Box);
        var thinner = Piece
            .Joints.Where(joint => joint.Kind == JointKind.Groove && joint.Into == Joint.Into)
            .Select(joint => Of(copies[joint.From], Across))
            .Where(one => one.Size < FromAcross.Size - 0.1)
            .ToList();
        return thinner.Count > 0 ? thinner[0] : null;
    }

    private Axis ChooseAcross()
    {
        var others = Axes.Where(axis => axis != Along).ToList();
        if (Joint.Kind == JointKind.Hinged && Along != Axis.Y)
            return Axis.Y;
        if (Joint.Kind == JointKind.Sliding && Along != Axis.Z)
            return Axis.Z;
        if (Joint.Kind == JointKind.Slotted)
            return others.First(axis => axis != From.Along);
        if (Joint.Kind == JointKind.Miter)
            return others.First(axis => axis != From.Flat);
        if (Joint.Kind == JointKind.Dovetail)
            return others.MaxBy(axis => Length.Min(From.Box.Extent(axis), Into.Box.Extent(axis)).Ticks);
        return others.MinBy(axis => Length.Min(From.Box.Extent(axis), Into.Box.Extent(axis)).Ticks);
    }
}
