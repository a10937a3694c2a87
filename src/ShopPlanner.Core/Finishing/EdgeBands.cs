using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Finishing;

/// <summary>Edge banding and veneer to buy.</summary>
internal static class EdgeBands
{
    /// <summary>What is left over at each end, and what is spoiled.</summary>
    public static readonly SourceNote Waste = new(
        "Geometry; extra length and waste are common practice",
        Certainty.CommonPractice
    );

    /// <summary>Length of banding.</summary>
    /// <param name="edges">Each edge: how long, and how many alike.</param>
    /// <param name="count">All edges.</param>
    /// <param name="trim">Left over at each edge, both ends together.</param>
    /// <param name="waste">Percent.</param>
    public static Working<Length> Band(Working<Length> edges, Working<double> count, Working<Length> trim, Working<double> waste)
    {
        var net = (edges.Value + (trim.Value * (long)count.Value)).Ticks;
        return Working.Of(
            "Banding",
            Length.FromTicks((long)Math.Ceiling((decimal)net * (100 + (decimal)waste.Value) / 100)),
            "({edges} + {count} × {trim}) × (1 + {waste})",
            Waste,
            ("edges", edges),
            ("count", count),
            ("trim", trim),
            ("waste", waste)
        );
    }

    /// <summary>Rolls to buy.</summary>
    public static Working<double> Rolls(Working<Length> band, Working<Length> roll) =>
        Working.Of(
            "Rolls to buy",
            ((band.Value.Ticks - 1) / roll.Value.Ticks) + 1,
            QuantityKind.Bare,
            0,
            "{band} ÷ {roll}, rounded up",
            Working.Geometry,
            ("band", band),
            ("roll", roll)
        );

    /// <summary>Area of veneer, square meters.</summary>
    public static Working<double> Veneer(
        Working<Length> length,
        Working<Length> width,
        Working<double> faces,
        Working<double> waste
    ) =>
        Working.Of(
            "Veneer",
            (double)Area.Of(length.Value, width.Value).ToSquareMetres() * faces.Value * (1 + (waste.Value / 100)),
            QuantityKind.Area,
            2,
            "{faces} × {length} × {width} × (1 + {waste})",
            Waste,
            ("faces", faces),
            ("length", length),
            ("width", width),
            ("waste", waste)
        );
}
