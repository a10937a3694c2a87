using System.Text.Json.Nodes;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>The joint of a rail decides how long it is: a butted one ends at the legs, a tenoned one in them.</summary>
public sealed class RailJointTests
{
    // The table's legs are 60 - 2 x 2 - 2 x 3 1/2 = 49 in apart.
    [Theory]
    [InlineData("pocket", 49)]
    [InlineData("dowel", 49)]
    [InlineData("mortise", 51.5)]
    public void An_apron_is_as_long_as_its_joint_makes_it(string joint, double inches)
    {
        var piece = With("table", "joint", joint);
        Assert.Equal(Made.Inches((decimal)inches), piece.Parts.Single(part => part.Name == "Long apron").Length.Value);
        Assert.All(
            piece.Joints.Where(one => Made.NameOf(piece, one.From) is "Long apron" or "End apron" && one.Along != Axis.Z),
            one => Assert.Equal(joint == "mortise", one.Depth.IsPositive)
        );
    }

    // Between the legs 60 - 4 - 7 = 49 in. A 1 1/2 in apron takes a tenon 1/2 in thick (a third), a mortise four times as deep as it is
    // wide; but 3 1/2 - 1/4 - 1 1/2 = 1 3/4 in is all there is before the other mortise, 1/8 in of it glue room.
    [Fact]
    public void A_mortise_without_a_size_gets_the_usual_one()
    {
        var piece = With("table", "joint", "mortise", "tenon", "0 in");
        Assert.Equal(Made.Inches(49 + (2 * 1.625m)), piece.Parts.Single(part => part.Name == "Long apron").Length.Value);
    }

    // 3/4 in rails take a tenon 1/4 in thick, a mortise 1 in deep, a tenon 7/8 in long; legs 3 in square leave 2 1/4 in.
    [Fact]
    public void The_usual_tenon_follows_from_the_thickness_of_the_rail()
    {
        var piece = Made.Piece(Cabinet("3", "mortise"));
        Assert.Equal(Made.Inches(30 - 6 + (2 * 0.875m)), piece.Parts.First(part => part.Name == "Back rail").Length.Value);
    }

    [Fact]
    public void A_leg_too_thin_for_a_mortise_says_so()
    {
        var fault = Assert.Single(Made.Evaluate(Cabinet("1", "mortise")).Faults);
        Assert.Equal("frame.joint", fault.Field);
        Assert.Contains("leave no room for a mortise", fault.Message, StringComparison.Ordinal);
    }

    private static string Cabinet(string leg, string joint) =>
        Made.PostAndRail("")
            .Replace("\"2 in\"", $"\"{leg} in\"", StringComparison.Ordinal)
            .Replace("\"joint\": \"pocket\"", $"\"joint\": \"{joint}\"", StringComparison.Ordinal);

    private static Piece With(string name, params string[] changes)
    {
        var root = JsonNode.Parse(File.ReadAllText(DesignFiles.PathOf(name)))!;
        foreach (var pair in changes.Chunk(2))
            root["frame"]![pair[0]] = pair[1];
        return Made.Piece(root.ToJsonString());
    }
}
