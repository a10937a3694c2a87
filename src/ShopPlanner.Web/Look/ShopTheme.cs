using MudBlazor;

namespace ShopPlanner.Web.Look;

/// <summary>The look of ready-made parts, from the same tokens as our own styles.</summary>
internal sealed class ShopTheme
{
    private static readonly string[] Fonts = ["Source Sans 3", "sans-serif"];

    /// <summary>Makes the theme from the tokens.</summary>
    public ShopTheme(LookTokens tokens) =>
        Theme = new MudTheme
        {
            PaletteLight = Fill(new PaletteLight(), tokens.Light),
            PaletteDark = Fill(new PaletteDark(), tokens.Dark),
            Typography = new Typography { Default = new DefaultTypography { FontFamily = Fonts } },
            LayoutProperties = new LayoutProperties { DefaultBorderRadius = "4px" },
        };

    /// <summary>For the theme provider.</summary>
    public MudTheme Theme { get; }

    private static T Fill<T>(T palette, IReadOnlyDictionary<string, string> colour)
        where T : Palette
    {
        palette.Primary = colour["chalk"];
        palette.PrimaryContrastText = colour["on-chalk"];
        palette.Error = colour["pencil"];
        palette.Success = colour["done"];
        palette.Background = colour["paper"];
        palette.Surface = colour["surface"];
        palette.TextPrimary = palette.ActionDefault = colour["ink"];
        palette.TextSecondary = colour["faded-ink"];
        palette.LinesDefault = palette.Divider = colour["hairline"];
        palette.LinesInputs = colour["edge"];
        return palette;
    }
}
