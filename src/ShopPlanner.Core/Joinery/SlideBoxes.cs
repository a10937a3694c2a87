using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Slides by where they sit.</summary>
internal enum SlideKind
{
    /// <summary>Under the box, out of sight.</summary>
    Undermount,

    /// <summary>On the sides, with balls.</summary>
    Side,

    /// <summary>At the lower edge of the sides, with rollers.</summary>
    Roller,
}

/// <summary>What slides take of an opening.</summary>
internal static class SlideBoxes
{
    /// <summary>Width of boxes on undermount slides.</summary>
    public static readonly SourceNote UnderRule = new(
        "Drawer makers' measuring pages: 21 mm from the case to the inside of each drawer side; the slide's sheet comes first",
        Certainty.Quoted
    );

    /// <summary>Width of boxes on slides at the sides.</summary>
    public static readonly SourceNote SideRule = new(
        "Drawer makers' measuring pages: 1/2 in at each side, 1 1/16 in off the opening so that the box never jams; the slide's "
            + "sheet comes first",
        Certainty.Quoted
    );

    /// <summary>Height of boxes.</summary>
    public static readonly SourceNote HeightRule = new(
        "Drawer makers' measuring pages: at least 13/16 in off the opening for undermount slides, 1/2 in for others; "
            + "1 in for rollers, which lift out, is common practice",
        Certainty.CommonPractice
    );

    /// <summary>Notches at the back of a box on undermount slides.</summary>
    public static readonly SourceNote NotchRule = new(
        "Slide makers' sheets: bottom up 1/2 in (13 mm), a notch about 1 3/8 in (35 mm) wide at each side of the back",
        Certainty.FromMemory
    );

    /// <summary>Width of the whole notch.</summary>
    public static readonly Length Notch = Length.FromInches(1.375m);

    /// <summary>How far the bottom lies above the sides' lower edges.</summary>
    public static readonly Length Recess = Length.FromInches(0.5m);

    private static readonly Length UnderEach = Length.FromMillimetres(21);
    private static readonly Length SideBoth = Length.FromInches(1.0625m);

    /// <summary>Width of the box, outside.</summary>
    /// <param name="kind">Of slide.</param>
    /// <param name="opening">Clear.</param>
    /// <param name="side">Thickness of a drawer side.</param>
    /// <param name="each">What the slide's sheet asks for at each side; null where nobody has it. At undermount slides it is
    /// measured to the inside of the drawer side.</param>
    public static Working<Length> Width(SlideKind kind, Working<Length> opening, Working<Length> side, Working<Length>? each)
    {
        if (kind == SlideKind.Undermount)
        {
            var inner =
                each
                ?? Working.Looked(
                    "Case to inside of the side",
                    UnderEach,
                    new OwnUnitFigure(UnderEach, LengthUnit.Millimetre),
                    UnderRule
                );
            return Working.Of(
                "Box width, outside",
                opening.Value - (inner.Value * 2) + (side.Value * 2),
                "{opening} − 2 × {inner} + 2 × {side}",
                UnderRule,
                ("opening", opening),
                ("inner", inner),
                ("side", side)
            );
        }

        if (each is null)
        {
            var both = Working.Looked("Both slides", SideBoth, new LengthFigure(SideBoth), SideRule);
            return Working.Of(
                "Box width, outside",
                opening.Value - both.Value,
                "{opening} − {both}",
                SideRule,
                ("opening", opening),
                ("both", both)
            );
        }

        return Working.Of(
            "Box width, outside",
            opening.Value - (each.Value * 2),
            "{opening} − 2 × {each}",
            Working.Geometry,
            ("opening", opening),
            ("each", each)
        );
    }

    /// <summary>The tallest box.</summary>
    public static Working<Length> Height(SlideKind kind, Working<Length> opening)
    {
        var room = kind switch
        {
            SlideKind.Undermount => Length.FromInches(0.8125m),
            SlideKind.Roller => Length.FromInches(1),
            _ => Length.FromInches(0.5m),
        };
        return Working.Of(
            "Box height, at most",
            opening.Value - room,
            "{opening} − {room}",
            HeightRule,
            ("opening", opening),
            ("room", Working.Looked("Room above and below", room, new LengthFigure(room), HeightRule))
        );
    }

    /// <summary>Length of the box.</summary>
    public static Working<Length> Depth(Working<Length> slide) =>
        Working.Of("Box length", slide.Value, "same as {slide}", Slides.Lengths, ("slide", slide));
}
