using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>
/// A groove in the middle of an edge. At every setting the piece is pushed once with each face to the fence, so the groove lies
/// in the middle whatever the fence is off, and only its width changes, by twice as much.
/// </summary>
/// <param name="Fence">From the fence to the near side of the blade, first setting: the wall that stays. Rounded up to the
/// tick.</param>
/// <param name="Settings">All settings, the first one first; after the last one nothing stands in the middle.</param>
/// <param name="Passes">How often the piece is pushed: once where the blade is as wide as the groove, else twice at each
/// setting.</param>
/// <param name="Reached">Width of the groove after them.</param>
/// <param name="Cheek">Taken off each face to leave the tongue, rounded up to the tick.</param>
/// <param name="Tongue">Thickness of the tongue that fits.</param>
public sealed record CentredGroove(
    Working<Length> Fence,
    Working<ImmutableArray<Length>> Settings,
    Working<double> Passes,
    Working<Length> Reached,
    Working<Length> Cheek,
    Working<Length> Tongue
)
{
    /// <summary>Width by thickness.</summary>
    public static readonly SourceNote Third = new(
        "Noyes, Handwork in Wood, 1910, no. 42: a third of the thickness, to the nearest bit (trade tip)",
        Certainty.Read
    );

    /// <summary>Depth.</summary>
    public static readonly SourceNote AsDeepAsWide = new(
        "Noyes, Handwork in Wood, 1910, no. 42: about as deep as wide",
        Certainty.Read
    );

    /// <summary>A panel's groove.</summary>
    public static readonly SourceNote Panel = new(
        "Common practice: the panel's measured thickness plus a little clearance",
        Certainty.CommonPractice
    );

    private static readonly SourceNote Fit = new("Geometry; the clearance is common practice", Certainty.CommonPractice);

    /// <summary>The width that suits a piece where nothing else decides: a third of it, to the nearest bit (1/16 in or 1
    /// mm).</summary>
    /// <param name="stock">Thickness of the piece.</param>
    /// <param name="unit">Which bits are at hand.</param>
    public static Working<Length> Usual(Working<Length> stock, LengthUnit unit)
    {
        var bit = unit == LengthUnit.Inch ? Length.TicksPerInch / 16 : Length.TicksPerMillimetre;
        var bits = Math.Max(1, ((stock.Value.Ticks * 2) + (bit * 3)) / (bit * 6));
        return Working.Of(
            "Groove width",
            Length.FromTicks(bits * bit),
            "{stock} ÷ 3, to the nearest bit",
            Third,
            ("stock", stock)
        );
    }

    /// <summary>The width that a panel slides in.</summary>
    /// <param name="panel">Its measured thickness.</param>
    /// <param name="room">Room for it.</param>
    public static Working<Length> For(Working<Length> panel, Working<Length> room) =>
        Working.Of("Groove width", panel.Value + room.Value, "{panel} + {room}", Panel, ("panel", panel), ("room", room));

    /// <summary>A groove of a width with a blade.</summary>
    /// <param name="stock">Thickness of the piece, more than the width.</param>
    /// <param name="blade">What the blade or bit cuts, at most the width.</param>
    /// <param name="width">Wanted.</param>
    /// <param name="fit">How much thinner the tongue is than the groove.</param>
    public static CentredGroove Of(Working<Length> stock, Working<Length> blade, Working<Length> width, Working<Length> fit)
    {
        var first = HalfUp(stock.Value - width.Value);
        var fence = Working.Of(
            "First fence setting",
            first,
            new SettingFigure(first),
            "({stock} − {groove}) ÷ 2",
            Working.Geometry,
            ("stock", stock),
            ("groove", width)
        );
        var settings = Fences(stock, blade, width, fence);
        var off = HalfUp(stock.Value - width.Value + fit.Value);
        var cheek = Working.Of(
            "Taken off each face",
            off,
            new SettingFigure(off),
            "({stock} − ({groove} − {fit})) ÷ 2",
            Fit,
            ("stock", stock),
            ("groove", width),
            ("fit", fit)
        );
        var left = stock.Value - (cheek.Value * 2);
        var tongue = Working.Of(
            "Tongue thickness",
            left,
            new FineLengthFigure(left),
            "{stock} − 2 × {cheek}",
            Fit,
            ("stock", stock),
            ("cheek", cheek)
        );
        var once = blade.Value == width.Value;
        return new(
            fence,
            settings,
            once ? OnePass(blade, width) : TwoEach(settings.Value.Length),
            once ? Filled(blade) : Reach(stock, fence),
            cheek,
            tongue
        );
    }

    private static Working<ImmutableArray<Length>> Fences(
        Working<Length> stock,
        Working<Length> blade,
        Working<Length> width,
        Working<Length> fence
    )
    {
        var settings = Steps(stock.Value, blade.Value, width.Value, fence.Value);
        return Working.Of(
            "Fence settings",
            settings,
            new LengthsFigure(settings) { AreSettings = true },
            "from {fence} until the cuts meet in the middle",
            Working.Geometry,
            ("fence", fence)
        );
    }

    private static Working<double> OnePass(Working<Length> blade, Working<Length> width) =>
        Working.Of(
            "Passes",
            1,
            QuantityKind.Bare,
            0,
            "{blade} is as wide as {groove}",
            Working.Geometry,
            ("blade", blade),
            ("groove", width)
        );

    private static Working<double> TwoEach(int settings) =>
        Working.Of(
            "Passes",
            2 * settings,
            QuantityKind.Bare,
            0,
            "2 × {settings}",
            Working.Geometry,
            ("settings", Working.Given("Number of settings", settings, QuantityKind.Bare, 0))
        );

    private static Working<Length> Filled(Working<Length> blade) =>
        Working.Of("Width reached", blade.Value, "{blade}", Working.Geometry, ("blade", blade));

    private static Working<Length> Reach(Working<Length> stock, Working<Length> fence) =>
        Working.Of(
            "Width reached",
            stock.Value - (fence.Value * 2),
            "{stock} − 2 × {fence}",
            Working.Geometry,
            ("stock", stock),
            ("fence", fence)
        );

    // Evenly from the first setting to the one whose cut ends in the middle, no step wider than the blade.
    private static ImmutableArray<Length> Steps(Length stock, Length blade, Length width, Length fence)
    {
        var count = (int)((width.Ticks + (blade.Ticks * 2) - 1) / (blade.Ticks * 2));
        if (count == 1)
            return [fence];
        var way = HalfUp(stock - (blade * 2) - (fence * 2)).Ticks;
        return [.. Enumerable.Range(0, count).Select(i => fence + Length.FromTicks(((way * i) + count - 2) / (count - 1)))];
    }

    private static Length HalfUp(Length length) => Length.FromTicks((length.Ticks + 1) / 2);
}
