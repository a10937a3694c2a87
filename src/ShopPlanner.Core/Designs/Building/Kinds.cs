using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Fills;
using ShopPlanner.Core.Designs.Frames;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>A frame: makes the members that hold the piece up, and says what bay they leave.</summary>
internal interface IFrame
{
    KindInfo Info { get; }

    /// <summary>The bay within; null where the frame leaves none.</summary>
    Bay? Build(NodeReader members, Outside outside, Builder builder);
}

/// <summary>A fill: makes what fills or closes a bay.</summary>
internal interface IFill
{
    KindInfo Info { get; }

    /// <summary>True for a fill that closes the bay in front or behind: it is built before what lies within.</summary>
    bool Closes => false;

    /// <summary>How far it stands out in front of the frame: the thickness of an overlay door; nothing for most. The frame is built so
    /// much less deep.</summary>
    Measures.Length StandsOut(NodeReader members) => Measures.Length.Zero;

    /// <summary>Builds it, and says what bay is left for what comes after.</summary>
    Bay Build(NodeReader members, Bay bay, Builder builder);
}

/// <summary>A part that splits a bay.</summary>
internal interface ISplit
{
    KindInfo Info { get; }

    /// <summary>The smaller bays.</summary>
    /// <param name="members">Of the splitting part.</param>
    /// <param name="bay">The bay that is split.</param>
    /// <param name="sizes">Clear sizes from the left or from below; null for an equal share of the rest.</param>
    /// <param name="builder">Takes the parts.</param>
    ImmutableArray<Bay> Build(
        NodeReader members,
        Bay bay,
        ImmutableArray<Workings.Working<Measures.Length>?> sizes,
        Builder builder
    );
}

/// <summary>A top: lies on the frame.</summary>
internal interface ITop
{
    KindInfo Info { get; }

    /// <summary>How much of the outside height it takes, so that the frame is built so much lower.</summary>
    Measures.Length Thickness(NodeReader members);

    /// <summary>How far it stands out over the frame at each end, in front and behind; the outside size is the top's.</summary>
    Overhang Overhang(NodeReader members);

    /// <param name="members">Of the top.</param>
    /// <param name="outside">Outside size of the whole piece, the top included.</param>
    /// <param name="builder">Takes the parts; holds the frame's already.</param>
    void Build(NodeReader members, Outside outside, Builder builder);
}

/// <summary>The outside size of a piece with how each came about; a top's overhang lies within it.</summary>
/// <param name="Width">Along x.</param>
/// <param name="Depth">Along y.</param>
/// <param name="Height">Along z; for a frame less the top.</param>
internal sealed record Outside(
    Workings.Working<Measures.Length> Width,
    Workings.Working<Measures.Length> Depth,
    Workings.Working<Measures.Length> Height
);

/// <summary>How far a top stands out over its frame.</summary>
internal sealed record Overhang(Measures.Length Ends, Measures.Length Front, Measures.Length Back)
{
    public static readonly Overhang None = new(Measures.Length.Zero, Measures.Length.Zero, Measures.Length.Zero);
}

/// <summary>All kinds that a design can name.</summary>
internal static class Kinds
{
    public static readonly ImmutableArray<IFrame> Frames = FrameList.All;

    public static readonly ImmutableArray<ISplit> Splits = FillList.Splits;

    public static readonly ImmutableArray<IFill> Fills = FillList.Fills;

    public static readonly ImmutableArray<ITop> Tops = FrameList.Tops;
}
