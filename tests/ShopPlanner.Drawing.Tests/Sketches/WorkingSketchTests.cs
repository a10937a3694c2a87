using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Sketches;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests.Sketches;

public sealed class WorkingSketchTests
{
    public static TheoryData<string> Forms() => [.. WorkingForms.All.Select(form => form.Name)];

    public static TheoryData<string, string, string> Awkward() =>
        new()
        {
            { "board-feet", "length", "40 ft" },
            { "board-feet", "width", "1/64" },
            { "board-feet", "length", "what?" },
            { "spacing", "span", "40 ft" },
            { "spacing", "member", "12 in" },
            { "spacing", "count", "500" },
            { "pins", "height", "7 in" },
            { "pins", "pitch", "1/2" },
            { "screws", "into", "24 in" },
            { "screws", "joint", "pocket" },
            { "screws", "joint", "edge" },
            { "dowels", "width", "10 ft" },
            { "stability", "height", "10 ft" },
            { "stability", "reach", "5 ft" },
            { "stability", "doors", "0" },
        };

    [Theory]
    [MemberData(nameof(Forms))]
    public void Every_form_has_a_drawing_even_before_anything_is_given(string name)
    {
        var drawing = Draw(name, []);
        StaysOnThePage(drawing);
        Assert.True(drawing.Primitives().Count() > 8, "there is next to nothing in it");
        Assert.NotEqual("", drawing.Description);
    }

    [Theory]
    [MemberData(nameof(Awkward))]
    public void Awkward_sizes_stay_on_the_page(string name, string key, string text) =>
        StaysOnThePage(Draw(name, new(Everyday(name)) { [key] = text }));

    public static TheoryData<string> Drawn() => [.. WorkingSketch.Names];

    [Theory]
    [MemberData(nameof(Drawn))]
    public void A_form_whose_keys_are_called_otherwise_is_drawn_with_everyday_sizes(string name) =>
        StaysOnThePage(
            WorkingSketch.Of(new(name, name, "", [], _ => null!), new Dictionary<string, string>(), LengthUnit.Inch, null)!
        );

    [Fact]
    public void Members_stand_where_the_answer_says_to_scale()
    {
        var drawing = Draw("spacing", Everyday("spacing"));
        var posts = drawing
            .Primitives()
            .OfType<Frame>()
            .Where(frame => frame.Box.Height > 50)
            .OrderBy(frame => frame.Box.X)
            .Select(frame => frame.Box)
            .ToList();
        Assert.Equal(5, posts.Count);
        var gaps = posts.Zip(posts.Skip(1), (one, next) => next.X - one.Right).ToList();
        Assert.All(gaps, gap => Assert.Equal(gaps[0], gap, 0.1));
        // 2 1/2 in wide, (32 1/2 − 5 × 2 1/2) ÷ 6 = 3 1/3 in apart.
        Assert.Equal(2.5 / (20.0 / 6), posts[0].Width / gaps[0], 0.01);
    }

    [Fact]
    public void Dimensions_are_the_texts_that_were_given_in_the_unit_that_is_shown()
    {
        var words = Draw("board-feet", Everyday("board-feet"))
            .Primitives()
            .OfType<Caption>()
            .Select(caption => caption.Words)
            .ToList();
        Assert.Contains("96″", words);
        Assert.Contains("6″", words);
        Assert.Contains("4 bd ft", words);
        Assert.Contains(
            "100 mm",
            Draw("board-feet", new() { ["width"] = "100" }, LengthUnit.Millimetre)
                .Primitives()
                .OfType<Caption>()
                .Select(caption => caption.Words)
        );
    }

    [Fact]
    public void It_is_written_as_one_picture_with_a_name()
    {
        var svg = SvgWriter.Write(Draw("stability", Everyday("stability")), "sketch");
        Assert.Contains("role=\"img\"", svg, StringComparison.Ordinal);
        Assert.Contains("Depth of the case 12", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_form_that_is_not_drawn_gives_nothing() =>
        Assert.Null(
            WorkingSketch.Of(new("horoscope", "", "", [], _ => null!), new Dictionary<string, string>(), LengthUnit.Inch, null)
        );

    private static Dictionary<string, string> Everyday(string name) =>
        name switch
        {
            "board-feet" => new()
            {
                ["thickness"] = "1",
                ["width"] = "6",
                ["length"] = "8 ft",
            },
            "spacing" => new()
            {
                ["span"] = "32 1/2",
                ["member"] = "2 1/2",
                ["count"] = "5",
            },
            "pins" => new() { ["height"] = "30" },
            "screws" => new() { ["thickness"] = "3/4", ["into"] = "1 1/2" },
            "dowels" => new() { ["thickness"] = "3/4", ["width"] = "4" },
            "stability" => new()
            {
                ["depth"] = "12",
                ["height"] = "36",
                ["weight"] = "60",
            },
            _ => [],
        };

    private static LineDrawing Draw(string name, Dictionary<string, string> given, LengthUnit unit = LengthUnit.Inch)
    {
        Assert.True(WorkingForms.TryFind(name, out var form));
        return WorkingSketch.Of(form, given, unit, form.Run(given, unit).Answer)
            ?? throw new InvalidOperationException($"{name} has no drawing");
    }

    private static void StaysOnThePage(LineDrawing drawing)
    {
        var svg = new SvgText(SvgWriter.Write(drawing, "s"));
        Assert.All(
            svg.Everything,
            box =>
                Assert.True(
                    box is { X: >= -1, Y: >= -1 } && box.Right <= svg.Page.Width + 1 && box.Bottom <= svg.Page.Height + 1,
                    $"{box} is off the page {svg.Page}"
                )
        );
    }
}
