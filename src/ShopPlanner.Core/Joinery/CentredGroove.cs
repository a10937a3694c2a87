using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>A groove in the middle of an edge, cut by turning the piece end for end between passes: whatever the fence is off, the groove
/// lies in the middle and only its width changes.</summary>
/// <param name="Width">Of the finished groove.</param>
/// <param name="Fence">From the fence to the near side of the blade, first setting.</param>
/// <param name="Middle">Setting of a pass that clears what is left in the middle; null where two passes meet.</param>
/// <param name="Passes">How many times the piece is pushed, both ways round counted.</param>
/// <param name="Tongue">Thickness of the tongue that fits.</param>
/// <param name="Cheek">Taken off each face to leave the tongue.</param>
public sealed record CentredGroove(
    Working<Length> Width, Working<Length> Fence, Working<Length>? Middle, int Passes, Working<Length> Tongue, Working<Length> Cheek)
{
    /// <summary>Width by thickness.</summary>
    public static readonly SourceNote Third = new("Noyes, Handwork in Wood, 1910, no. 42: a third of the thickness", Certainty.Read);

    /// <summary>A panel's groove.</summary>
    public static readonly SourceNote Panel = new("Common practice: the panel's measured thickness and a little room", Certainty.CommonPractice);

    /// <summary>A groove of a width with a blade.</summary>
    /// <param name="stock">Thickness of the piece.</param>
    /// <param name="blade">What the blade or bit cuts, at most the width.</param>
    /// <param name="width">Wanted.</param>
    /// <param name="fit">How much thinner the tongue is than the groove.</param>
    public static CentredGroove Of(Working<Length> stock, Working<Length> blade, Working<Length> width, Working<Length> fit)
    {
        var wall = Length.FromTicks((stock.Value - width.Value).Ticks / 2);
        var fence = Working.Of("Fence to the near side of the blade", wall, "({stock} − {groove}) ÷ 2", Working.Geometry, ("stock", stock), ("groove", width));
        var needsMiddle = width.Value > blade.Value * 2;
        var middle = needsMiddle ? Clear(stock, blade) : null;
        var tongue = Working.Of("Tongue thickness", width.Value - fit.Value, "{groove} − {fit}", Working.Geometry, ("groove", width), ("fit", fit));
        var cheek = Working.Of("Taken off each face", Length.FromTicks((stock.Value - tongue.Value).Ticks / 2), "({stock} − {tongue}) ÷ 2", Working.Geometry, ("stock", stock), ("tongue", tongue));
        var passes = width.Value == blade.Value ? 1 : 2 + (needsMiddle ? 2 * (int)Between(width.Value, blade.Value) : 0);
        return new(width, fence, middle, passes, tongue, cheek);
    }

    // Passes each way between the two outer ones; at least one.
    private static long Between(Length width, Length blade) => Math.Max(1, ((width - (blade * 2)).Ticks + blade.Ticks - 1) / blade.Ticks);

    private static Working<Length> Clear(Working<Length> stock, Working<Length> blade) => Working.Of(
        "Fence for the middle", Length.FromTicks((stock.Value - blade.Value).Ticks / 2), "({stock} − {blade}) ÷ 2, and in between where the groove is wider than three blades", Working.Geometry,
        ("stock", stock), ("blade", blade));
}
