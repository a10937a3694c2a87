using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing;

namespace ShopPlanner.Packets.Model;

/// <summary>A piece of furniture as the packet shows it: what it looks like, what it is made of.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Unit">Of its figures.</param>
/// <param name="Isometric">For the cover, a third of a page's content wide.</param>
/// <param name="Views">From three sides with dimensions; the parts drawn apart stand beside them.</param>
/// <param name="Apart">The parts drawn apart.</param>
/// <param name="Parts">Every kind of part.</param>
/// <param name="Joints">Every kind of joint.</param>
/// <param name="Warnings">What to fix, to make safe or to check: plain sentences, each after its severity.</param>
public sealed record PacketPiece(
    string Name,
    LengthUnit Unit,
    LineDrawing Isometric,
    LineDrawing Views,
    LineDrawing Apart,
    ImmutableArray<PacketPiecePart> Parts,
    ImmutableArray<PacketJoint> Joints,
    ImmutableArray<string> Warnings
)
{
    /// <summary>How the sizes were worked out.</summary>
    public ImmutableArray<PacketWorking> Workings { get; init; } = [];
}

/// <summary>One kind of part of a piece.</summary>
/// <param name="Marks">Of each copy, the same as on the drawings.</param>
/// <param name="Quantity">How many are cut.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Length">Finished, along the grain.</param>
/// <param name="Width">Finished, across it.</param>
/// <param name="Thickness">Finished.</param>
/// <param name="RoughLength">As cut.</param>
/// <param name="RoughWidth">As cut.</param>
public sealed record PacketPiecePart(
    ImmutableArray<string> Marks,
    int Quantity,
    string Name,
    string Material,
    Length Length,
    Length Width,
    Length Thickness,
    Length RoughLength,
    Length RoughWidth
)
{
    /// <summary>Whether it is a shop-made spacer or a test piece, which are no part of the furniture.</summary>
    public bool IsHelp { get; init; }
}

/// <summary>One kind of joint of a piece.</summary>
/// <param name="Title">Which parts, and how.</param>
/// <param name="Note">What to know beside the drawing; empty for nothing.</param>
/// <param name="Count">How many are like this.</param>
/// <param name="Drawing">A section, in points, no wider than half a page's content.</param>
public sealed record PacketJoint(string Title, string Note, int Count, LineDrawing Drawing);

/// <summary>Hardware of a piece.</summary>
/// <param name="Name">As asked for in a store.</param>
/// <param name="Quantity">How many.</param>
public sealed record PacketHardware(string Name, int Quantity);
