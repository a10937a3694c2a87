using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>How a drawer's corners are joined. At all of them the outer face of front and back is flush with the ends of the
/// sides.</summary>
public enum DrawerJoint
{
    /// <summary>Front and back butt between the sides.</summary>
    Butt,

    /// <summary>Front and back sit in rabbets of the sides, half their thickness deep.</summary>
    Rabbet,

    /// <summary>Front and back have tongues in dadoes of the sides, a quarter of their thickness deep.</summary>
    Dado,

    /// <summary>Through dovetails: front and back are as long as the box is wide, sides as long as it is deep.</summary>
    Dovetail,
}

/// <summary>The box of a drawer.</summary>
/// <param name="Width">Outside.</param>
/// <param name="Height">Of the sides.</param>
/// <param name="Depth">Front to back: the length of a side.</param>
/// <param name="FrontBack">Length of front and back.</param>
/// <param name="BottomWidth">Of the bottom, across.</param>
/// <param name="BottomDepth">Of the bottom, front to back.</param>
/// <param name="LetIn">How far front and back are let into each side.</param>
public sealed record DrawerBox(
    Working<Length> Width,
    Working<Length> Height,
    Working<Length> Depth,
    Working<Length> FrontBack,
    Working<Length> BottomWidth,
    Working<Length> BottomDepth,
    Length LetIn
)
{
    /// <summary>Depth of dadoes.</summary>
    public static readonly SourceNote DadoRule = new(
        "Training-school rules: a dado a quarter of the thickness deep",
        Certainty.Read
    );

    /// <summary>Depth of rabbets.</summary>
    public static readonly SourceNote RabbetRule = new(
        "Common practice: a rabbet half the thickness deep",
        Certainty.CommonPractice
    );

    /// <summary>The box.</summary>
    /// <param name="openingWidth">Clear.</param>
    /// <param name="height">Of the box.</param>
    /// <param name="depth">Of the box.</param>
    /// <param name="clearance">For the slide at each side.</param>
    /// <param name="side">Thickness of sides, front and back.</param>
    /// <param name="joint">At the corners.</param>
    /// <param name="groove">Depth of the bottom's groove; nothing where the bottom is planted on from below.</param>
    /// <param name="play">How much smaller the bottom is than its grooves, in all; nothing where it is left out.</param>
    public static DrawerBox Of(
        Working<Length> openingWidth,
        Working<Length> height,
        Working<Length> depth,
        Working<Length> clearance,
        Working<Length> side,
        DrawerJoint joint,
        Working<Length> groove,
        Working<Length>? play = null
    )
    {
        var width = Working.Of(
            "Box width",
            openingWidth.Value - (clearance.Value * 2),
            "{opening} − 2 × {clearance}",
            Working.Geometry,
            ("opening", openingWidth),
            ("clearance", clearance)
        );
        var let = LetInto(side, joint);
        var front = Working.Of(
            "Front and back length",
            width.Value - (side.Value * 2) + (let.Value * 2),
            "{width} − 2 × {side} + 2 × {letin}",
            let.Source,
            ("width", width),
            ("side", side),
            ("letin", let)
        );
        var room = play ?? Working.Given("Play", Length.Zero);
        return new(
            width,
            height,
            depth,
            front,
            Bottom("Bottom, across", width, side, groove, room),
            Bottom("Bottom, front to back", depth, side, groove, room),
            let.Value
        );
    }

    /// <summary>How far front and back are let into each side.</summary>
    /// <param name="side">Thickness of a side.</param>
    /// <param name="joint">At the corners.</param>
    public static Working<Length> LetInto(Working<Length> side, DrawerJoint joint) =>
        joint switch
        {
            DrawerJoint.Butt => Let(side, Length.Zero, "0: butted", Working.Geometry),
            DrawerJoint.Rabbet => Let(side, Length.FromTicks(side.Value.Ticks / 2), "{side} ÷ 2", RabbetRule),
            DrawerJoint.Dado => Let(side, Length.FromTicks(side.Value.Ticks / 4), "{side} ÷ 4", DadoRule),
            _ => Let(side, side.Value, "{side}", Working.Geometry),
        };

    private static Working<Length> Let(Working<Length> side, Length depth, string template, SourceNote source) =>
        Working.Of("Let in at each end", depth, template, source, ("side", side));

    private static Working<Length> Bottom(
        string name,
        Working<Length> outer,
        Working<Length> side,
        Working<Length> groove,
        Working<Length> play
    ) =>
        groove.Value.IsPositive
            ? Working.Of(
                name,
                outer.Value - (side.Value * 2) + (groove.Value * 2) - play.Value,
                "{outer} − 2 × {side} + 2 × {groove} − {play}",
                Working.Geometry,
                ("outer", outer),
                ("side", side),
                ("groove", groove),
                ("play", play)
            )
            : Working.Of(name, outer.Value, "{outer}", Working.Geometry, ("outer", outer));
}
