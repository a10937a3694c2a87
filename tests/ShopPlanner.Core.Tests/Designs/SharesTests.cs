using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>What equal shares leave over is spread evenly, so that what looks alike is alike.</summary>
public sealed class SharesTests
{
    private static readonly Length Sixtyfourth = Made.Inches(1m / 64);

    public static TheoryData<int> Depths => [.. Enumerable.Range(20, 23)];

    [Theory, MemberData(nameof(Depths))]
    public void No_strip_of_a_top_is_wider_than_its_board_leaves_after_jointing(int depth)
    {
        var piece = Made.Piece(
            File.ReadAllText(DesignFiles.PathOf("table"))
                .Replace("\"value\": \"32\"", $"\"value\": \"{depth}\"", StringComparison.Ordinal)
        );
        var strips = piece.Parts.Where(part => part.Assembly == "Top").ToList();
        Assert.All(strips, strip => Assert.True(strip.Width.Value <= Made.Inches(5.5m - 0.125m), strip.Width.Value.ToString()));
        Assert.All(strips, strip => Assert.True(strip.RoughWidth <= Made.Inches(5.5m)));
        // One setting of the fence rips them all; the outer ones are trimmed after the glue-up.
        Assert.Single(strips.Select(strip => strip.RoughWidth).Distinct());
        Assert.Equal(
            Made.Inches(depth),
            piece.Copies(strips[0].Name).Select(copy => copy.Box).Aggregate((a, b) => a.Around(b)).Dy
        );
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(8)]
    public void Equal_bays_mirror_each_other(int count)
    {
        for (var width = 40m; width < 41; width += 1m / 64)
        {
            var piece = Made.Piece(Bays(width, count));
            var bays = piece.Openings.Where(one => one.Path != "bays").Select(one => one.Box.Dx).ToList();
            for (var i = 0; i < count; i++)
                Assert.InRange(Math.Abs((bays[i] - bays[count - 1 - i]).Ticks), 0, 1);
            Assert.True(bays.Max() - bays.Min() <= Sixtyfourth);
        }
    }

    [Fact]
    public void Twin_drawers_are_one_part()
    {
        for (var width = 30m; width < 31; width += 1m / 64)
        {
            var piece = Made.Piece(Bays(width, 2, Drawers));
            foreach (var name in new[] { "Drawer front", "Drawer side", "Drawer back", "Drawer bottom" })
                Assert.Single(piece.Parts, part => part.Name == name);
        }
    }

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    public void Equal_drawers_differ_by_no_more_than_a_rule_shows(int count)
    {
        var piece = Made.Piece(
            Made.Carcass("30", "20", "33 1/64", Drawers.Replace("\"count\": 1", $"\"count\": {count}", StringComparison.Ordinal))
        );
        var fronts = piece.Copies("Drawer front").Select(copy => copy.Box.Dz).ToList();
        Assert.True(fronts.Max() - fronts.Min() <= Sixtyfourth);
    }

    private const string Drawers = """{ "kind": "drawers", "count": 1, "front": "case", "box": "box", "bottom": "thin" }""";

    private static string Bays(decimal width, int count, string fill = "")
    {
        var bay = $$"""{ "fills": [ {{fill}} ] }""";
        var all = string.Join(", ", Enumerable.Repeat(bay, count));
        return Made.Carcass(width.ToString(CultureInfo.InvariantCulture), "20", "30", "")
            .Replace(
                "\"fills\": [  ]",
                $$"""
                "split": { "kind": "divider", "material": "case" },
                "sizes": [ {{string.Join(", ", Enumerable.Repeat("\"*\"", count))}} ], "bays": [ {{all}} ]
                """,
                StringComparison.Ordinal
            );
    }
}
