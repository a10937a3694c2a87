using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Coats worked out.</summary>
/// <param name="Asked">What they were worked out from.</param>
/// <param name="Volume">How much finish is wanted.</param>
internal sealed record CoatsMade(CoatsAsked Asked, Working<double> Volume)
{
    // Litres.
    private const double Quart = 3.785411784 / 4;

    private static readonly int[] Grits = [80, 120, 150, 180, 220];
    private static readonly SourceNote SheetRule = new(
        "Common practice: one sheet per 10 ft² and grit",
        Certainty.CommonPractice
    );

    /// <summary>Whether it is a stain, which may hold a drying oil.</summary>
    public bool IsStain => Asked.Product.Id is "stain";

    /// <summary>Whole cans.</summary>
    public Working<string> ToBuy =>
        Working.Of(
            "To buy",
            Cans,
            new WordFigure(Cans),
            "{volume} in quarts, rounded up to whole cans",
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
            var grits = Grits.Where(one => one <= Asked.Product.StopGrit).ToList();
            var feet = QuantityKind.Area.FromMetric(Asked.Area.Value, LengthUnit.Inch);
            return Working.Of(
                "Sheets of sandpaper",
                Math.Max(1, Math.Ceiling(feet / 10)) * grits.Count,
                QuantityKind.Bare,
                0,
                "{area} in 10 ft² × grits " + string.Join(", ", grits),
                SheetRule,
                ("area", Asked.Area)
            );
        }
    }

    private string Cans
    {
        get
        {
            var quarts = (int)Math.Ceiling(Volume.Value / Quart);
            return quarts % 4 == 0 || quarts % 4 == 3 ? $"{(quarts + 3) / 4} gal"
                : quarts < 4 ? $"{quarts} qt"
                : $"{quarts / 4} gal and {quarts % 4} qt";
        }
    }

    public static CoatsMade Of(CoatsAsked asked) => new(asked, Coats.Volume(asked.Area, asked.Coats, asked.Coverage, asked.Loss));
}
