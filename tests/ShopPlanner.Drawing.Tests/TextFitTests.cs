using CsCheck;
using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Tests;

public sealed class TextFitTests
{
    [Theory]
    [InlineData("Side panel", "Side panel")]
    [InlineData("  two\r\n\tlines ", "two lines")]
    [InlineData("saw 🪚 blade", "saw blade")]
    [InlineData("shelf \uE000", "shelf □")]
    [InlineData("a\u202Eb\u0007c\u200Dd", "abcd")]
    [InlineData("", "")]
    public void Clean_text_prints(string text, string expected) => Assert.Equal(expected, TextFit.Clean(text));

    [Theory]
    [InlineData(1000, "Side panel")]
    [InlineData(30, "Side…")]
    [InlineData(2, "")]
    public void Shortened_text_says_so(double width, string expected) =>
        Assert.Equal(expected, TextFit.Shorten("Side panel", Weight.Regular, 10, width));

    [Fact]
    public void Long_word_is_broken() =>
        Assert.Equal(
            ["WWWW", "WWWW", "W"],
            TextFit.Wrap("WWWWWWWWW", Weight.Regular, 10, Typeface.Width("WWWW", Weight.Regular, 10) + 1)
        );

    [Fact]
    public void Too_many_lines_end_with_dots()
    {
        var lines = TextFit.Wrap("one two three four five six", Weight.Regular, 10, 40, 2);
        Assert.Equal(2, lines.Count);
        Assert.EndsWith("…", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Wrapped_lines_fit_and_lose_no_letter() =>
        Gen.Select(Gen.String[Gen.Char["abcWi ½×-"], 0, 80], Gen.Double[12, 200])
            .Sample(
                (text, width) =>
                {
                    var lines = TextFit.Wrap(text, Weight.Bold, 10, width);
                    Assert.All(lines, line => Assert.InRange(Typeface.Width(line, Weight.Bold, 10), 0, width));
                    Assert.Equal(
                        text.Replace(" ", "", StringComparison.Ordinal),
                        string.Concat(lines).Replace(" ", "", StringComparison.Ordinal)
                    );
                }
            );
}
