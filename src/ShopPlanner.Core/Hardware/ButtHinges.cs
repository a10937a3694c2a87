using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.TradeBooks;

namespace ShopPlanner.Core.Hardware;

/// <summary>Butt hinges: how many, how long, where, and how deep they are let in.</summary>
internal static class ButtHinges
{
    /// <summary>How deep a leaf is let in.</summary>
    public static readonly SourceNote GainRule = new(
        $"{Handwork}, Hinging: half of the knuckle's thickness in each part; less where a gap is to stay",
        Certainty.Read
    );

    /// <summary>How many.</summary>
    public static readonly SourceNote CountRule = new(
        "Trade pages: one for each 30 in of height; three over 7 ft high or 4 ft wide (Radford's Cyclopedia of Construction)",
        Certainty.Quoted
    );

    /// <summary>How long, for doors of houses.</summary>
    public static readonly SourceNote DoorSizes = new("Trade pages, by thickness and width of the door", Certainty.Quoted);

    /// <summary>How long, for doors of furniture.</summary>
    public static readonly SourceNote FurnitureSizes = new(
        "Common practice: 2 to 3 in for furniture doors, shorter on low ones",
        Certainty.CommonPractice
    );

    /// <summary>Where, on doors of furniture.</summary>
    public static readonly SourceNote FurniturePlaces = new($"{Handwork}: about one hinge length from the end", Certainty.Read);

    /// <summary>Where, on doors of houses.</summary>
    public static readonly SourceNote HousePlaces = new(
        "Trade pages: top hinge 5 in below the jamb's rabbet, bottom hinge 10 in above the floor, third one centered",
        Certainty.Quoted
    );

    /// <summary>How wide a leaf may be.</summary>
    public static readonly SourceNote LeafRule = new(
        "Common practice: a leaf no wider than the door's edge less 1/8 in",
        Certainty.CommonPractice
    );

    private static readonly Length HouseThickness = Length.FromInches(1.375m);
    private static readonly Length HouseHeight = Length.FromInches(60);
    private static readonly Length ThickDoor = Length.FromInches(1.75m);
    private static readonly Length PerHinge = Length.FromInches(30);
    private static readonly Length ThreeFromHeight = Length.FromFeet(7);
    private static readonly Length ThreeFromWidth = Length.FromFeet(4);
    private static readonly Length HouseTop = Length.FromInches(5);
    private static readonly Length HouseBottom = Length.FromInches(10);
    private static readonly Length LeafLess = Length.FromInches(0.125m);

    private static readonly ImmutableArray<Length> ShortOnes = [.. new[] { 1m, 1.5m, 2, 2.5m, 3 }.Select(Length.FromInches)];

    /// <summary>Whether a door is hung as doors of houses are: thick and tall.</summary>
    public static bool IsHouse(Length height, Length thickness) => thickness >= HouseThickness && height >= HouseHeight;

    /// <summary>How many hinges.</summary>
    public static Working<int> Count(Working<Length> height, Working<Length> width)
    {
        var byHeight = (int)Math.Max(2, ((height.Value - Length.FromTicks(1)) / PerHinge) + 1);
        var isLarge = height.Value > ThreeFromHeight || width.Value > ThreeFromWidth;
        var count = isLarge ? Math.Max(3, byHeight) : byHeight;
        return Working.Of(
            "Hinges",
            count,
            new QuantityFigure(count, QuantityKind.Bare, 0),
            "{height} ÷ 30 in, rounded up, at least 2; at least 3 over 7 ft, or over 4 ft of {width}",
            CountRule,
            ("height", height),
            ("width", width)
        );
    }

    /// <summary>Length of a hinge.</summary>
    public static Working<Length> Size(Working<Length> height, Working<Length> width, Working<Length> thickness) =>
        IsHouse(height.Value, thickness.Value) ? House(width, thickness) : Furniture(height);

    /// <summary>Depth of the recess for each leaf.</summary>
    public static Working<Length> Gain(Working<Length> knuckle, Working<Length> gap)
    {
        var gain = Length.FromTicks((knuckle.Value - gap.Value).Ticks / 2);
        return Working.Of(
            "Recess for each leaf, deep",
            gain,
            new FineLengthFigure(gain),
            "({knuckle} − {gap}) ÷ 2",
            GainRule,
            ("knuckle", knuckle),
            ("gap", gap)
        );
    }

    /// <summary>The widest leaf.</summary>
    public static Working<Length> Leaf(Working<Length> thickness) =>
        Working.Of("Leaf, at most wide", thickness.Value - LeafLess, "{thickness} − 1/8 in", LeafRule, ("thickness", thickness));

    /// <summary>Upper ends of the hinges from the top of the door.</summary>
    public static Working<ImmutableArray<Length>> Places(
        Working<Length> height,
        Working<Length> size,
        Working<int> count,
        bool isHouse
    )
    {
        var (first, last) = Ends(height.Value, size.Value, isHouse);
        var span = (last - first).Ticks;
        ImmutableArray<Length> places =
        [
            .. Enumerable.Range(0, count.Value).Select(i => first + Length.FromTicks(span * i / (count.Value - 1))),
        ];
        return Working.Of(
            "Upper ends of the hinges, from the top",
            places,
            new LengthsFigure(places),
            isHouse
                ? "5 in from the top, 10 in from the bottom of {height}, {count} of {size} equally spaced"
                : "one hinge of {size} from each end of {height}, {count} equally spaced",
            isHouse ? HousePlaces : FurniturePlaces,
            ("size", size),
            ("height", height),
            ("count", count)
        );
    }

    /// <summary>Whether so low a door takes hinges of this length without crowding.</summary>
    public static bool Fits(Length height, Length size, bool isHouse)
    {
        var (first, last) = Ends(height, size, isHouse);
        return last >= first + (size * 2);
    }

    /// <summary>How far the inner corner of the swinging edge must clear the frame: the door's diagonal less its width.</summary>
    public static Working<Length> Swing(Working<Length> width, Working<Length> thickness)
    {
        var (w, t) = ((double)width.Value.Ticks, (double)thickness.Value.Ticks);
        var over = Length.FromTicks((long)Math.Ceiling(Math.Sqrt((w * w) + (t * t)) - w));
        return Working.Of(
            "Gap the swinging edge needs",
            over,
            new FineLengthFigure(over),
            "√({width}² + {thickness}²) − {width}",
            Working.Geometry,
            ("width", width),
            ("thickness", thickness)
        );
    }

    private static (Length First, Length Last) Ends(Length height, Length size, bool isHouse) =>
        isHouse ? (HouseTop, height - HouseBottom - size) : (size, height - (size * 2));

    private static Working<Length> Furniture(Working<Length> height)
    {
        var most = height.Value.ToInches() switch
        {
            < 24 => 2m,
            < 36 => 2.5m,
            _ => 3,
        };
        var size = ShortOnes.Last(one => one == ShortOnes[0] || (one.ToInches() <= most && Fits(height.Value, one, false)));
        return Working.Of("Hinge length", size, "by {height}", FurnitureSizes, ("height", height));
    }

    private static Working<Length> House(Working<Length> width, Working<Length> thickness)
    {
        var (wide, isThick) = (width.Value.ToInches(), thickness.Value >= ThickDoor);
        var size = (isThick, wide) switch
        {
            (false, <= 32) => 3.5m,
            (false, <= 36) => 4,
            (_, <= 36) => 4.5m,
            (_, <= 48) => 5,
            _ => 6,
        };
        return Working.Of(
            "Hinge length",
            Length.FromInches(size),
            "by {width} and {thickness}",
            DoorSizes,
            ("width", width),
            ("thickness", thickness)
        ) with
        {
            OutsideRange =
                !isThick && wide > 36 ? "the table ends at 36 in wide for doors this thin: the next thicker row is used" : null,
        };
    }
}
