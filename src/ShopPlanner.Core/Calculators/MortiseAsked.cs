using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a mortise and tenon.</summary>
internal sealed record MortiseAsked(
    LengthUnit Unit,
    Working<Length> Stock,
    Working<Length> Rail,
    Working<Length> Into,
    Working<Length> Face,
    TenonKind Kind,
    Working<Length> Groove,
    Working<Length> Edge,
    Working<Length> Tenon,
    Working<Length>? Length,
    Working<Length>? Between
) : Question(Unit)
{
    /// <summary>Whether the mortise stops inside the piece.</summary>
    public bool IsBlind => Kind != TenonKind.Through;

    public static MortiseAsked Read(FormReader reader)
    {
        var stock = reader.Given("Rail thickness", "thickness");
        return new(
            reader.Unit,
            stock,
            reader.Given("Rail width", "width"),
            reader.Given("Mortised piece", "into"),
            reader.MaybeGiven("Thickness of the mortised piece", "face")
                ?? Working.Looked("Thickness of the mortised piece", stock.Value, stock.Figure, Working.AsGiven),
            Enum.Parse<TenonKind>(reader.Choice("kind"), true),
            reader.Given("Groove depth", "groove"),
            reader.Given("Shoulder at each edge", "edge"),
            reader.MaybeGiven("Tenon thickness", "cutter") ?? MortiseTenon.Thickness(stock, reader.Unit),
            reader.MaybeGiven("Tenon length", "length"),
            reader.MaybeGiven("Rail between the shoulders", "between")
        );
    }
}

/// <summary>A mortise and tenon worked out.</summary>
/// <param name="Asked">What it was worked out from.</param>
/// <param name="Width">Of the tenon.</param>
/// <param name="Depth">Of the mortise.</param>
/// <param name="Length">Of the tenon.</param>
internal sealed record MortiseMade(MortiseAsked Asked, Working<Length> Width, Working<Length> Depth, Working<Length> Length)
{
    /// <summary>Of the tenon.</summary>
    public Working<Length> Thickness => Asked.Tenon;

    /// <summary>Wood left beside a mortise in the middle of its piece.</summary>
    public Working<Length> Wall { get; } = MortiseTenon.Beside("Wood beside the mortise, each side", Asked.Face, Asked.Tenon);

    /// <summary>The width of a haunched tenon where half of what the groove leaves is meant.</summary>
    public Length WiderReading => Measures.Length.FromTicks((Asked.Rail.Value - Asked.Groove.Value).Ticks / 2);

    /// <summary>Sizes of tenon and mortise.</summary>
    public IEnumerable<Working?> Sizes =>
        [
            Thickness,
            Length,
            Width,
            MortiseTenon.Beside("Shoulder on each face", Asked.Stock, Asked.Tenon),
            Depth,
            Wall,
            .. Haunch,
            RailLength,
        ];

    /// <summary>Parts for a project.</summary>
    public ImmutableArray<ProposedPart> Proposed =>
        RailLength is { } length ? [new("Rail", length.Value, Asked.Rail.Value, Asked.Stock.Value, 1)] : [];

    private Working<Length>? RailLength =>
        Asked.Between is { } between
            ? Working.Of(
                "Rail length with both tenons",
                between.Value + (Length.Value * 2),
                "{between} + 2 × {length}",
                Working.Geometry,
                ("between", between),
                ("length", Length)
            )
            : null;

    private IEnumerable<Working> Haunch =>
        Asked.Kind != TenonKind.Haunched
            ? []
            :
            [
                Asked.Groove.Value.IsPositive
                    ? Working.Of(
                        "Haunch length",
                        Asked.Groove.Value,
                        "{groove}: it fills the groove",
                        MortiseTenon.Haunch,
                        ("groove", Asked.Groove)
                    )
                    : Working.Of(
                        "Haunch length",
                        Thickness.Value,
                        "{thickness}",
                        MortiseTenon.PlainHaunch,
                        ("thickness", Thickness)
                    ),
                Working.Of(
                    "Haunch width",
                    Asked.Rail.Value - Asked.Groove.Value - Width.Value,
                    "{rail} − {groove} − {width}",
                    Working.Geometry,
                    ("rail", Asked.Rail),
                    ("groove", Asked.Groove),
                    ("width", Width)
                ),
            ];

    public static MortiseMade Of(MortiseAsked asked)
    {
        var width =
            asked.Kind == TenonKind.Haunched
                ? MortiseTenon.HaunchedWidth(asked.Rail, asked.Groove, asked.Unit)
                : MortiseTenon.Width(asked.Rail, asked.Edge);
        if (!asked.IsBlind)
        {
            var depth = Working.Of("Mortise depth", asked.Into.Value, "{into}", Working.Geometry, ("into", asked.Into));
            return new(asked, width, depth, asked.Length ?? MortiseTenon.Through(asked.Into));
        }

        return asked.Length is { } length
            ? new(asked, width, MortiseTenon.DepthFor(length), length)
            : Blind(asked, width, MortiseTenon.Depth(asked.Tenon, asked.Into));
    }

    /// <summary>The length as a person reads it.</summary>
    public string Say(Length length) => Asked.Say(length);

    private static MortiseMade Blind(MortiseAsked asked, Working<Length> width, Working<Length> depth) =>
        new(asked, width, depth, MortiseTenon.Blind(depth));
}
