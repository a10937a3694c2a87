using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of coats.</summary>
internal sealed record CoatsAsked(
    Working<double> Area,
    FinishProduct Product,
    Working<double> Coats,
    Working<double> Coverage,
    Working<double> Loss
)
{
    private static readonly SourceNote LabelWins = new("Common practice: the label comes first", Certainty.CommonPractice);

    public static CoatsAsked Read(FormReader reader)
    {
        var area = reader.GivenQuantity("Area", "area", 2);
        var product = Finishing.Coats.Products.First(one => one.Id == reader.Choice("product"));
        return new(
            area,
            product,
            reader.MaybeCount("coats") is { } coats
                ? Working.Given("Coats", coats, QuantityKind.Bare, 0)
                : Working.Looked("Coats", product.Coats, QuantityKind.Bare, 0, LabelWins),
            reader.MaybeGivenQuantity("Coverage", "coverage", 0)
                ?? Working.Looked(
                    "Coverage",
                    QuantityKind.Coverage.ToMetric(product.Coverage, LengthUnit.Inch),
                    QuantityKind.Coverage,
                    0,
                    product.CoverageSource
                ),
            Working.Given("Waste", reader.Number("loss"), QuantityKind.Percent, 0)
        );
    }
}
