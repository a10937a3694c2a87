using System.Reflection;

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

    /// <summary>How wide a text runs, in the unit of <paramref name="size"/>.</summary>
    public static double Width(string text, Weight weight, double size) => Of(weight).Width(text, size);

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
