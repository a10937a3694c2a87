using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Tests.Designs.Joining;

/// <summary>What holds a piece together, as a list to buy.</summary>
public sealed class FasteningTests
{
    private static readonly JointKind[] Bought =
    [
        JointKind.Screwed,
        JointKind.PocketScrew,
        JointKind.Dowel,
        JointKind.Rabbet,
        JointKind.Slotted,
    ];

    private static readonly JointKind[] Glued =
    [
        JointKind.Glued,
        JointKind.Dado,
        JointKind.Rabbet,
        JointKind.MortiseAndTenon,
        JointKind.Dovetail,
        JointKind.Dowel,
    ];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_joint_of_a_built_in_piece_is_on_the_list_once(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        var list = Fastenings.Of(piece);
        Assert.Distinct(list.Select(one => one.Name));
        Assert.Equal(
            piece.Joints.Count(joint => Bought.Contains(joint.Kind)),
            list.Where(one => !IsGlue(one)).Sum(one => one.Joints)
        );
        Assert.Equal(piece.Joints.Count(joint => Glued.Contains(joint.Kind)), list.Where(IsGlue).Sum(one => one.Joints));
        Assert.All(list, one => Assert.True(one.Quantity > 0));
        Assert.All(list, one => Assert.Contains(piece.Hardware, item => (item.Name, item.Quantity) == (one.Name, one.Quantity)));
    }

    // 3/4 in through 3/4 in: the longest common screw that stays 1/8 in short of the far face (common practice), as the packet draws
    // it. Along 12 in at most 6 in apart, 1 1/2 in from the ends: 9 in take three.
    [Fact]
    public void Case_sides_butted_and_screwed_take_screws_through_the_side_and_no_glue()
    {
        var piece = Made.Piece(Made.Carcass("24", "12", "30", ""));
        var screws = Assert.Single(Fastenings.Of(piece));
        Assert.Matches("^Wood screws, #[0-9]+ × [0-9 ½¼¾⅛⅜⅝⅞]+″$", screws.Name);
        Assert.Equal((4, 4 * 3), (screws.Joints, screws.Quantity));
    }

    [Fact]
    public void Let_in_parts_are_glued()
    {
        var piece = Made.Piece(Made.Carcass("24", "12", "30", "", """, "let_in": "1/4 in" """));
        var glue = Assert.Single(Fastenings.Of(piece));
        Assert.Equal(("Wood glue, bottle of 4 fl oz (118 mL)", 1, 4), (glue.Name, glue.Quantity, glue.Joints));
    }

    // A 1 1/2 in apron takes 5/8 in dowels, the rod nearest to 2/5 of it; along 3 1/2 in there is room for two (common practice).
    [Fact]
    public void Dowels_are_counted_by_size()
    {
        var piece = Made.Piece(
            File.ReadAllText(DesignFiles.PathOf("table"))
                .Replace("\"joint\": \"mortise\"", "\"joint\": \"dowel\"", StringComparison.Ordinal)
        );
        var dowels = Assert.Single(Fastenings.Of(piece), one => one.Name.StartsWith("Dowels, ", StringComparison.Ordinal));
        Assert.StartsWith("Dowels, ⅝″ × ", dowels.Name, StringComparison.Ordinal);
        Assert.Equal((8, 16), (dowels.Joints, dowels.Quantity));
    }

    [Fact]
    public void A_top_that_may_move_has_its_fasteners()
    {
        var table = Made.Piece(File.ReadAllText(DesignFiles.PathOf("table")));
        var tops = Assert.Single(table.Hardware, one => one.Name.StartsWith("Top fasteners", StringComparison.Ordinal));
        Assert.True(tops.Quantity >= 8);
    }

    private static bool IsGlue(Fastening one) => one.Name.StartsWith("Wood glue", StringComparison.Ordinal);
}
