using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>How a drawer's corners are joined.</summary>
public enum DrawerJoint
{
    /// <summary>Front and back butt between the sides.</summary>
    Butt,

    /// <summary>Front and back sit in rabbets of the sides, half their thickness deep.</summary>
    Rabbet,

    /// <summary>Front and back sit in dadoes of the sides, a third of their thickness deep.</summary>
    Dado,

    /// <summary>Dovetails: front and back are as long as the box is wide.</summary>
    Dovetail,
}

/// <summary>The box of a drawer.</summary>
/// <param name="Width">Outside.</param>
/// <param name="Height">Of the sides.</param>
/// <param name="Depth">Front to back.</param>
/// <param name="FrontBack">Length of front and back.</param>
/// <param name="BottomWidth">Of the bottom, across.</param>
/// <param name="BottomDepth">Of the bottom, front to back.</param>
/// <param name="LetIn">How far front and back are let into each side.</param>
public sealed record DrawerBox(
    Working<Length> Width, Working<Length> Height, Working<Length> Depth, Working<Length> FrontBack, Working<Length> BottomWidth, Working<Length> BottomDepth, Length LetIn)
{
    /// <summary>Depth of rabbets and dadoes.</summary>
    public static readonly SourceNote LetInRule = new("Training-school rules: a dado a quarter to a third of the thickness; common practice: a rabbet half", Certainty.CommonPractice);

    /// <summary>Lengths that slides come in.</summary>
    public static readonly SourceNote SlideLengths = new("Common practice: slides come in steps of 2 in from 10 to 28 in; the maker's sheet wins", Certainty.CommonPractice);

    private static readonly ImmutableArray<Length> Slides = [.. Enumerable.Range(5, 10).Select(n => Length.FromInches(2 * n))];

    /// <summary>The longest slide that the opening takes; null where none is so short.</summary>
    public static Working<Length>? Slide(Working<Length> openingDepth)
    {
        var fitting = Slides.Where(one => one <= openingDepth.Value).ToList();
        return fitting.Count == 0 ? null : Working.Of("Slide length", fitting[^1], "the longest slide within {depth}", SlideLengths, ("depth", openingDepth));
    }

    /// <summary>The box.</summary>
    /// <param name="openingWidth">Clear.</param>
    /// <param name="height">Of the box.</param>
    /// <param name="depth">Of the box.</param>
    /// <param name="clearance">For the slide at each side.</param>
    /// <param name="side">Thickness of sides, front and back.</param>
    /// <param name="joint">At the corners.</param>
    /// <param name="groove">Depth of the bottom's groove; nothing where the bottom is planted on from below.</param>
    public static DrawerBox Of(
        Working<Length> openingWidth, Working<Length> height, Working<Length> depth, Working<Length> clearance, Working<Length> side, DrawerJoint joint, Working<Length> groove)
    {
        var width = Working.Of("Box width", openingWidth.Value - (clearance.Value * 2), "{opening} − 2 × {clearance}", Working.Geometry, ("opening", openingWidth), ("clearance", clearance));
        var letIn = Length.FromTicks(joint switch { DrawerJoint.Butt => 0, DrawerJoint.Rabbet => side.Value.Ticks / 2, DrawerJoint.Dado => side.Value.Ticks / 3, _ => side.Value.Ticks });
        var let = Working.Looked("let in at each end", letIn, new LengthFigure(letIn), LetInRule);
        var front = Working.Of(
            "Front and back", width.Value - (side.Value * 2) + (letIn * 2), "{width} − 2 × {side} + 2 × {letin}", LetInRule, ("width", width), ("side", side), ("letin", let));
        Working<Length> Bottom(string name, Working<Length> outer) => groove.Value.IsPositive
            ? Working.Of(name, outer.Value - (side.Value * 2) + (groove.Value * 2), "{outer} − 2 × {side} + 2 × {groove}", Working.Geometry, ("outer", outer), ("side", side), ("groove", groove))
            : Working.Of(name, outer.Value, "{outer}", Working.Geometry, ("outer", outer));
        return new(width, height, depth, front, Bottom("Bottom, across", width), Bottom("Bottom, front to back", depth), letIn);
    }
}
