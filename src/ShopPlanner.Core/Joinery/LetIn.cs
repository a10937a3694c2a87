using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.TradeBooks;

namespace ShopPlanner.Core.Joinery;

/// <summary>Joints in which one piece is let into another.</summary>
internal enum LetInJoint
{
    /// <summary>A trench across the piece.</summary>
    Dado,

    /// <summary>A step along its end or edge.</summary>
    Rabbet,

    /// <summary>Half of each piece, in the middle.</summary>
    CrossLap,

    /// <summary>Half of each piece, at the end.</summary>
    EndLap,
}

/// <summary>Depths and widths of dadoes, rabbets and laps.</summary>
internal static class LetIn
{
    /// <summary>Depth of dadoes.</summary>
    public static readonly SourceNote DadoRule = new(
        "Training-school rules: a quarter of the thickness deep, never over a third",
        Certainty.Read
    );

    /// <summary>Depth of rabbets.</summary>
    public static readonly SourceNote RabbetRule = new("Common practice: half of the thickness deep", Certainty.CommonPractice);

    /// <summary>Depth of laps, and how long an end lap is.</summary>
    public static readonly SourceNote LapRule = new(
        $"{Handwork}, ch. VII, nos. 14 and 16: half of the thickness; end laps 1/16 in long, to trim",
        Certainty.Read
    );

    private static readonly Length Trim = Length.FromInches(0.0625m);

    /// <summary>How deep the joint is cut.</summary>
    public static Working<Length> Depth(LetInJoint joint, Working<Length> into)
    {
        var (parts, template, source) = joint switch
        {
            LetInJoint.Dado => (4, "{into} ÷ 4", DadoRule),
            LetInJoint.Rabbet => (2, "{into} ÷ 2", RabbetRule),
            _ => (2, "{into} ÷ 2", LapRule),
        };
        return Working.Of("Depth of the cut", Length.FromTicks(into.Value.Ticks / parts), template, source, ("into", into));
    }

    /// <summary>How wide the joint is cut: as wide as the piece that goes in, and what it fits loosely by.</summary>
    public static Working<Length> Width(LetInJoint joint, Working<Length> piece, Working<Length> fit) =>
        joint == LetInJoint.EndLap
            ? Working.Of("Width of the cut", piece.Value + Trim, "{piece} + 1/16 in to trim flush", LapRule, ("piece", piece))
            : Working.Of(
                "Width of the cut",
                piece.Value + fit.Value,
                "{piece} + {fit}",
                Working.Geometry,
                ("piece", piece),
                ("fit", fit)
            );

    /// <summary>How often the cutter runs.</summary>
    public static Working<double> Passes(Working<Length> width, Working<Length> cutter)
    {
        var passes = ((width.Value.Ticks - 1) / cutter.Value.Ticks) + 1;
        return Working.Of(
            "Passes",
            passes,
            QuantityKind.Bare,
            0,
            "{width} ÷ {cutter}, rounded up",
            Working.Geometry,
            ("width", width),
            ("cutter", cutter)
        );
    }

    /// <summary>How far the fence or stop moves from the first pass to the last.</summary>
    public static Working<Length> Shift(Working<Length> width, Working<Length> cutter) =>
        Working.Of(
            "Fence moves, first pass to last",
            width.Value - cutter.Value,
            "{width} − {cutter}",
            Working.Geometry,
            ("width", width),
            ("cutter", cutter)
        );

    /// <summary>What a cutter that is too wide leaves loose.</summary>
    public static Working<Length> Play(Working<Length> cutter, Working<Length> piece)
    {
        var play = cutter.Value - piece.Value;
        return Working.Of(
            "Play with this cutter",
            play,
            new FineLengthFigure(play),
            "{cutter} − {piece}",
            Working.Geometry,
            ("cutter", cutter),
            ("piece", piece)
        );
    }

    /// <summary>Length of a shelf that is let into both sides.</summary>
    public static Working<Length> Shelf(Working<Length> inside, Working<Length> depth) =>
        Working.Of(
            "Shelf length",
            inside.Value + (depth.Value * 2),
            "{inside} + 2 × {depth}",
            Working.Geometry,
            ("inside", inside),
            ("depth", depth)
        );
}
