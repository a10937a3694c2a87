using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>How the strips of a panel meet.</summary>
public enum EdgeJoint
{
    /// <summary>Edge against edge.</summary>
    Butt,

    /// <summary>A tongue of one strip in a groove of the next: each joint takes the tongue's length of width.</summary>
    Tongue,

    /// <summary>A loose strip in a groove of each.</summary>
    Spline,
}

/// <summary>A wide panel glued up from strips.</summary>
public static class GlueUp
{
    /// <summary>Allowance.</summary>
    public static readonly SourceNote Jointing = new(
        "Common practice: about 1/16 in for each edge that is jointed",
        Certainty.CommonPractice
    );

    /// <summary>Clamps.</summary>
    public static readonly SourceNote Spread = new(
        "Geometry, common practice: a clamp's pressure spreads at 45°, so clamps go two widths apart",
        Certainty.CommonPractice
    );

    /// <summary>Glue.</summary>
    public static readonly SourceNote GlueRate = new(
        "The label's spread rate; 250 ft²/gal is common practice",
        Certainty.CommonPractice
    );

    /// <summary>The fewest strips that reach a width.</summary>
    /// <param name="width">Of the panel, with what is trimmed.</param>
    /// <param name="board">Usable width of one board, jointed; more than the joint takes.</param>
    /// <param name="lostPerJoint">Width that each joint takes: a tongue; nothing for a butt or a spline.</param>
    public static Working<int> Strips(Working<Length> width, Working<Length> board, Working<Length> lostPerJoint)
    {
        var (wide, each) = (width.Value - lostPerJoint.Value, board.Value - lostPerJoint.Value);
        var count = (int)Math.Max(1, (wide.Ticks + each.Ticks - 1) / each.Ticks);
        return Working.Of(
            "Strips",
            count,
            new QuantityFigure(count, QuantityKind.Bare, 0),
            "({width} − {joint}) ÷ ({board} − {joint}), rounded up",
            Working.Geometry,
            ("width", width),
            ("joint", lostPerJoint),
            ("board", board)
        );
    }

    /// <summary>Width of each strip after jointing, rounded up so that it can be set on a rule.</summary>
    /// <param name="width">Of the panel, with what is trimmed.</param>
    /// <param name="strips">How many.</param>
    /// <param name="lostPerJoint">Width that each joint takes.</param>
    /// <param name="unit">Rounded to 1/64 in or to 0.1 mm.</param>
    /// <param name="board">Usable width of one board, jointed, which is never passed; null for no limit.</param>
    public static Working<Length> StripWidth(
        Working<Length> width,
        Working<int> strips,
        Working<Length> lostPerJoint,
        LengthUnit unit = LengthUnit.Inch,
        Length? board = null
    )
    {
        var step =
            unit == LengthUnit.Inch ? Length.TicksPerInch / LengthFormat.FinestDenominator : Length.TicksPerMillimetre / 10;
        var exact = Up(width.Value.Ticks + (lostPerJoint.Value.Ticks * (strips.Value - 1)), strips.Value);
        var set = Length.FromTicks(Up(exact, step) * step);
        return Working.Of(
            "Width of each jointed strip",
            board is { } limit ? Length.Min(set, limit) : set,
            "({width} + ({strips} − 1) × {joint}) ÷ {strips}, rounded up to the next mark",
            Working.Geometry,
            ("width", width),
            ("strips", strips),
            ("joint", lostPerJoint)
        );
    }

    /// <summary>Width of the panel out of the clamps.</summary>
    /// <param name="strip">Width of each strip, jointed.</param>
    /// <param name="strips">How many.</param>
    /// <param name="lostPerJoint">Width that each joint takes.</param>
    public static Working<Length> Glued(Working<Length> strip, Working<int> strips, Working<Length> lostPerJoint) =>
        Working.Of(
            "Width as glued",
            (strip.Value * strips.Value) - (lostPerJoint.Value * (strips.Value - 1)),
            "{strips} × {strip} − ({strips} − 1) × {joint}",
            Working.Geometry,
            ("strips", strips),
            ("strip", strip),
            ("joint", lostPerJoint)
        );

    /// <summary>Clamp spacing: twice the distance from the clamp's pad to the glue line.</summary>
    /// <param name="strip">Width of the strip at the edge.</param>
    /// <param name="caul">Width of the caul between pad and strip.</param>
    public static Working<Length> Spacing(Working<Length> strip, Working<Length> caul) =>
        Working.Of(
            "Widest clamp spacing",
            (strip.Value + caul.Value) * 2,
            "2 × ({strip} + {caul})",
            Spread,
            ("strip", strip),
            ("caul", caul)
        );

    /// <summary>Clamps along the length: each covers a spacing; two at least, so that nothing swings.</summary>
    /// <param name="length">Of the joint.</param>
    /// <param name="spacing">At most.</param>
    public static Working<double> Clamps(Working<Length> length, Working<Length> spacing)
    {
        var count = Math.Max(2, Up(length.Value.Ticks, spacing.Value.Ticks));
        return Working.Of(
            "Clamps",
            count,
            QuantityKind.Bare,
            0,
            "{length} ÷ {spacing}, rounded up, at least 2",
            Spread,
            ("length", length),
            ("spacing", spacing)
        );
    }

    /// <summary>Clamps that come to a force.</summary>
    /// <param name="total">Force on the joint, newtons.</param>
    /// <param name="each">Force of one clamp, newtons, more than zero.</param>
    public static Working<double> ClampsByForce(Working<double> total, Working<double> each) =>
        Working.Of(
            "Clamps",
            Math.Ceiling((total.Value / each.Value) - 1e-9),
            QuantityKind.Bare,
            0,
            "{total} ÷ {each}, rounded up",
            Working.Geometry,
            ("total", total),
            ("each", each)
        );

    /// <summary>Where the clamps stand, from one end: each in the middle of its share of the length.</summary>
    /// <param name="length">Of the joint.</param>
    /// <param name="clamps">How many, one or more.</param>
    public static Working<ImmutableArray<Length>> Places(Working<Length> length, Working<double> clamps)
    {
        var count = (int)clamps.Value;
        ImmutableArray<Length> places =
        [
            .. Enumerable.Range(0, count).Select(i => Length.FromTicks(length.Value.Ticks * ((2 * i) + 1) / (2 * count))),
        ];
        return Working.Of(
            "Clamp positions from one end",
            places,
            new LengthsFigure(places, 16),
            "{length} ÷ {clamps}, a clamp in the middle of each share",
            Spread,
            ("clamps", clamps),
            ("length", length)
        );
    }

    /// <summary>Force on one glue line, which all its clamps share, newtons.</summary>
    /// <param name="pressure">MPa.</param>
    /// <param name="length">Of the joint.</param>
    /// <param name="thickness">Of the panel.</param>
    public static Working<double> Total(Working<double> pressure, Working<Length> length, Working<Length> thickness) =>
        Working.Of(
            "Force on the joint",
            pressure.Value * (double)length.Value.ToMillimetres() * (double)thickness.Value.ToMillimetres(),
            QuantityKind.Force,
            0,
            "{pressure} × {length} × {thickness}",
            pressure.Source,
            ("pressure", pressure),
            ("length", length),
            ("thickness", thickness)
        );

    /// <summary>Force of each clamp, newtons.</summary>
    /// <param name="pressure">MPa.</param>
    /// <param name="length">Of the joint.</param>
    /// <param name="thickness">Of the panel.</param>
    /// <param name="clamps">How many share it.</param>
    public static Working<double> Force(
        Working<double> pressure,
        Working<Length> length,
        Working<Length> thickness,
        Working<double> clamps
    )
    {
        var total = Total(pressure, length, thickness);
        return Working.Of(
            "Force of each clamp",
            total.Value / clamps.Value,
            QuantityKind.Force,
            0,
            "{total} ÷ {clamps}",
            pressure.Source,
            ("total", total),
            ("clamps", clamps)
        );
    }

    /// <summary>Glued area of all joints, m²: faces that meet, tongues and splines counted.</summary>
    /// <param name="strips">How many.</param>
    /// <param name="length">Of the joints.</param>
    /// <param name="thickness">Of the panel.</param>
    /// <param name="joint">How they meet.</param>
    /// <param name="tongue">Length of the tongue, or of the spline in each strip.</param>
    public static Working<double> GluedArea(
        Working<int> strips,
        Working<Length> length,
        Working<Length> thickness,
        EdgeJoint joint,
        Working<Length> tongue
    )
    {
        var (sides, template) = joint switch
        {
            EdgeJoint.Tongue => (2, "({strips} − 1) × {length} × ({thickness} + 2 × {tongue})"),
            EdgeJoint.Spline => (4, "({strips} − 1) × {length} × ({thickness} + 4 × {tongue})"),
            _ => (0, "({strips} − 1) × {length} × {thickness}"),
        };
        var area = Area.Of(length.Value, thickness.Value + (tongue.Value * sides)) * (strips.Value - 1);
        return Working.Of(
            "Glued area",
            (double)area.ToSquareMetres(),
            QuantityKind.Area,
            2,
            template,
            Working.Geometry,
            ("strips", strips),
            ("length", length),
            ("thickness", thickness),
            ("tongue", tongue)
        );
    }

    /// <summary>Glue wanted, millilitres.</summary>
    /// <param name="area">Glued, m².</param>
    /// <param name="spread">The label's spread rate, m²/L.</param>
    public static Working<double> Glue(Working<double> area, Working<double> spread) =>
        Working.Of(
            "Glue",
            area.Value / spread.Value * 1000,
            QuantityKind.SmallLiquid,
            1,
            "{area} ÷ {spread}",
            GlueRate,
            ("area", area),
            ("spread", spread)
        );

    private static long Up(long a, long b) => (a + b - 1) / b;
}
