using System.Xml.Linq;
using ShopPlanner.Core.Designs.Export;

namespace ShopPlanner.Core.Tests.Designs.Export;

/// <summary>Outlines of shaped parts at full size: 10 by 4 in are 254 by 101.6 mm.</summary>
public sealed class PartOutlineTests
{
    [Theory]
    [InlineData(
        """{ "kind": "corner", "through": "z", "radius": "1 in" }""",
        "M25.4 0H228.6A25.4 25.4 0 0 1 254 25.4V76.2A25.4 25.4 0 0 1 228.6 101.6H25.4A25.4 25.4 0 0 1 0 76.2V25.4A25.4 25.4 0 0 1 25.4 0Z"
    )]
    [InlineData(
        """{ "kind": "taper", "faces": "back", "end": "right", "from": "4 in", "to": "3 in" }""",
        "M0 0H254V76.2L101.6 101.6H0Z"
    )]
    [InlineData("""{ "kind": "bevel", "edge": "right", "keeps": "front", "angle": 45 }""", "M0 0H254L152.4 101.6H0Z")]
    [InlineData(
        """{ "kind": "notch", "through": "z", "edge": "front", "deep": "1 in", "long": "2 in", "from": "3 in" }""",
        "M0 0H76.2V25.4H127V0H254V101.6H0Z"
    )]
    [InlineData(
        """{ "kind": "notch", "through": "z", "edge": "back", "deep": "1 in", "long": "2 in" }""",
        "M0 0H254V101.6H50.8V76.2H0Z"
    )]
    // A chord of 8 in and a rise of 2 in: (4² + 2²) ÷ 4 = 5 in, 127 mm.
    [InlineData(
        """{ "kind": "arc", "edge": "back", "run": "x", "from": "1 in", "to": "1 in", "rise": "2 in" }""",
        "M0 0H254V101.6H228.6A127 127 0 0 0 25.4 101.6H0Z"
    )]
    // A chord of 10 in and a rise of 1 in: (5² + 1²) ÷ 2 = 13 in, 330.2 mm.
    [InlineData(
        """{ "kind": "arc", "edge": "front", "run": "x", "rise": "1 in", "bend": "crown" }""",
        "M0 25.4A330.2 330.2 0 0 1 254 25.4V101.6H0Z"
    )]
    public void What_is_cut_right_through_shows_in_the_outline(string shape, string path) =>
        Assert.Equal(path, Of(shape).Element(Space + "path")!.Attribute("d")!.Value);

    [Fact]
    public void Holes_are_circles()
    {
        var circle = Of("""{ "kind": "hole", "face": "top", "x": "2 in", "y": "1 in", "diameter": "1/2 in" }""")
            .Element(Space + "circle")!;
        Assert.Equal(
            ("50.8", "25.4", "6.35"),
            (circle.Attribute("cx")!.Value, circle.Attribute("cy")!.Value, circle.Attribute("r")!.Value)
        );
    }

    [Fact]
    public void Where_cuts_run_into_each_other_the_blank_is_drawn_and_the_title_says_so()
    {
        var svg = Of(
            """
            { "kind": "notch", "through": "z", "edge": "front", "deep": "1 in", "long": "2 in", "from": "1/2 in" },
            { "kind": "corner", "through": "z", "radius": "1 in" }
            """
        );
        Assert.NotNull(svg.Element(Space + "rect"));
        Assert.Equal("A Board: blank, its cuts are not drawn", svg.Element(Space + "title")!.Value);
    }

    private static XNamespace Space => "http://www.w3.org/2000/svg";

    private static XElement Of(string shapes) =>
        XDocument
            .Parse(
                PartSvg.Write(
                    Made.Piece(
                        $$"""
                        {
                          "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Shaped",
                          "dimensions": [ { "name": "width", "value": "10" }, { "name": "depth", "value": "4" }, { "name": "height", "value": "1" } ],
                          "materials": [ { "role": "sheet", "name": "Plywood", "form": "sheet", "thickness": "1" } ],
                          "frame": { "kind": "none" },
                          "parts": [ { "name": "Board", "material": "sheet", "length": "10 in", "width": "4 in", "along": "x", "flat": "z",
                            "at": [ [ "0 in", "0 in", "0 in" ] ], "shapes": [ {{shapes}} ] } ]
                        }
                        """
                    ).Parts[0]
                )
            )
            .Root!;
}
