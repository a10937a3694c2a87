using System.Reflection;
using System.Text;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>How heavy the type is.</summary>
public enum Weight
{
    /// <summary>For reading.</summary>
    Regular,

    /// <summary>For marks.</summary>
    Medium,

    /// <summary>For figures a hand follows, and headings.</summary>
    Bold,
}

/// <summary>The one typeface of screen and paper: Source Sans 3 (SIL Open Font License 1.1), carried in this assembly.</summary>
public static class Typeface
{
    /// <summary>The family's name.</summary>
    public const string Family = "Source Sans 3";

    private static readonly Dictionary<Weight, Lazy<TrueTypeFont>> Fonts = Enum.GetValues<Weight>()
        .ToDictionary(w => w, w => new Lazy<TrueTypeFont>(() => Load(w)));

    /// <summary>The font of a weight.</summary>
    public static TrueTypeFont Of(Weight weight) => Fonts[weight].Value;

    /// <summary>How wide a text runs, in the unit of <paramref name="size"/>; letters that the typeface lacks as wide as in the
    /// font that has them.</summary>
    public static double Width(string text, Weight weight, double size)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (font, ems) = (Of(weight), 0.0);
        foreach (var rune in WritingOrder.Visual(text).EnumerateRunes())
            ems += Font(font, rune).Advance(rune);
        return ems * size;
    }

    /// <summary>A text as runs of one font each, in the order in which they are set; the file is null for the typeface
    /// itself.</summary>
    public static IEnumerable<(OtherFont? Other, string Text)> Runs(string text, Weight weight)
    {
        var (font, run, current) = (Of(weight), new StringBuilder(), (OtherFont?)null);
        foreach (var rune in WritingOrder.Visual(text).EnumerateRunes())
        {
            var other = font.Has(rune) ? null : OtherFonts.For(rune);
            if (other != current && run.Length > 0)
            {
                yield return (current, run.ToString());
                run.Clear();
            }

            current = other;
            run.Append(rune.ToString());
        }

        if (run.Length > 0)
            yield return (current, run.ToString());
    }

    /// <summary>How wide a run of one font is, in the unit of <paramref name="size"/>.</summary>
    public static double WidthOf(string run, OtherFont? other, Weight weight, double size) =>
        (other?.Font ?? Of(weight)).Width(run, size);

    private static TrueTypeFont Font(TrueTypeFont font, Rune rune) => font.Has(rune) ? font : OtherFonts.For(rune)?.Font ?? font;

    private static TrueTypeFont Load(Weight weight)
    {
        var name = $"SourceSans3-{weight}.ttf";
        using var stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"the font {name} is not in the assembly");
        var data = new byte[stream.Length];
        stream.ReadExactly(data);
        return new(data);
    }
}
