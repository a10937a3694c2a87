using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopPlanner.Web.Tests.Look;

public sealed partial class TokenTests
{
    private static readonly string Css = Sheet("tokens.css");
    private static readonly LookTokens Tokens = LookTokens.Read(Css);

    public static TheoryData<string, string> TextOnGround() =>
        new()
        {
            { "ink", "paper" },
            { "ink", "surface" },
            { "ink", "sunk" },
            { "faded-ink", "paper" },
            { "faded-ink", "surface" },
            { "faded-ink", "sunk" },
            { "chalk", "paper" },
            { "chalk", "surface" },
            { "on-chalk", "chalk" },
            { "pencil", "paper" },
            { "pencil", "surface" },
            { "pencil", "pencil-wash" },
            { "done", "paper" },
            { "done", "surface" },
            { "ink", "chalk-wash" },
            { "ink", "pencil-wash" },
            { "ink", "done-wash" },
            { "surface", "pencil" },
            { "paper", "ink" },
        };

    // 4.5:1 for text: WCAG 2.2, success criterion 1.4.3.
    [Theory]
    [MemberData(nameof(TextOnGround))]
    public void Text_stands_out_from_its_ground(string text, string ground)
    {
        Assert.InRange(Contrast(Tokens.Light[text], Tokens.Light[ground]), 4.5, 21);
        Assert.InRange(Contrast(Tokens.Dark[text], Tokens.Dark[ground]), 4.5, 21);
    }

    // 3:1 for the edges of controls: WCAG 2.2, success criterion 1.4.11.
    [Theory]
    [InlineData("paper")]
    [InlineData("surface")]
    public void Edges_of_controls_stand_out(string ground)
    {
        Assert.InRange(Contrast(Tokens.Light["edge"], Tokens.Light[ground]), 3, 21);
        Assert.InRange(Contrast(Tokens.Dark["edge"], Tokens.Dark[ground]), 3, 21);
    }

    [Fact]
    public void Dark_by_the_system_and_dark_by_the_switch_are_the_same() =>
        Assert.Equal(Tokens.Dark.OrderBy(pair => pair.Key), LookTokens.ReadSystemDark(Css).OrderBy(pair => pair.Key));

    [Fact]
    public void Light_and_dark_name_the_same_colours() => Assert.Equal(Tokens.Light.Keys.Order(), Tokens.Dark.Keys.Order());

    [Fact]
    public void A_file_without_colours_is_refused() => Assert.Throws<InvalidDataException>(() => LookTokens.Read("body { }"));

    [Fact]
    public void The_component_library_takes_its_colours_from_the_tokens_alone()
    {
        var colours = LibraryColour()
            .Matches(Sheet("library.css"))
            .ToDictionary(m => m.Groups["name"].Value, m => m.Groups["value"].Value);
        Assert.Equal(("chalk", "paper"), (colours["primary"], colours["background"]));
        Assert.All(colours.Values, colour => Assert.Contains(colour, Tokens.Light.Keys));
        var palette = Sheet("library.css").Split('\n').Count(line => line.Contains("--mud-palette-", StringComparison.Ordinal));
        Assert.Equal(palette - 1, colours.Count);
    }

    // Relative luminance and contrast ratio as WCAG 2.2 defines them.
    private static double Contrast(string a, string b)
    {
        var (light, dark) = (Math.Max(Luminance(a), Luminance(b)), Math.Min(Luminance(a), Luminance(b)));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Channel(int at)
        {
            var value = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }

    private static string Sheet(string name) => File.ReadAllText(Path.Combine(Repository(), "wwwroot-assets", "styles", name));

    [GeneratedRegex(@"--mud-palette-(?<name>[a-z-]+): var\(--(?<value>[a-z-]+)\);")]
    private static partial Regex LibraryColour();

    private static string Repository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "ShopPlanner.sln")))
            folder =
                Path.GetDirectoryName(folder)
                ?? throw new InvalidOperationException("ShopPlanner.sln is in no folder above the tests");
        return folder;
    }
}
