using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>Rows of holes for shelf pins, all drilled with one template.</summary>
public static class ShelfPins
{
    /// <summary>Pitch and setback of the 32 mm system of holes.</summary>
    public static readonly SourceNote System32 = new(
        "The 32 mm system: 5 mm holes at 32 mm pitch, front row 37 mm from the edge; a hobby reference",
        Certainty.Read
    );

    /// <summary>Another pitch.</summary>
    public static readonly SourceNote OwnPitch = new(
        "Geometry; the pitch is your own, made with a template drilled at the same spacing",
        Certainty.CommonPractice
    );

    /// <summary>Depth of the holes.</summary>
    public static readonly SourceNote DepthRule = new(
        "Common practice: half the length of a pin, never through",
        Certainty.CommonPractice
    );

    /// <summary>From hole to hole in the 32 mm system.</summary>
    public static readonly Length SystemPitch = Length.FromMillimetres(32);
    private static readonly Length HalfPin = Length.FromMillimetres(10);
    private static readonly Length LeftBehind = Length.FromInches(0.125m);

    /// <summary>Depth of the holes in a side.</summary>
    /// <param name="thickness">Of the side.</param>
    public static Working<Length> Depth(Working<Length> thickness)
    {
        ArgumentNullException.ThrowIfNull(thickness);
        var depth = Length.Min(HalfPin, thickness.Value - LeftBehind);
        // A whole half pin is a metric size; what a thin side leaves of it is not.
        return Working.Of(
            "Depth of the holes",
            depth,
            depth == HalfPin ? new OwnUnitFigure(depth, LengthUnit.Millimetre) : new LengthFigure(depth),
            "10 mm, or {thickness} less 1/8 in",
            DepthRule,
            ("thickness", thickness)
        );
    }

    /// <summary>Heights of the holes above the inside bottom.</summary>
    /// <param name="height">Clear height of the side.</param>
    /// <param name="first">Height of the lowest hole.</param>
    /// <param name="pitch">From hole to hole.</param>
    /// <param name="clear">Least distance of the highest hole from the top.</param>
    public static Working<ImmutableArray<Length>> Heights(
        Working<Length> height,
        Working<Length> first,
        Working<Length> pitch,
        Working<Length> clear
    )
    {
        var most = (height.Value - clear.Value - first.Value).Ticks / pitch.Value.Ticks;
        ImmutableArray<Length> holes =
        [
            .. Enumerable.Range(0, (int)Math.Max(0, most + 1)).Select(n => first.Value + (pitch.Value * n)),
        ];
        return Working.Of(
            "Heights of the holes",
            holes,
            new LengthsFigure(holes) { Own = pitch.Value == SystemPitch ? LengthUnit.Millimetre : null },
            "{first} + n × {pitch}, up to {height} − {clear}",
            pitch.Value == SystemPitch ? System32 : OwnPitch,
            ("first", first),
            ("pitch", pitch),
            ("height", height),
            ("clear", clear)
        );
    }
}
