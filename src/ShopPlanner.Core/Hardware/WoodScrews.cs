using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>A gauge of wood screw with its drills.</summary>
/// <param name="Gauge">Number: 8.</param>
/// <param name="Diameter">Of the shank: 0.060 + 0.013 × gauge in inches (ASME B18.6.1 as quoted on fastener pages).</param>
/// <param name="Clearance">Drill for the near piece.</param>
/// <param name="PilotHardwood">Drill for the far piece.</param>
/// <param name="PilotSoftwood">Drill for the far piece.</param>
public sealed record ScrewGauge(int Gauge, Length Diameter, Length Clearance, Length PilotHardwood, Length PilotSoftwood);

/// <summary>Wood screws: gauges, drills, lengths.</summary>
public static class WoodScrews
{
    /// <summary>Clearance drills.</summary>
    public static readonly SourceNote DrillSource = new(
        "A screw maker's table, quoted on a boatbuilder's page",
        Certainty.Quoted
    );

    /// <summary>Pilot drills.</summary>
    public static readonly SourceNote PilotSource = new(
        "An old shop plate for gauges 8 and 10; common practice for the others",
        Certainty.CommonPractice
    );

    /// <summary>Thread in the far piece.</summary>
    public static readonly SourceNote ThreadSource = new(
        "1 to 1 1/2 in of thread in the far piece, quoted on a how-to page",
        Certainty.Quoted
    );

    /// <summary>From 4 to 14.</summary>
    public static readonly ImmutableArray<ScrewGauge> Gauges =
    [
        Of(4, "7/64", "5/64", "1/16"),
        Of(6, "9/64", "3/32", "1/16"),
        Of(8, "11/64", "7/64", "5/64"),
        Of(10, "3/16", "1/8", "3/32"),
        Of(12, "7/32", "9/64", "7/64"),
        Of(14, "1/4", "5/32", "7/64"),
    ];

    /// <summary>Lengths that stores carry (common practice).</summary>
    public static readonly ImmutableArray<Length> Lengths =
    [
        .. new[]
        {
            "1/2",
            "5/8",
            "3/4",
            "1",
            "1 1/4",
            "1 1/2",
            "1 5/8",
            "1 3/4",
            "2",
            "2 1/4",
            "2 1/2",
            "2 3/4",
            "3",
            "3 1/2",
            "4",
        }.Select(Inches.Of),
    ];

    private static ScrewGauge Of(int gauge, string clearance, string hard, string soft) =>
        new(gauge, Length.FromInches(0.060m + (0.013m * gauge)), Inches.Of(clearance), Inches.Of(hard), Inches.Of(soft));
}
