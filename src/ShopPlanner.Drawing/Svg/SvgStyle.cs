using System.Globalization;
using System.Text;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Svg;

/// <summary>How a drawing's style classes look: colours are the page's own variables, so light and dark need no second
/// drawing.</summary>
public static class SvgStyle
{
    /// <summary>Rules for a page that holds drawings: include once. Colours come from the page's <c>--ink</c>,
    /// <c>--faded-ink</c>, <c>--grain</c>, <c>--chalk</c>, <c>--pencil</c>, <c>--done</c> and <c>--paper</c>; where one is
    /// missing, the light one is used.
    /// <c>--wood-opacity</c> below 1 lets a dark page show through the wood.</summary>
    public static string Sheet { get; } = Rules();

    /// <summary>The rules with colours for both themes, for a file of its own.</summary>
    public static string Alone { get; } =
        $"svg{{{Variables(t => t.Light)}--wood-opacity:1;background:var(--paper)}}\n"
        + $"@media (prefers-color-scheme:dark){{svg{{{Variables(t => t.Dark)}--wood-opacity:.26}}}}\n"
        + Sheet;

    internal static string ClassOf(Fill fill) =>
        fill switch
        {
            Fill.Wood => "wood",
            Fill.Kerf => "kerf",
            Fill.Paper => "blank",
            Fill.Clear => "clear",
            _ => "cut",
        };

    internal static string ClassOf(Caption caption) =>
        string.Join(
            ' ',
            new[] { WeightClass(caption.Weight), ToneClass(caption.Tone) }.Where(c => c.Length > 0).DefaultIfEmpty("words")
        );

    private static string WeightClass(Weight weight) =>
        weight switch
        {
            Weight.Bold => "bold",
            Weight.Medium => "medium",
            _ => "",
        };

    private static string ToneClass(Tone tone) => tone == Tone.Ink ? "" : "in-" + Name(tone);

    private static string Rules()
    {
        var css = new StringBuilder();
        css.Append(".line-drawing{display:block;width:100%;height:auto}\n");
        css.Append(CultureInfo.InvariantCulture, $".line-drawing text{{font-family:'{Typeface.Family}',sans-serif;");
        css.Append(CultureInfo.InvariantCulture, $"fill:{Variable(Tone.Ink)};font-kerning:none}}\n");
        css.Append(".line-drawing .medium{font-weight:500}\n.line-drawing .bold{font-weight:700}\n");
        foreach (var ink in Palette.All.Skip(1))
            css.Append(CultureInfo.InvariantCulture, $".line-drawing .in-{Name(ink.Tone)}{{fill:{Variable(ink.Tone)}}}\n");
        foreach (var pen in Pen.All)
            css.Append(Rule(pen));
        css.Append(".line-drawing .wood{fill-opacity:var(--wood-opacity,1)}\n");
        css.Append(CultureInfo.InvariantCulture, $".line-drawing .kerf{{fill:{Variable(Tone.Ink)};fill-opacity:.75}}\n");
        css.Append(CultureInfo.InvariantCulture, $".line-drawing .blank{{fill:{Variable(Tone.Paper)};fill-opacity:.88}}\n");
        css.Append(CultureInfo.InvariantCulture, $".line-drawing .cut{{fill:{Variable(Tone.Done)};fill-opacity:.22}}\n");
        return css.ToString();
    }

    private static string Rule(Pen pen)
    {
        var dashes = pen.Dashes.IsEmpty ? "" : ";stroke-dasharray:" + string.Join(' ', pen.Dashes.Select(Number));
        var round = pen.Style is "keep" or "next-cut" ? ";stroke-linecap:round" : "";
        return ".line-drawing "
            + $".{pen.Style}{{fill:none;stroke:{Variable(pen.Tone)};stroke-width:{Number(pen.Width)}{dashes}{round}}}\n";
    }

    private static string Variables(Func<Ink, string> colour) =>
        string.Concat(Palette.All.Select(ink => $"{ink.Variable}:{colour(ink)};"));

    private static string Variable(Tone tone) => $"var({Palette.Of(tone).Variable},{Palette.Of(tone).Light})";

    private static string Name(Tone tone) => Palette.Of(tone).Variable[2..];

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
