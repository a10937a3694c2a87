using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>What the text calls a side.</summary>
internal enum SizeRole
{
    /// <summary>Nothing: its place among the others tells.</summary>
    None,

    /// <summary>Thick.</summary>
    Thickness,

    /// <summary>Wide.</summary>
    Width,

    /// <summary>Long.</summary>
    Length,

    /// <summary>Two sides alike.</summary>
    Square,

    /// <summary>Round.</summary>
    Diameter,

    /// <summary>High: the length of a post, the width of an apron.</summary>
    Height,

    /// <summary>Deep: the width of a shelf, or a thickness.</summary>
    Depth,
}

/// <summary>One side of a size, as written.</summary>
/// <param name="Plain">For <see cref="LengthText"/>: with its unit, unless none is written.</param>
/// <param name="Unit">The unit written; feet where feet and inches are.</param>
/// <param name="Role">What it is called.</param>
/// <param name="Doubts">Why it isn't certain.</param>
internal sealed record WrittenSide(string Plain, SizeUnit Unit, SizeRole Role, ImmutableArray<string> Doubts)
{
    /// <summary>The figure, or the first of two.</summary>
    public required BillNumber Number { get; init; }

    /// <summary>Whether it can't be taken as a length at all: a range, or a figure that isn't read.</summary>
    public bool IsOpen { get; init; }

    /// <summary>How many of thickness, width and length it tells.</summary>
    public int Tells => Role is SizeRole.Square or SizeRole.Diameter ? 2 : 1;

    /// <summary>Returns it as <see cref="LengthText"/> reads it, in a unit where none is written.</summary>
    public string In(SizeUnit unit) => Unit == SizeUnit.None ? Plain + SideParser.Suffix(unit) : Plain;

    /// <summary>Whether the unit is one that a figure beside it without a unit shares: never feet or meters.</summary>
    public bool IsShared => Unit is SizeUnit.Inch or SizeUnit.Millimetre or SizeUnit.Centimetre;
}

/// <summary>Two or three sides, as written.</summary>
/// <param name="Start">The first token.</param>
/// <param name="End">The token after the last.</param>
/// <param name="Sides">In the order written.</param>
internal sealed record WrittenSize(int Start, int End, ImmutableArray<WrittenSide> Sides)
{
    /// <summary>Whether "by" or "×" is followed by nothing that can be read.</summary>
    public bool IsCutOff { get; init; }

    /// <summary>The tokens of the wood or stock named between the sides; empty where none is.</summary>
    public Range Stock { get; init; }

    /// <summary>How many of thickness, width and length it tells.</summary>
    public int Told => Sides.Sum(side => side.Tells);
}
