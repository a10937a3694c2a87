using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A clear space that a frame or a split leaves, with the parts that bound it; null where a side is open.</summary>
/// <param name="Box">The clear space behind the face of the frame, to the inside of the back.</param>
/// <param name="Front">The opening in the face of the frame: its y is the front plane, its extent along y the thickness of a face
/// frame (nothing where the edges of the case are the face).</param>
internal sealed record Bay(Box Box, Box Front)
{
    public Draft? Left { get; init; }

    public Draft? Right { get; init; }

    /// <summary>How far an upright part reaches below the clear space, behind the lower rail of a frame; nothing where it stands
    /// on what bounds the space.</summary>
    public Length ReachBelow { get; init; }

    /// <summary>How far an upright part reaches above the clear space, behind the upper rail of a frame.</summary>
    public Length ReachAbove { get; init; }

    /// <summary>Clear space between a back that is let in and the wall; null where there is none.</summary>
    public Box? Behind { get; init; }

    /// <summary>What a face frame is made of; null without one.</summary>
    public RoleMaterial? Face { get; init; }

    /// <summary>The face frame's member at each side of <see cref="Front"/>; null where there is none.</summary>
    public Draft? FaceLeft { get; init; }

    public Draft? FaceRight { get; init; }

    /// <summary>What a member between two bays in the plane of <see cref="Front"/> is made of: a mid stile or a mid rail. Null
    /// where the edges of the case are its face.</summary>
    public FrontStock? Mid { get; init; }

    /// <summary>For each of the smaller bays that it is split into, whether a door or drawer closes it, or one within
    /// it.</summary>
    public ImmutableArray<bool> Fronts { get; init; } = [];

    /// <summary>Whether there is such a plane, and its member at one side is missing: a door or drawer would have nothing beside
    /// it.</summary>
    public bool LacksStile => Mid is not null && (FaceLeft is null || FaceRight is null);

    /// <summary>How much of the frame's face beside <see cref="Front"/> an overlay door may cover at each side: a side's edge,
    /// half a divider's.</summary>
    public Length CoverLeft { get; init; }

    public Length CoverRight { get; init; }

    public Length CoverBottom { get; init; }

    public Length CoverTop { get; init; }
}

/// <summary>What stands between two bays in the plane of the front.</summary>
/// <param name="Material">Of the face frame or the front rails.</param>
/// <param name="Width">How wide it usually is.</param>
/// <param name="Assembly">The unit it belongs to.</param>
internal sealed record FrontStock(RoleMaterial Material, Length Width, string Assembly);
