using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Coats worked out.</summary>
/// <param name="Asked">What they were worked out from.</param>
/// <param name="Volume">How much finish is wanted.</param>
internal sealed record CoatsMade(CoatsAsked Asked, Working<double> Volume)
{
    private const int StartGrit = 80;

    /// <summary>Whether it may go over old paint; stain, oil and wax go on bare wood.</summary>
    public bool MayCoverPaint => Asked.Product.IsFilm;

    /// <summary>Whether it may hold a drying oil, so that its rags can catch fire.</summary>
    public bool MayHoldOil => Asked.Product.MayHoldOil;

    /// <summary>Whole cans.</summary>
    public Working<double> ToBuy =>
        Working.Of(
            "To buy",
            Volume.Value,
            new CansFigure(Volume.Value),
            "{volume}, rounded up to whole quarts, or to half liters",
            Working.Geometry,
            ("volume", Volume)
        );

    /// <summary>How long the coats wait in all.</summary>
    public Working<double> Waiting =>
        Coats.Waiting(
            Asked.Coats,
            Working.Looked("Between coats", Asked.Product.RecoatHours, QuantityKind.Hours, 0, Asked.Product.RecoatSource)
        );

    /// <summary>Sheets of sanding paper.</summary>
    public Working<double> Paper
    {
        get
        {
            var grits = Grits.From(StartGrit, Asked.Product.StopGrit);
            var feet = QuantityKind.Area.FromMetric(Asked.Area.Value, LengthUnit.Inch);
            return Working.Of(
                "Sheets of sandpaper",
                (double)Grits.Sheets(feet, Grits.FeetPerSheet) * grits.Length,
                QuantityKind.Bare,
                0,
                "{area} in 10 ft² × grits " + string.Join(", ", grits),
                Grits.SheetRule,
                ("area", Asked.Area)
            );
        }
    }

    public static CoatsMade Of(CoatsAsked asked) => new(asked, Coats.Volume(asked.Area, asked.Coats, asked.Coverage, asked.Loss));
}
