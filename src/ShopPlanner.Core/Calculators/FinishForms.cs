using System.Collections.Immutable;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>How much finish to buy.</summary>
internal static class FinishForms
{
    public static readonly ImmutableArray<WorkingForm> All = [CoatsForm()];

    private const double Quart = 3.785411784 / 4;
    private static readonly SourceNote Sheets = new(
        "Common practice: a sheet of paper for each 10 ft² and grit",
        Certainty.CommonPractice
    );
    private static readonly int[] Grits = [80, 120, 150, 180, 220];

    private static WorkingForm CoatsForm() =>
        new(
            "coats",
            "Coats of finish",
            "How much finish to buy, how long the coats wait, and what paper the sanding takes.",
            [
                new("area", "Area to be coated", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Area,
                    Least = "0.01 m²",
                    Most = "10000 ft²",
                    Hint = "Both faces and the edges of every part that is coated",
                },
                new("product", "Finish", KeyKind.Choice)
                {
                    Default = "paint",
                    Choices = [.. Coats.Products.Select(one => new FormChoice(one.Id, one.Name))],
                },
                new("coats", "Coats", KeyKind.Count)
                {
                    Optional = true,
                    Least = "1",
                    Most = "20",
                },
                new("coverage", "What the label says a gallon or litre covers", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Coverage,
                    Optional = true,
                    Least = "10 ft²/gal",
                    Most = "2000 ft²/gal",
                },
                new("loss", "Loss, percent", KeyKind.Number)
                {
                    Default = "10",
                    Least = "0",
                    Most = "100",
                },
            ],
            reader =>
            {
                var area = Working.Given("Area", reader.Quantity("area"), QuantityKind.Area, 2);
                var product = Coats.Products.First(one => one.Id == reader.Choice("product"));
                var coats = reader.MaybeCount("coats") is { } n
                    ? Working.Given("Coats", n, QuantityKind.Bare, 0)
                    : Working.Looked(
                        "Coats",
                        product.Coats,
                        QuantityKind.Bare,
                        0,
                        new("Common practice: the label wins", Certainty.CommonPractice)
                    );
                var coverage = reader.MaybeQuantity("coverage") is { } c
                    ? Working.Given("Coverage", c, QuantityKind.Coverage, 0)
                    : Working.Looked(
                        "Coverage",
                        QuantityKind.Coverage.ToMetric(product.Coverage, LengthUnit.Inch),
                        QuantityKind.Coverage,
                        0,
                        product.CoverageSource
                    );
                var loss = Working.Given("Loss", reader.Number("loss"), QuantityKind.Percent, 0);
                return () => Answer(area, product, coats, coverage, loss);
            }
        );

    private static FormOutcome Answer(
        Working<double> area,
        FinishProduct product,
        Working<double> coats,
        Working<double> coverage,
        Working<double> loss
    )
    {
        var volume = Coats.Volume(area, coats, coverage, loss);
        var quarts = (int)Math.Ceiling(volume.Value / Quart);
        var cans =
            quarts % 4 == 0 || quarts % 4 == 3 ? $"{(quarts + 3) / 4} gal"
            : quarts < 4 ? $"{quarts} qt"
            : $"{quarts / 4} gal and {quarts % 4} qt";
        var buy = Working.Of(
            "To buy",
            cans,
            new WordFigure(cans),
            "{volume} in quarts, up to whole cans",
            Working.Geometry,
            ("volume", volume)
        );
        var recoat = Working.Looked("Between coats", product.RecoatHours, QuantityKind.Hours, 0, product.RecoatSource);
        var grits = Grits.Where(one => one <= product.StopGrit).ToList();
        var paper = Working.Of(
            "Sheets of sanding paper",
            Math.Max(1, Math.Ceiling(QuantityKind.Area.FromMetric(area.Value, LengthUnit.Inch) / 10)) * grits.Count,
            QuantityKind.Bare,
            0,
            "{area} in 10 ft² × grits " + string.Join(", ", grits),
            Sheets,
            ("area", area)
        );
        return new Answer([volume, buy, Coats.Waiting(coats, recoat), paper])
        {
            Verdicts =
            [
                new(
                    Severity.Watch,
                    "The label's coverage, recoat time and least temperature come before these figures. Try it on a scrap of the same wood first."
                ),
            ],
            Cautions = product.Id is "stain"
                ? [Cautions.Solvents, Cautions.OilyRags, Cautions.Dust]
                : [Cautions.Solvents, Cautions.LeadPaint, Cautions.Dust],
        };
    }
}
