using System.Globalization;
using System.Xml.Linq;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Tests;

/// <summary>Reads an SVG back: where its shapes lie and what its text covers, by the font's own widths.</summary>
internal sealed class SvgText
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly XElement root;

    public SvgText(string svg)
    {
        root = XDocument.Parse(svg).Root!;
        var size = root.Attribute("viewBox")!.Value.Split(' ');
        Page = new(0, 0, Parse(size[2]), Parse(size[3]));
    }

    public Box Page { get; }

    public IReadOnlyList<Box> Rectangles(string style) =>
        [.. root.Descendants(Svg + "rect").Where(r => r.Attribute("class")!.Value == style).Select(Rectangle)];

    public IReadOnlyList<(string Words, Box Box)> Texts => [.. root.Descendants(Svg + "text").Select(t => (t.Value, Covered(t)))];

    public int Count(string element, string style) =>
        root.Descendants(Svg + element).Count(e => e.Attribute("class")?.Value == style);

    /// <summary>Every shape's box, lines and texts too.</summary>
    public IEnumerable<Box> Everything =>
        root.Descendants(Svg + "rect")
            .Select(Rectangle)
            .Concat(root.Descendants(Svg + "path").SelectMany(Lines))
            .Concat(Texts.Select(t => t.Box));

    public IEnumerable<string> Ids => root.DescendantsAndSelf().Select(e => e.Attribute("id")?.Value).OfType<string>();

    private static Box Rectangle(XElement r) => new(Of(r, "x"), Of(r, "y"), Of(r, "width"), Of(r, "height"));

    private static IEnumerable<Box> Lines(XElement path) =>
        path.Attribute("d")!
            .Value.Split('M', StringSplitOptions.RemoveEmptyEntries)
            .Select(line =>
            {
                var ends = line.Split('L', ' ').Select(Parse).ToArray();
                var (x1, y1, x2, y2) = (ends[0], ends[1], ends[2], ends[3]);
                return new Box(Math.Min(x1, x2), Math.Min(y1, y2), Math.Abs(x1 - x2), Math.Abs(y1 - y2));
            });

    // From the top of a figure down to a little under the base line.
    private static Box Covered(XElement text)
    {
        var style = text.Attribute("class")!.Value.Split(' ');
        var weight =
            style.Contains("bold") ? Weight.Bold
            : style.Contains("medium") ? Weight.Medium
            : Weight.Regular;
        var (size, up, down) = (Of(text, "font-size"), 0.70, 0.15);
        var length = Typeface.Width(text.Value, weight, size);
        var before = text.Attribute("text-anchor")?.Value switch
        {
            "middle" => length / 2,
            "end" => length,
            _ => 0,
        };
        if (text.Attribute("transform") is not { } transform)
            return new(Of(text, "x") - before, Of(text, "y") - (up * size), length, (up + down) * size);
        var at = transform.Value["translate(".Length..].Split(')')[0].Split(' ');
        return new(Parse(at[0]) + Of(text, "y") - (up * size), Parse(at[1]) + before - length, (up + down) * size, length);
    }

    private static double Of(XElement element, string attribute) => Parse(element.Attribute(attribute)!.Value);

    private static double Parse(string number) => double.Parse(number, CultureInfo.InvariantCulture);
}
