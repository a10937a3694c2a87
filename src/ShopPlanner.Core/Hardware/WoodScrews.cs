using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>What a screw is driven into, as far as its pilot goes.</summary>
public enum PilotWood
{
    /// <summary>Softwood and plywood.</summary>
    Softwood,

    /// <summary>Hardwood.</summary>
    Hardwood,

    /// <summary>MDF and particleboard, which swell and split around a screw.</summary>
    Mdf,
}

/// <summary>A gauge of wood screw with its drills.</summary>
/// <param name="Gauge">Number: 8.</param>
/// <param name="Diameter">Of the shank: 0.060 + 0.013 × gauge in inches (ASME B18.6.1 as quoted on fastener pages).</param>
/// <param name="Clearance">Drill for the near piece.</param>
/// <param name="PilotHardwood">Drill for the far piece.</param>
/// <param name="PilotSoftwood">Drill for the far piece.</param>
/// <param name="Lengths">What stores carry of it (common practice), the shortest first.</param>
public sealed record ScrewGauge(
    int Gauge,
    Length Diameter,
    Length Clearance,
    Length PilotHardwood,
    Length PilotSoftwood,
    ImmutableArray<Length> Lengths
)
{
    /// <summary>The drill for the far piece. In MDF it is as wide as in hardwood: 3/32, 7/64 and 1/8 in for gauges 6, 8 and 10,
    /// as makers' pages have it.</summary>
    public Length Pilot(PilotWood wood) => wood == PilotWood.Softwood ? PilotSoftwood : PilotHardwood;
}

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

    /// <summary>Pilot drills in MDF.</summary>
    public static readonly SourceNote MdfPilotSource = new(
        "Screw makers' pages as quoted: 3/32, 7/64 and 1/8 in for gauges 6, 8 and 10; a European association of makers: "
            + "85 to 95% of the core, at least 1 mm deeper than the screw",
        Certainty.Quoted
    );

    /// <summary>Thread in the far piece.</summary>
    public static readonly SourceNote ThreadSource = new(
        "1 to 1 1/2 in of thread in the far piece, quoted on a how-to page",
        Certainty.Quoted
    );

    /// <summary>What is sold.</summary>
    public static readonly SourceNote SoldSource = new(
        "Common practice: lengths that stores carry of each gauge",
        Certainty.CommonPractice
    );

    /// <summary>From 4 to 14.</summary>
    public static readonly ImmutableArray<ScrewGauge> Gauges =
    [
        Of(4, "7/64", "5/64", "1/16", "1/2", "5/8", "3/4", "1"),
        Of(6, "9/64", "3/32", "1/16", "1/2", "5/8", "3/4", "1", "1 1/4", "1 1/2", "1 5/8", "2"),
        Of(8, "11/64", "7/64", "5/64", "1/2", "5/8", "3/4", "1", "1 1/4", "1 1/2", "1 5/8", "1 3/4", "2", "2 1/4", "2 1/2", "3"),
        Of(10, "3/16", "1/8", "3/32", "3/4", "1", "1 1/4", "1 1/2", "1 3/4", "2", "2 1/4", "2 1/2", "3", "3 1/2"),
        Of(12, "7/32", "9/64", "7/64", "1", "1 1/4", "1 1/2", "1 3/4", "2", "2 1/4", "2 1/2", "3", "3 1/2", "4"),
        Of(14, "1/4", "5/32", "7/64", "1 1/2", "2", "2 1/2", "3", "3 1/2", "4"),
    ];

    /// <summary>The longest that is sold.</summary>
    public static Length Longest => Gauges.Max(gauge => gauge.Lengths[^1]);

    /// <summary>The gauge of a number.</summary>
    public static ScrewGauge Numbered(int number) => Gauges.First(one => one.Gauge == number);

    /// <summary>What a wood or sheet is to a screw.</summary>
    public static PilotWood PilotFor(Strength row)
    {
        ArgumentNullException.ThrowIfNull(row);
        if (row.IsPanel)
            return row.Id is "mdf" or "particleboard" or "hardboard" ? PilotWood.Mdf : PilotWood.Softwood;
        return MaterialCatalogue.TryFindSpecies(row.Id, out var species) && species.Kind == WoodKind.Softwood
            ? PilotWood.Softwood
            : PilotWood.Hardwood;
    }

    /// <summary>Where a pilot comes from.</summary>
    public static SourceNote PilotSourceFor(PilotWood wood) => wood == PilotWood.Mdf ? MdfPilotSource : PilotSource;

    private static ScrewGauge Of(int gauge, string clearance, string hard, string soft, params string[] lengths) =>
        new(
            gauge,
            Length.FromInches(0.060m + (0.013m * gauge)),
            Inches.Of(clearance),
            Inches.Of(hard),
            Inches.Of(soft),
            [.. lengths.Select(Inches.Of)]
        );
}
