using System.Text;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Tests;

/// <summary>Reads the font files themselves: the PDF library applies no OpenType feature, so what is wanted must be there as it
/// is.</summary>
public sealed class TypefaceTests
{
    private const string Needed = "½¼¾⅛⅜⅝⅞⅓⅔×″′−⁄⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉Ø°→↔–—…·•☐✓□±$€£äéñ";

    [Theory]
    [InlineData(Weight.Regular)]
    [InlineData(Weight.Medium)]
    [InlineData(Weight.Bold)]
    public void Font_has_every_sign_of_the_trade(Weight weight) =>
        Assert.DoesNotContain(Needed.EnumerateRunes(), rune => !Typeface.Of(weight).Has(rune));

    [Theory]
    [InlineData(Weight.Regular)]
    [InlineData(Weight.Medium)]
    [InlineData(Weight.Bold)]
    public void Figures_are_equally_wide(Weight weight) =>
        Assert.Single("0123456789".EnumerateRunes().Select(Typeface.Of(weight).Advance).Distinct());

    [Theory]
    [InlineData(Weight.Regular)]
    [InlineData(Weight.Medium)]
    [InlineData(Weight.Bold)]
    public void Raised_and_lowered_figures_are_equally_wide(Weight weight) =>
        Assert.InRange("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉".EnumerateRunes().Select(Typeface.Of(weight).Advance).Distinct().Count(), 1, 2);

    [Theory]
    [InlineData(Weight.Regular)]
    [InlineData(Weight.Medium)]
    [InlineData(Weight.Bold)]
    public void Outlines_are_what_the_pdf_library_embeds(Weight weight) => Assert.True(Typeface.Of(weight).HasTrueTypeOutlines);

    /// <summary>Oracle: fontTools on the Regular file: unitsPerEm 1000, zero 497, sCapHeight 660.</summary>
    [Fact]
    public void Measures_are_those_another_reader_finds()
    {
        var font = Typeface.Of(Weight.Regular);
        Assert.Equal((0.497, 0.66), (font.Advance(new Rune('0')), font.CapHeight));
        Assert.Equal(0.497 * 3 * 10, font.Width("096", 10), 6);
    }

    [Fact]
    public void Sign_that_no_font_has_is_not_claimed()
    {
        var font = Typeface.Of(Weight.Regular);
        Assert.DoesNotContain("🪚ש字".EnumerateRunes(), font.Has);
        Assert.InRange(font.Advance(Rune.GetRuneAt("🪚", 0)), 0.2, 1.2);
    }
}
