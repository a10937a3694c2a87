using System.Globalization;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Materials;

public sealed class MaterialCatalogueTests
{
    private const string Ink = "#22303C";

    [Fact]
    public void Ids_differ()
    {
        Assert.Distinct(MaterialCatalogue.Species.Select(s => s.Id));
        Assert.Distinct(MaterialCatalogue.SheetGoods.Select(s => s.Id));
        Assert.Distinct(MaterialCatalogue.StoreMaterials.Select(s => s.Id));
    }

    [Theory]
    [InlineData("pine-1x3", "3/4", "2 1/2")]
    [InlineData("whitewood-2x4", "1 1/2", "3 1/2")]
    [InlineData("cedar-5-4x6", "1", "5 1/2")]
    [InlineData("birch-ply-3-4", "23/32", null)]
    public void Store_material_has_its_actual_size(string id, string thickness, string? width)
    {
        var material = MaterialCatalogue.StoreMaterials.Single(m => m.Id == id);
        Assert.Equal(In(thickness), material.Thickness);
        Assert.Equal(width is null ? null : In(width), material.Width);
    }

    [Fact]
    public void Board_has_a_wood_and_lengths_and_a_sheet_has_a_good_and_sizes() =>
        Assert.All(
            MaterialCatalogue.StoreMaterials,
            m =>
            {
                var board = m.Form == MaterialForm.Board;
                Assert.Equal((board, board, board), (m.SpeciesId is not null, m.Width is not null, m.Lengths.Length > 0));
                Assert.Equal((!board, !board), (m.SheetGoodId is not null, m.Sizes.Length > 0));
            }
        );

    [Fact]
    public void Wood_is_found_by_its_id()
    {
        Assert.True(MaterialCatalogue.TryFindSpecies("oak-red", out var oak));
        Assert.Equal(("Red oak", WoodKind.Hardwood), (oak.Name, oak.Kind));
        Assert.False(MaterialCatalogue.TryFindSpecies("plastic", out _));
    }

    [Theory]
    [InlineData("mdf-3-4", false)]
    [InlineData("particleboard-3-4", false)]
    [InlineData("birch-ply-3-4", true)]
    public void Only_plywood_has_grain(string id, bool grain)
    {
        Assert.True(MaterialCatalogue.TryFindSheet(id, out var sheet));
        Assert.Equal(grain, sheet.HasGrain);
    }

    /// <summary>Oracle: W3C WCAG 2.x contrast: text at least 4.5 : 1, by its luminance definition.</summary>
    [Fact]
    public void Ink_reads_on_every_tint() =>
        Assert.All(
            MaterialCatalogue.Species.Select(s => s.Tint).Concat(MaterialCatalogue.SheetGoods.Select(s => s.Tint)),
            tint => Assert.InRange(Contrast(Ink, tint), 4.5, 21)
        );

    /// <summary>Oracle: the W3C definition on white: #000000 21, #767676 4.54, #777777 4.48.</summary>
    [Theory]
    [InlineData("#000000", 21.0)]
    [InlineData("#767676", 4.54)]
    [InlineData("#777777", 4.48)]
    public void Contrast_is_measured_as_defined(string colour, double expected) =>
        Assert.Equal(expected, Contrast(colour, "#FFFFFF"), 2);

    private static double Contrast(string a, string b)
    {
        var (light, dark) = (Math.Max(Luminance(a), Luminance(b)), Math.Min(Luminance(a), Luminance(b)));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double Luminance(string colour) =>
        0.2126 * Linear(colour[1..3]) + 0.7152 * Linear(colour[3..5]) + 0.0722 * Linear(colour[5..7]);

    private static double Linear(string hex)
    {
        var c = int.Parse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
