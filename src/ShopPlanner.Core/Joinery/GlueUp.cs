using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>A wide panel glued up from strips.</summary>
public static class GlueUp
{
    /// <summary>Allowance.</summary>
    public static readonly SourceNote Jointing = new("Common practice: 1/16 in for each edge that is jointed", Certainty.CommonPractice);

    /// <summary>Pressure.</summary>
    public static readonly SourceNote PressureSource = new("A glue maker quoted on trade pages: 100–150 psi for softwood, 175–250 psi for hardwood; the middle", Certainty.Quoted);

    /// <summary>Clamps.</summary>
    public static readonly SourceNote Spread = new("Geometry, common practice: a clamp's pressure spreads at 45°, so clamps stand two widths apart", Certainty.CommonPractice);

    /// <summary>Glue.</summary>
    public static readonly SourceNote GlueRate = new("Common practice: about 6 mil of wet glue; the label's spread rate wins", Certainty.CommonPractice);

    /// <summary>Strips wanted.</summary>
    /// <param name="width">Of the panel.</param>
    /// <param name="board">Usable width of one board.</param>
    /// <param name="lostPerJoint">Width that each joint takes: a tongue; nothing for a butt or a spline.</param>
    public static Working<int> Strips(Working<Length> width, Working<Length> board, Working<Length> lostPerJoint)
    {
        var (w, b, t) = (width.Value.Ticks, board.Value.Ticks, lostPerJoint.Value.Ticks);
        var count = (int)((w - t + (b - t) - 1) / (b - t));
        return Working.Of(
            "Strips", Math.Max(1, count), new QuantityFigure(Math.Max(1, count), QuantityKind.Bare, 0), "({width} − {joint}) ÷ ({board} − {joint}), up to a whole one", Working.Geometry,
            ("width", width), ("joint", lostPerJoint), ("board", board));
    }

    /// <summary>Width of each strip, rounded up to a sixty-fourth so that it can be set.</summary>
    public static Working<Length> StripWidth(Working<Length> width, Working<int> strips, Working<Length> lostPerJoint)
    {
        var step = Length.TicksPerInch / 64;
        var exact = width.Value.Ticks + (lostPerJoint.Value.Ticks * (strips.Value - 1));
        var each = (exact + strips.Value - 1) / strips.Value;
        return Working.Of(
            "Width of each strip, jointed", Length.FromTicks((each + step - 1) / step * step), "({width} + ({strips} − 1) × {joint}) ÷ {strips}", Working.Geometry,
            ("width", width), ("strips", strips), ("joint", lostPerJoint));
    }

    /// <summary>Clamps along the length: a strip of the edge board's width and a caul each side.</summary>
    public static Working<double> Clamps(Working<Length> length, Working<Length> spacing)
    {
        var count = Math.Max(2, (length.Value.Ticks + spacing.Value.Ticks - 1) / spacing.Value.Ticks);
        return Working.Of("Clamps", count, QuantityKind.Bare, 0, "{length} ÷ {spacing}, up to a whole one, two at least", Spread, ("length", length), ("spacing", spacing));
    }

    /// <summary>Clamp spacing.</summary>
    public static Working<Length> Spacing(Working<Length> strip, Working<Length> caul) =>
        Working.Of("Clamp spacing", (strip.Value + caul.Value) * 2, "2 × ({strip} + {caul})", Spread, ("strip", strip), ("caul", caul));

    /// <summary>Force of each clamp, newtons.</summary>
    /// <param name="pressure">MPa.</param>
    /// <param name="length">Of the joint.</param>
    /// <param name="thickness">Of the panel.</param>
    /// <param name="clamps">How many share it.</param>
    public static Working<double> Force(Working<double> pressure, Working<Length> length, Working<Length> thickness, Working<double> clamps)
    {
        var area = (double)length.Value.ToMillimetres() * (double)thickness.Value.ToMillimetres();
        return Working.Of(
            "Force of each clamp", pressure.Value * area / clamps.Value, QuantityKind.Force, 0, "{pressure} × {length} × {thickness} ÷ {clamps}", PressureSource,
            ("pressure", pressure), ("length", length), ("thickness", thickness), ("clamps", clamps));
    }
}
