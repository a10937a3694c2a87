using System.Collections.Immutable;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Finishing;

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
        new("primer", "Stain-blocking latex primer", 250, Latex, 1, 24, Primer, 150)
        {
            HidesWood = true,
            OnlyPrepares = true,
            BetweenGrit = 220,
            IsForOutdoors = true,
        },
        new("paint", "Latex paint", 375, Latex, 2, 4, Recoat, 150)
        {
            HidesWood = true,
            BetweenGrit = 220,
            IsForOutdoors = true,
        },
        new("enamel", "Interior enamel", 400, Label, 2, 16, Label, 150)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            HidesWood = true,
            BetweenGrit = 220,
        },
        new("stain", "Penetrating stain", 225, Label, 1, 16, Label, 180)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            IsFilm = false,
            IsWiped = true,
        },
        new("clear", "Waterborne clear coat", 425, Label, 3, 3, Recoat, 220) { BetweenGrit = 320 },
        new("polyurethane", "Oil-based polyurethane", 425, Label, 3, 16, Label, 220)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            BetweenGrit = 320,
            IsForOutdoors = true,
        },
        new("wiping-varnish", "Wiping varnish", 425, Label, 4, 12, Label, 220)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            IsWiped = true,
            BetweenGrit = 320,
        },
        new("shellac", "Dewaxed shellac", 350, Label, 3, 8, FinishSources.ShellacDries, 220)
        {
            Base = FinishBase.Spirit,
            BetweenGrit = 320,
        },
        new("oil", "Oil finish", 400, Label, 3, 24, Label, 220)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            IsFilm = false,
            IsWiped = true,
            IsForOutdoors = true,
        },
        new("hard-wax-oil", "Hard-wax oil", 400, Label, 2, 12, Label, 180)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            IsFilm = false,
            IsWiped = true,
        },
        new("wax", "Paste wax", 400, Label, 2, 12, FinishSources.WaxDries, 220)
        {
            Base = FinishBase.Oil,
            IsFilm = false,
            IsWiped = true,
            CureHours = 24,
            CureSource = FinishSources.WaxDries,
        },
        new("conditioner", "Wood conditioner", 225, Label, 1, 2, Label, 180)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            IsFilm = false,
            OnlyPrepares = true,
            IsWiped = true,
        },
        new("filler", "Paste grain filler", 150, Label, 1, 24, FinishSources.FillerDries, 180)
        {
            MayHoldOil = true,
            Base = FinishBase.Oil,
            IsFilm = false,
            OnlyPrepares = true,
            IsWiped = true,
            BetweenGrit = 220,
        },
    ];

    /// <summary>Returns the kind with this id.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static FinishProduct Product(string id) => Products.First(one => one.Id == id);

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
