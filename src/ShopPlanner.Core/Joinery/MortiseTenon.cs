using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.TradeBooks;

namespace ShopPlanner.Core.Joinery;

/// <summary>How a tenon sits in its mortise.</summary>
internal enum TenonKind
{
    /// <summary>The mortise stops inside the piece.</summary>
    Blind,

    /// <summary>The tenon goes all the way.</summary>
    Through,

    /// <summary>Blind, with a short step that fills the groove at the end of the piece.</summary>
    Haunched,
}

/// <summary>Sizes of mortises and tenons.</summary>
internal static class MortiseTenon
{
    /// <summary>The thickness of a tenon.</summary>
    public static readonly SourceNote Thirds = new(
        $"{Handwork}, ch. VII, no. 42: a tenon a third of the frame's thickness; to the nearest chisel or bit",
        Certainty.Read
    );

    /// <summary>How deep a mortise is.</summary>
    public static readonly SourceNote Deep = new(
        "Training-school rules: a mortise three to five times as deep as it is wide, the tenon 1/8 in shorter",
        Certainty.Read
    );

    /// <summary>How long a through tenon is.</summary>
    public static readonly SourceNote AllTheWay = new(
        $"{Handwork}, ch. VII, no. 31: at least as long as the piece is thick; 1/16 in more to trim is common practice",
        Certainty.CommonPractice
    );

    /// <summary>How wide a haunched tenon is in a grooved frame.</summary>
    public static readonly SourceNote Haunch = new(
        $"{Handwork}, ch. VII, no. 42: half the width of the rail, minus the groove",
        Certainty.Read
    );

    /// <summary>How wide a haunched tenon is without a groove.</summary>
    public static readonly SourceNote PlainHaunch = new(
        "Common practice: two thirds of the rail, the haunch as long as the tenon is thick",
        Certainty.CommonPractice
    );

    /// <summary>Wood that a blind mortise leaves at its bottom.</summary>
    public static readonly Length Bottom = Length.FromInches(0.25m);

    /// <summary>What a mortise is deeper than its tenon is long.</summary>
    public static readonly Length GlueRoom = Length.FromInches(0.125m);

    private static readonly Length Trim = Length.FromInches(0.0625m);

    private static readonly ImmutableArray<Length> InchCutters =
    [
        .. new[] { 2, 3, 4, 5, 6, 8, 10, 12, 16 }.Select(n => Length.FromInches(n / 16m)),
    ];

    private static readonly ImmutableArray<Length> MetricCutters =
    [
        .. new[] { 3, 4, 5, 6, 8, 10, 12, 15, 16, 18, 20, 25 }.Select(n => Length.FromMillimetres(n)),
    ];

    /// <summary>The chisel or bit nearest to a third of the stock; the thinner one where two are as near.</summary>
    public static Working<Length> Thickness(Working<Length> stock, LengthUnit unit)
    {
        var sold = unit == LengthUnit.Inch ? InchCutters : MetricCutters;
        var nearest = sold.MinBy(one => Math.Abs((one.Ticks * 3) - stock.Value.Ticks));
        return Working.Of("Tenon thickness", nearest, "{stock} ÷ 3, to the nearest chisel or bit", Thirds, ("stock", stock));
    }

    /// <summary>The wood left on each side of something centered.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="stock">All of it.</param>
    /// <param name="thickness">What is in the middle.</param>
    public static Working<Length> Beside(string name, Working<Length> stock, Working<Length> thickness) =>
        Working.Of(
            name,
            Length.FromTicks((stock.Value - thickness.Value).Ticks / 2),
            "({stock} − {thickness}) ÷ 2",
            Working.Geometry,
            ("stock", stock),
            ("thickness", thickness)
        );

    /// <summary>Depth of a blind mortise by its width, within the piece; zero or less where the piece is too thin.</summary>
    public static Working<Length> Depth(Working<Length> thickness, Working<Length> into)
    {
        var (usual, most) = (thickness.Value * 4, into.Value - Bottom);
        return usual <= most
            ? Working.Of("Mortise depth", usual, "4 × {thickness}", Deep, ("thickness", thickness))
            : Working.Of("Mortise depth", most, "{into} − 1/4 in", Deep, ("into", into));
    }

    /// <summary>Depth of a mortise for a tenon whose length is chosen.</summary>
    public static Working<Length> DepthFor(Working<Length> length) =>
        Working.Of("Mortise depth", length.Value + GlueRoom, "{length} + 1/8 in", Deep, ("length", length));

    /// <summary>Length of a blind tenon.</summary>
    public static Working<Length> Blind(Working<Length> depth) =>
        Working.Of("Tenon length", depth.Value - GlueRoom, "{depth} − 1/8 in", Deep, ("depth", depth));

    /// <summary>Length of a through tenon, to be trimmed flush.</summary>
    public static Working<Length> Through(Working<Length> into) =>
        Working.Of("Tenon length", into.Value + Trim, "{into} + 1/16 in to trim flush", AllTheWay, ("into", into));

    /// <summary>Width of a tenon with a shoulder at each edge.</summary>
    public static Working<Length> Width(Working<Length> rail, Working<Length> edge) =>
        Working.Of(
            "Tenon width",
            rail.Value - (edge.Value * 2),
            "{rail} − 2 × {edge}",
            Working.Geometry,
            ("rail", rail),
            ("edge", edge)
        );

    /// <summary>Width of a haunched tenon: half of the rail less the groove, or two thirds of it where there is no
    /// groove.</summary>
    public static Working<Length> HaunchedWidth(Working<Length> rail, Working<Length> groove, LengthUnit unit) =>
        groove.Value.IsPositive
            ? Working.Of(
                "Tenon width",
                Length.FromTicks(rail.Value.Ticks / 2) - groove.Value,
                "{rail} ÷ 2 − {groove}",
                Haunch,
                ("rail", rail),
                ("groove", groove)
            )
            : Working.Of(
                "Tenon width",
                RuleMarks.Down(Length.FromTicks(rail.Value.Ticks * 2 / 3), unit),
                "2 ÷ 3 × {rail}, to the mark below",
                PlainHaunch,
                ("rail", rail)
            );
}
