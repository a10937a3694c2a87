using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>How much finish, paper and edging is bought.</summary>
public sealed class FinishAmountTests
{
    // Arithmetic of a paint estimate: 150 ft² × 2 coats ÷ 400 ft²/gal is 0.75 gal; a tenth more 0.825 gal, 3.3 qt: buy a gallon.
    [Fact]
    public void A_hundred_and_fifty_square_feet_of_enamel_take_a_gallon()
    {
        // Both faces of 12 × 6 ft and edges of 1 in: 144 + 3 ft²; a stick 53 × 2 × 2 in has 3 ft².
        var parts = new[] { Finished.Part("Panel", 144, 72, 1, "Poplar"), Finished.Part("Stick", 53, 2, 2, "Poplar") };
        var plan = FinishPlanner.Of("Panel", LengthUnit.Inch, parts, Finished.Usual with { Finish = "enamel" });
        Assert.Equal(150, plan.Amounts!.Areas.Sum(area => (double)area.Area.ToSquareFeet()), 0.01);
        var volume = plan.Volumes.Single(one => one.Name == "Interior enamel");
        Assert.Equal(0.825, QuantityKind.Liquid.FromMetric(volume.Value, LengthUnit.Inch), 0.0005);
        Assert.Equal(new Can("1 gal", 1), Assert.Single(new CansFigure(volume.Value).Cans(LengthUnit.Inch)));
        Assert.Contains(new WorkItem("Interior enamel, 1 gal", 1), plan.Amounts.Buy);
    }

    // US gallon of 231 in³: a quart is a quarter of it, a half pint a quarter of that.
    [Theory]
    [InlineData(0.05, "1 × 1/2 pt")]
    [InlineData(0.0625, "1 × 1/2 pt")]
    [InlineData(0.07, "1 × 1 qt")]
    [InlineData(0.3, "2 × 1 qt")]
    [InlineData(0.6, "1 × 1 gal")]
    [InlineData(1.3, "1 × 1 gal, 2 × 1 qt")]
    public void Gallons_are_bought_in_cans_that_stores_carry(double gallons, string cans) =>
        Assert.Equal(cans, Told(new(QuantityKind.Liquid.ToMetric(gallons, LengthUnit.Inch)), LengthUnit.Inch));

    [Theory]
    [InlineData(0.2, "1 × 250 mL")]
    [InlineData(0.3, "1 × 500 mL")]
    [InlineData(1.2, "1 × 1 L, 1 × 500 mL")]
    [InlineData(2.2, "1 × 2.5 L")]
    [InlineData(3.3, "1 × 2.5 L, 1 × 1 L")]
    public void So_are_liters(double liters, string cans) => Assert.Equal(cans, Told(new(liters), LengthUnit.Millimetre));

    [Fact]
    public void Cans_hold_what_is_needed_and_the_calculator_says_the_same()
    {
        for (var milliliters = 10; milliliters < 12_000; milliliters += 37)
            foreach (var unit in Enum.GetValues<LengthUnit>())
            {
                var figure = new CansFigure(milliliters / 1000.0);
                var held = figure.Cans(unit).Sum(can => Litres(can.Size) * can.Count);
                Assert.True(held >= figure.Litres - 1e-9, $"{milliliters} mL in {Told(figure, unit)}");
                var smallest = unit == LengthUnit.Inch ? 1.0 / 16 : 0.25;
                if (held > QuantityKind.Liquid.ToMetric(smallest, unit) + 1e-9)
                    Assert.Equal(QuantityKind.Liquid.ToMetric(figure.Number(unit)!.Value, unit), held, 1e-9);
            }
    }

    [Fact]
    public void More_coats_and_more_area_take_more()
    {
        double Volume(int coats, decimal width) =>
            FinishPlanner
                .Of(
                    "Shelf",
                    LengthUnit.Inch,
                    [Finished.Part("Shelf", 36, width, 0.75m, "Pine 1x12")],
                    Finished.Usual with
                    {
                        Coats = coats,
                    }
                )
                .Volumes.Single(one => one.Name == "Latex paint")
                .Value;
        Assert.Equal(Volume(1, 10) * 3, Volume(3, 10), 1e-9);
        Assert.True(Volume(2, 11) > Volume(2, 10));
    }

    // Common practice, as in the working of coats: a sheet lasts 10 ft² of bare wood.
    [Fact]
    public void Paper_is_bought_by_grit_and_area()
    {
        var plan = FinishPlanner.Of(
            "Panel",
            LengthUnit.Inch,
            [Finished.Part("Panel", 48, 36, 0.75m, "Poplar")],
            Finished.Usual with
            {
                Finish = "clear",
            }
        );
        foreach (var grit in new[] { 80, 120, 150, 180, 220 })
            Assert.Contains(new WorkItem($"Sandpaper, {grit} grit (sheet)", 3), plan.Amounts!.Buy);
        Assert.Contains(plan.Amounts!.Buy, item => item.Name == "Sandpaper for between coats, 320 grit (sheet)");
    }

    [Fact]
    public void Lines_of_the_list_are_named_once_and_counted()
    {
        foreach (var design in DesignFiles.Names)
        foreach (var finish in FinishChoices.All)
            if (Finished.Plan(design, finish.Id).Amounts is { } amounts)
            {
                Assert.Equal(amounts.Buy.Length, amounts.Buy.Select(item => item.Name).Distinct().Count());
                Assert.All(amounts.Buy, item => Assert.InRange(item.Quantity, 1, 200));
                Assert.All(amounts.Buy, item => Assert.InRange(item.Name.Length, 5, 80));
            }
    }

    [Fact]
    public void Edging_is_bought_for_the_edges_that_show_unless_the_design_asks_for_it()
    {
        var bookcase = Finished.Piece("bookcase");
        Assert.Empty(Bands(bookcase, "clear"));
        var bare = bookcase with
        {
            Parts = [.. bookcase.Parts.Select(part => part with { Copies = [.. part.Copies.Select(Bare)] })],
            Hardware = [.. bookcase.Hardware.Where(item => !IsBand(item.Name))],
        };
        Assert.Equal("Edge band 13/16 in wide, by the foot", Assert.Single(Bands(bare, "clear")).Name);
        Assert.Empty(Bands(bare, "paint"));

        static PartCopy Bare(PartCopy copy) => copy with { Edges = [] };
        static bool IsBand(string name) => name.StartsWith("Edge band", StringComparison.Ordinal);
        static IEnumerable<WorkItem> Bands(Piece piece, string finish) =>
            FinishPlanner.Of(piece, Finished.Usual with { Finish = finish }).Amounts!.Buy.Where(item => IsBand(item.Name));
    }

    [Fact]
    public void Rags_that_oil_touched_get_a_can_and_a_caution()
    {
        foreach (var finish in FinishChoices.All.Where(one => one.Id is not (FinishChoices.None or "wax")))
        {
            var plan = Finished.Listed("Pine 1x12", finish.Id);
            var isOily = finish.Id.Split('+').Any(id => Coats.Product(id).MayHoldOil);
            Assert.Equal(isOily, plan.Amounts!.Buy.Any(item => item.Name.Contains("oily rags", StringComparison.Ordinal)));
            Assert.Equal(isOily, plan.Steps.Any(step => step.Cautions.Any(caution => caution.Id == "oily-rags")));
            Assert.Contains(plan.Steps, step => step.Cautions.Any(caution => caution.Id == "solvents"));
            Assert.Contains(plan.Steps, step => step.Cautions.Any(caution => caution.Id == "dust"));
        }
    }

    private static double Litres(string size) =>
        size switch
        {
            "1/2 pt" => QuantityKind.Liquid.PerCustomary / 16,
            "1 qt" => QuantityKind.Liquid.PerCustomary / 4,
            "1 gal" => QuantityKind.Liquid.PerCustomary,
            "250 mL" => 0.25,
            "500 mL" => 0.5,
            "1 L" => 1,
            "2.5 L" => 2.5,
            _ => throw new InvalidOperationException(size),
        };

    private static string Told(CansFigure figure, LengthUnit unit) =>
        string.Join(", ", figure.Cans(unit).Select(can => $"{can.Count} × {can.Size}"));
}
