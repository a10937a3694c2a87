using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Tests.Designs.Export;

/// <summary>What holds a piece together, as a list to buy.</summary>
public sealed class FasteningTests
{
    private static readonly JointKind[] Screwed = [JointKind.Screwed, JointKind.PocketScrew, JointKind.Dowel];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_screwed_joint_of_a_built_in_piece_is_on_the_list_once(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        var list = Fastenings.Of(piece);
        Assert.Distinct(list.Select(one => one.Name));
        Assert.Equal(
            piece.Joints.Count(joint => Screwed.Contains(joint.Kind)),
            list.Where(one => one.Name != "Wood glue").Sum(one => one.Joints)
        );
    }

    // 3/4 in through 3/4 in: the longest common screw that stays 1/8 in short of the far face (common practice), as the packet draws
    // it.
    [Fact]
    public void Case_sides_butted_and_screwed_take_screws_through_the_side_and_no_glue()
    {
        var piece = Made.Piece(Made.Carcass("24", "12", "30", ""));
        var screws = Assert.Single(Fastenings.Of(piece), one => one.Name.StartsWith("Wood screws", StringComparison.Ordinal));
        Assert.Matches("^Wood screws, #[0-9]+ × [0-9 ½¼¾⅛⅜⅝⅞]+″$", screws.Name);
        Assert.Equal(piece.Joints.Count(joint => joint.Kind == JointKind.Screwed), screws.Joints);
    }

    [Fact]
    public void Let_in_parts_are_glued()
    {
        var piece = Made.Piece(Made.Carcass("24", "12", "30", "", """, "let_in": "1/4 in" """));
        var glue = Fastenings.Of(piece)[0];
        Assert.Equal(("Wood glue", piece.Joints.Count(joint => joint.Kind == JointKind.Dado)), (glue.Name, glue.Joints));
    }
}
