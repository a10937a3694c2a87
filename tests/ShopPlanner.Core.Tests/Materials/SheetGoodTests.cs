using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Materials;

public sealed class SheetGoodTests
{
    /// <summary>Oracle: PS 1 performance categories and label thickness, as the plywood trade association's page prints them
    /// (limits in inches and, rounded, in millimetres).</summary>
    [Theory]
    [InlineData("softwood-ply-1-4", "0.225", "0.219", 5.56, "0.281", 7.14)]
    [InlineData("softwood-ply-11-32", "0.322", "0.313", 7.94, "0.375", 9.53)]
    [InlineData("softwood-ply-3-8", "0.354", "0.344", 8.73, "0.406", 10.32)]
    [InlineData("softwood-ply-15-32", "0.451", "0.438", 11.11, "0.500", 12.70)]
    [InlineData("softwood-ply-1-2", "0.483", "0.469", 11.91, "0.531", 13.49)]
    [InlineData("softwood-ply-19-32", "0.578", "0.563", 14.29, "0.625", 15.88)]
    [InlineData("softwood-ply-5-8", "0.609", "0.594", 15.08, "0.656", 16.67)]
    [InlineData("softwood-ply-23-32", "0.703", "0.688", 17.46, "0.750", 19.05)]
    [InlineData("softwood-ply-3-4", "0.734", "0.719", 18.26, "0.781", 19.84)]
    [InlineData("softwood-ply-7-8", "0.849", "0.831", 21.11, "0.919", 23.34)]
    [InlineData("softwood-ply-1", "0.970", "0.950", 24.13, "1.050", 26.67)]
    [InlineData("softwood-ply-1-1-8", "1.091", "1.069", 27.15, "1.181", 30.00)]
    public void Plywood_category_is_the_standards(
        string id,
        string label,
        string least,
        double leastMillimetres,
        string greatest,
        double greatestMillimetres
    )
    {
        var sheet = Sheet(id);
        Assert.Equal((In(label), In(least), In(greatest)), (sheet.Thickness, sheet.Thinnest, sheet.Thickest));
        Assert.InRange((double)sheet.Thinnest.ToMillimetres(), leastMillimetres - 0.02, leastMillimetres + 0.02);
        Assert.InRange((double)sheet.Thickest.ToMillimetres(), greatestMillimetres - 0.02, greatestMillimetres + 0.02);
    }

    /// <summary>Oracle: a European mill's table of sanded birch plywood, consistent with EN 315.</summary>
    [Theory]
    [InlineData("birch-multiply-6-5mm", 6.5, 0.4, 0.5)]
    [InlineData("birch-multiply-9mm", 9, 0.4, 0.5)]
    [InlineData("birch-multiply-12mm", 12, 0.5, 0.7)]
    [InlineData("birch-multiply-15mm", 15, 0.6, 0.8)]
    [InlineData("birch-multiply-18mm", 18, 0.7, 0.9)]
    [InlineData("birch-multiply-21mm", 21, 0.8, 1.0)]
    [InlineData("birch-multiply-24mm", 24, 0.9, 1.1)]
    public void Metric_birch_plywood_is_the_mills(string id, double thickness, double over, double under)
    {
        var sheet = Sheet(id);
        Assert.Equal(Mm(thickness), sheet.Thickness);
        Assert.Equal((Mm(thickness - under), Mm(thickness + over)), (sheet.Thinnest, sheet.Thickest));
    }

    /// <summary>Oracle: HP-1 as a trade magazine quotes it: +0, −3/64 in; a 3/4 in sheet is commonly 23/32 in.</summary>
    [Fact]
    public void Hardwood_plywood_is_thinner_than_its_name()
    {
        var sheet = Sheet("birch-ply-3-4");
        Assert.Equal((In("23/32"), In("45/64"), In("3/4")), (sheet.Thickness, sheet.Thinnest, sheet.Thickest));
    }

    /// <summary>Oracle: ANSI A208.2 as an industry guide quotes it: 0.125 mm thickness; thickness as named.</summary>
    [Fact]
    public void Mdf_is_as_thick_as_its_name()
    {
        var sheet = Sheet("mdf-18mm");
        Assert.Equal((Mm(18), Mm(17.875), Mm(18.125)), (sheet.Thickness, sheet.Thinnest, sheet.Thickest));
        Assert.Equal(["49", "48"], Sheet("mdf-3-4").Sizes.Select(s => Text(s.Width)).OrderDescending());
    }

    /// <summary>Oracle: arithmetic: 48 × 96 in is 1219.2 × 2438.4 mm, so the metric sheet is 0.8 and 1.6 mm larger; a full sheet
    /// is 32 square feet, 2.973 m².</summary>
    [Fact]
    public void Inch_sheet_and_metric_sheet_differ()
    {
        var inch = Sheet("birch-ply-3-4").Sizes[0];
        var metric = Sheet("birch-multiply-18mm").Sizes[0];
        Assert.Equal((Mm(1219.2), Mm(2438.4)), (inch.Width, inch.Length));
        Assert.Equal((Mm(0.8), Mm(1.6)), (metric.Width - inch.Width, metric.Length - inch.Length));
        var area = Area.Of(inch.Length, inch.Width);
        Assert.Equal(32m, area.ToSquareFeet());
        Assert.Equal(2.973m, Math.Round(area.ToSquareMetres(), 3));
    }

    [Fact]
    public void Unknown_sheet_is_not_found() => Assert.False(MaterialCatalogue.TryFindSheet("birch-ply-7-8", out _));

    private static SheetGood Sheet(string id) =>
        MaterialCatalogue.TryFindSheet(id, out var sheet) ? sheet : throw new InvalidOperationException(id + " is missing");

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;

    private static Length Mm(double millimetres) => Length.FromMillimetres((decimal)millimetres);

    private static string Text(Length length) => LengthFormat.Plain(length, LengthUnit.Inch).Text;
}
