using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Backs, stretchers and rails of a case of sheet goods: what goes together, and what is refused where it is
/// chosen.</summary>
public sealed class CarcassTests
{
    private const string Divider = """
        "split": { "kind": "divider", "material": "case", "let_in": "1/4 in" }, "bays": [ {}, {} ]
        """;

    [Theory]
    [InlineData("planted")]
    [InlineData("rabbet")]
    [InlineData("let-in")]
    public void Stretchers_leave_room_for_any_back_and_a_divider_is_let_into_both(string fit)
    {
        var frame = $$""", "back": "thin", "back_fit": "{{fit}}", "over": "stretchers" """;
        var json = Made.Carcass("30", "12", "30", "", frame).Replace("\"fills\": [  ]", Divider, StringComparison.Ordinal);
        var piece = Made.Piece(json);
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
        Assert.Equal(
            ["Bottom", "Stretcher", "Stretcher"],
            piece
                .Joints.Where(one => Made.NameOf(piece, one.From) == "Divider")
                .Select(one => Made.NameOf(piece, one.Into))
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Stretchers_that_meet_are_refused()
    {
        var fault = Assert.Single(Made.Evaluate(Made.Carcass("30", "6", "30", "", """, "over": "stretchers" """)).Faults);
        Assert.Equal("frame.stretcher", fault.Field);
        Assert.Contains("is too wide: the two stretchers meet, at most 3″", fault.Message, StringComparison.Ordinal);
    }

    // Sides of 12 in hide a back of 1/4 in: 30 - 2 x 3/4 + 2 x 1/4 = 29 in wide, up to 1/4 in within the top.
    [Fact]
    public void A_back_in_a_rabbet_is_hidden_by_sides_and_top()
    {
        var piece = Made.Piece(Made.Carcass("30", "12", "30", "", """, "back": "thin", "back_fit": "rabbet" """));
        var back = piece.Parts.Single(part => part.Name == "Back");
        Assert.Equal((Made.Inches(29), Made.Inches(29.5m)), (back.Width.Value, back.Length.Value));
        Assert.Equal(Made.Inches(12), piece.Parts.Single(part => part.Name == "Side").Width.Value);
        Assert.Equal(Made.Inches(11.75m), piece.Parts.Single(part => part.Name == "Bottom").Width.Value);
        Assert.Equal(3, piece.Joints.Count(joint => joint.Kind == JointKind.Rabbet));
    }

    // Grooves 1/4 in deep, 1/32 in of room at each edge: 28 1/2 + 2 x 7/32 = 28 15/16 in.
    [Fact]
    public void A_back_that_is_let_in_has_room_in_its_grooves()
    {
        var piece = Made.Piece(Made.Carcass("30", "12", "30", "", """, "back": "thin", "back_fit": "let-in" """));
        Assert.Equal(Made.Inches(28.9375m), piece.Parts.Single(part => part.Name == "Back").Width.Value);
    }

    [Theory]
    [InlineData("3/4 in", 0)]
    [InlineData("1/2 in", 1)]
    public void A_hanging_rail_goes_between_back_and_wall_or_the_empty_space_is_told(string setback, int told)
    {
        var frame = $$""", "back": "thin", "back_fit": "let-in", "back_setback": "{{setback}}" """;
        var piece = Made.Piece(Made.Carcass("30", "12", "30", """{ "kind": "hanging-rail", "material": "stile" }""", frame));
        Assert.Equal(told, piece.Warnings.Count(one => one.Severity == Severity.Fails));
        var (rail, back) = (piece.Copies("Hanging rail").Single().Box, piece.Copies("Back").Single().Box);
        Assert.Equal(told == 0, rail.Y == back.EndY);
        // 28 1/2 in of rail can lie on two studs that are 16 in apart.
        Assert.Equal(4, piece.Hardware.Single(one => one.Name.Contains("for the wall", StringComparison.Ordinal)).Quantity);
    }

    [Theory]
    [InlineData("divider")]
    [InlineData("fixed-shelf")]
    public void More_than_half_of_what_takes_it_is_no_dado(string split)
    {
        var json = Made.Carcass("30", "12", "30", "")
            .Replace(
                "\"fills\": [  ]",
                $$"""
                "split": { "kind": "{{split}}", "material": "case", "let_in": "1/2 in" }, "bays": [ {}, {} ]
                """,
                StringComparison.Ordinal
            );
        var fault = Made.Evaluate(json).Faults[0];
        Assert.Equal("bays.split.let_in", fault.Field);
        Assert.Contains("at most 3/8", fault.Message.Replace("⅜", "3/8", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // Flush with the upper edges of the lower rails, which are 2 1/2 in wide and 4 in above the floor.
    [Fact]
    public void Slats_between_posts_end_at_the_front_and_back_rails()
    {
        var piece = Made.Piece(Made.PostAndRail("""{ "kind": "slats", "material": "stile", "count": 6, "lie": "across" }"""));
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
        Assert.All(piece.Copies("Slat"), slat => Assert.Equal(Made.Inches(6.5m), slat.Box.EndZ));
        Assert.Equal(12, piece.Joints.Count(one => one.Kind == JointKind.PocketScrew && Made.NameOf(piece, one.From) == "Slat"));
    }

    // Behind the front rail and before the back one, down to their lower edges: 34 in less the foot of 4 in.
    [Fact]
    public void Between_posts_a_divider_is_screwed_to_the_rails()
    {
        var json = Made.PostAndRail("")
            .Replace(
                "\"fills\": [  ]",
                """ "split": { "kind": "divider", "material": "case" }, "bays": [ {}, {} ] """,
                StringComparison.Ordinal
            );
        var piece = Made.Piece(json);
        Assert.Equal(Made.Inches(30), piece.Parts.Single(part => part.Name == "Divider").Length.Value);
        Assert.Equal(
            ["Back rail", "Back rail", "Front rail", "Front rail"],
            piece
                .Joints.Where(one => Made.NameOf(piece, one.From) == "Divider")
                .Select(one => Made.NameOf(piece, one.Into))
                .Order(StringComparer.Ordinal)
        );
    }
}
