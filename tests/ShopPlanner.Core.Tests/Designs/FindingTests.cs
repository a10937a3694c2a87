using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Findings on bottoms, fastenings and what can be climbed.</summary>
public sealed class FindingTests
{
    // 40 in high on legs 16 in apart: a counter without shelves is not climbed.
    [Fact]
    public void A_table_without_shelves_needs_no_wall()
    {
        var tall = File.ReadAllText(DesignFiles.PathOf("table"))
            .Replace("\"value\": \"32\"", "\"value\": \"20\"", StringComparison.Ordinal)
            .Replace("\"value\": \"29 1/2\"", "\"value\": \"40\"", StringComparison.Ordinal);
        Assert.DoesNotContain(PieceJudge.Of(Made.Piece(tall)), one => one.Severity == Severity.Anchor);
    }

    // Common practice: 1/4 in to 24 in wide, 1/2 in to 36 in.
    [Theory]
    [InlineData("26", "thin", 0)]
    [InlineData("40", "thin", 1)]
    [InlineData("36", "box", 0)]
    [InlineData("48", "box", 1)]
    public void A_drawer_s_bottom_that_is_wide_for_its_thickness_is_named(string width, string bottom, int told)
    {
        var drawers = $$"""{ "kind": "drawers", "count": 2, "front": "case", "box": "box", "bottom": "{{bottom}}" }""";
        var judged = PieceJudge.Of(Made.Piece(Made.Carcass(width, "20", "24", drawers)));
        Assert.Equal(told, judged.Count(one => one.Text.StartsWith("Drawer bottom", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_screw_that_would_come_out_is_named_with_the_joint()
    {
        var thin = Made.PostAndRail("")
            .Replace("\"2 in\"", "\"3/4 in\"", StringComparison.Ordinal)
            .Replace(
                "\"thickness\": \"3/4\", \"width\": \"2 1/2\"",
                "\"thickness\": \"3/8\", \"width\": \"2 1/2\"",
                StringComparison.Ordinal
            );
        var found = PieceJudge.Of(Made.Piece(thin)).First(one => one.Text.Contains(" to leg: ", StringComparison.Ordinal));
        Assert.Equal(Severity.Fails, found.Severity);
        Assert.Contains("is too thin for a pocket screw", found.Text, StringComparison.Ordinal);
    }
}
