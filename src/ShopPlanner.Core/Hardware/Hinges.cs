using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>How many hinges a door wants, where they sit, and how a cup is bored.</summary>
public static class Hinges
{
    /// <summary>Count by weight, distance rule, cup figures.</summary>
    public static readonly SourceNote MakerSheet = new("A hardware maker's sheet for cup hinges", Certainty.Read);

    /// <summary>Count by height.</summary>
    public static readonly SourceNote HeightPractice = new(
        "Common practice: two to 40 in, three to 60, four to 80, five to 100",
        Certainty.CommonPractice
    );

    /// <summary>Distance of the end hinges.</summary>
    public static readonly SourceNote EndDistance = new(
        "Cup 3 to 4 in from the ends of a door, makers' sheets as quoted",
        Certainty.Quoted
    );

    /// <summary>How near cups may be to each other and to the ends of a door.</summary>
    public static readonly SourceNote RoomPractice = new(
        "Common practice: screws 45 mm apart leave room for one cup on every 2 1/2 in of the edge",
        Certainty.CommonPractice
    );

    /// <summary>The least distance of two cups' centers, and twice the least one of a cup's center from an end.</summary>
    public static readonly Length Room = Length.FromInches(2.5m);

    // From a side's front edge to the far end of the plate: 37 mm to its screws, about 20 mm behind them (common practice; the
    // maker's sheet comes first).
    private static readonly Length PlateReach = Length.FromMillimetres(57);

    private const double PoundsPerStep = 15;
    private const int MostByWeight = 5;

    private static readonly Length FromEnd = Length.FromInches(3.5m);
    private static readonly Length CupRadius = Length.FromMillimetres(17.5m);

    /// <summary>Hinges for a door of this weight: two below 15 lb, one more for each 15 lb after.</summary>
    /// <returns>More than five where no row of the table goes so far.</returns>
    public static Working<int> ByWeight(Working<double> weight)
    {
        var count = 2 + (int)Math.Floor(QuantityKind.Mass.FromMetric(weight.Value, LengthUnit.Inch) / PoundsPerStep);
        return Working.Of(
            "Hinges by weight",
            count,
            Bare(count),
            "2, plus 1 for each 15 lb of {weight}",
            MakerSheet,
            ("weight", weight)
        ) with
        {
            OutsideRange = count > MostByWeight ? "the maker's table ends at 60 lb: ask the maker, or use butt hinges" : null,
        };
    }

    /// <summary>Hinges for a door of this height.</summary>
    public static Working<int> ByHeight(Working<Length> height)
    {
        var count = 2 + (int)Math.Max(0, Math.Ceiling((double)(height.Value.ToInches() - 40) / 20));
        return Working.Of(
            "Hinges by height",
            count,
            Bare(count),
            "2 up to 40 in of {height}, 1 more for each 20 in after",
            HeightPractice,
            ("height", height)
        );
    }

    /// <summary>The larger of both.</summary>
    public static Working<int> Count(Working<Length> height, Working<double> weight)
    {
        var (a, b) = (ByHeight(height), ByWeight(weight));
        var count = Math.Max(a.Value, b.Value);
        return Working.Of(
            "Hinges",
            count,
            Bare(count),
            "the larger of {height} and {weight}",
            MakerSheet.And(HeightPractice),
            ("height", a),
            ("weight", b)
        ) with
        {
            OutsideRange = b.OutsideRange,
        };
    }

    /// <summary>Whether the plate of a cup hinge finds room on what carries a door. A leg is not so deep: it takes butt
    /// hinges.</summary>
    /// <param name="deep">What carries it, from its front edge back.</param>
    /// <param name="inset">How far behind that edge the back of the door lies: its thickness in an opening, nothing on the
    /// face.</param>
    public static bool TakesPlate(Length deep, Length inset) => deep >= PlateReach + inset;

    /// <summary>Whether that many cups find room on a door.</summary>
    /// <param name="height">Of the door.</param>
    /// <param name="count">Two or more.</param>
    public static bool Fit(Length height, int count) => height >= Room * count;

    /// <summary>Centres from the bottom of the door: the end ones 3 1/2 in from the ends, nearer where the door is low, the
    /// others between at equal distances.</summary>
    /// <param name="height">Of the door.</param>
    /// <param name="count">Two or more.</param>
    public static Working<ImmutableArray<Length>> Places(Working<Length> height, Working<int> count)
    {
        var fromEnd = Length.Min(FromEnd, FromEnds(height.Value, count.Value));
        var span = (height.Value - (fromEnd * 2)).Ticks;
        ImmutableArray<Length> places =
        [
            .. Enumerable.Range(0, count.Value).Select(i => fromEnd + Length.FromTicks(span * i / (count.Value - 1))),
        ];
        return Working.Of(
            "Hinge centers from the bottom",
            places,
            new LengthsFigure(places),
            fromEnd == FromEnd
                ? "3 1/2 in from each end of {height}, {count} equally spaced"
                : "{count} on {height}, at least 2 1/2 in apart",
            fromEnd == FromEnd ? EndDistance : RoomPractice,
            ("height", height),
            ("count", count)
        );
    }

    // What cups that stand as near to each other as they may leave at each end; on a door that has no room for them, their
    // share of it.
    private static Length FromEnds(Length height, int count) =>
        Fit(height, count)
            ? Length.FromTicks((height - (Room * (count - 1))).Ticks / 2)
            : Length.FromTicks(height.Ticks / (2 * count));

    /// <summary>Centre of the cup's hole from the edge of the door.</summary>
    /// <param name="edge">Wood left between the edge and the cup, 3 to 8 mm.</param>
    public static Working<Length> CupCentre(Working<Length> edge) =>
        Working.Of(
            "Cup center from the door's edge",
            CupRadius + edge.Value,
            new OwnUnitFigure(CupRadius + edge.Value, LengthUnit.Millimetre),
            "17.5 mm + {edge}",
            MakerSheet,
            ("edge", edge)
        );

    private static QuantityFigure Bare(int count) => new(count, QuantityKind.Bare, 0);
}
