using System.Collections.Immutable;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Finishing;

/// <summary>A kind of finish with what a label usually says; the label in hand comes before it.</summary>
/// <param name="Id">Word at the command line.</param>
/// <param name="Name">As shown.</param>
/// <param name="Coverage">Square feet for a gallon, each coat.</param>
/// <param name="CoverageSource">Where that comes from.</param>
/// <param name="Coats">Usual number.</param>
/// <param name="RecoatHours">Between coats.</param>
/// <param name="RecoatSource">Where that comes from.</param>
/// <param name="StopGrit">Grit to stop at before it (common practice).</param>
public sealed record FinishProduct(
    string Id,
    string Name,
    double Coverage,
    SourceNote CoverageSource,
    int Coats,
    double RecoatHours,
    SourceNote RecoatSource,
    int StopGrit
)
{
    /// <summary>Whether some of its kind are made with a drying oil, whose rags can catch fire.</summary>
    public bool MayHoldOil { get; init; }
}

/// <summary>What finishes cover, how many coats and how long they wait.</summary>
public static class Coats
{
    /// <summary>Loss in brush, can and rags.</summary>
    public static readonly SourceNote Loss = new(
        "Common practice: a tenth stays in the brush, tray and can",
        Certainty.CommonPractice
    );

    private static readonly SourceNote Label = new(
        "Common practice, the middle of the usual range: the label comes first",
        Certainty.CommonPractice
    );
    private static readonly SourceNote Latex = new(
        "Latex paint 350–400, primer 200–300 ft²/gal, paint trade pages as quoted",
        Certainty.Quoted
    );
    private static readonly SourceNote Recoat = new(
        "Waterborne 2–4 h, a trade magazine as quoted; the can comes first",
        Certainty.Quoted
    );
    private static readonly SourceNote Primer = new(
        "Wood Handbook ch. 16: a stain-blocking latex primer dries 24 to 48 h before the top coat",
        Certainty.Read
    );

    /// <summary>The usual kinds.</summary>
    public static readonly ImmutableArray<FinishProduct> Products =
    [
        new("primer", "Stain-blocking latex primer", 250, Latex, 1, 24, Primer, 150),
        new("paint", "Latex paint", 375, Latex, 2, 4, Recoat, 150),
        new("enamel", "Interior enamel", 400, Label, 2, 16, Label, 150) { MayHoldOil = true },
        new("stain", "Penetrating stain", 225, Label, 1, 16, Label, 180) { MayHoldOil = true },
        new("clear", "Waterborne clear coat", 425, Label, 3, 3, Recoat, 220),
    ];

    /// <summary>Volume for all coats, loss included, in litres.</summary>
    /// <param name="area">To be coated, m².</param>
    /// <param name="coats">How many.</param>
    /// <param name="coverage">One coat, m² for a litre.</param>
    /// <param name="loss">Percent more.</param>
    public static Working<double> Volume(
        Working<double> area,
        Working<double> coats,
        Working<double> coverage,
        Working<double> loss
    ) =>
        Working.Of(
            "Finish with waste",
            area.Value * coats.Value / coverage.Value * (1 + (loss.Value / 100)),
            QuantityKind.Liquid,
            2,
            "{area} × {coats} ÷ {coverage}, plus {loss}",
            Loss,
            ("area", area),
            ("coats", coats),
            ("coverage", coverage),
            ("loss", loss)
        );

    /// <summary>Hours of waiting between the first coat and the last one's recoat time.</summary>
    public static Working<double> Waiting(Working<double> coats, Working<double> recoat) =>
        Working.Of(
            "Total drying time",
            coats.Value * recoat.Value,
            QuantityKind.Hours,
            0,
            "{coats} × {recoat}",
            recoat.Source,
            ("coats", coats),
            ("recoat", recoat)
        );
}
