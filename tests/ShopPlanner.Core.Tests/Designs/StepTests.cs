using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>A piece's sentences say what boxes and joints don't tell, nothing twice; the rest is left to the order of
/// work.</summary>
public sealed class StepTests
{
    private const string Shelves = """{ "kind": "adjustable-shelves", "material": "case", "count": "2" }""";
    private const string Doors = """{ "kind": "sliding-doors", "material": "case" }""";

    private static readonly string[] Worked =
    [
        "dado",
        "rabbet",
        "pin hole",
        "mortise",
        "diagonal",
        "spacer",
        "dry-fit",
        "edge band",
        "toe space",
    ];

    [Theory]
    [MemberData(nameof(BuiltInDesignTests.Names), MemberType = typeof(BuiltInDesignTests))]
    public void What_the_order_of_work_says_is_not_said_by_the_piece(string name)
    {
        var steps = DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>()).Piece!.Steps;
        Assert.Equal(steps.Distinct(), steps);
        Assert.DoesNotContain(steps, step => Worked.Any(word => step.Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public void What_two_bays_bring_alike_is_said_once()
    {
        var piece = Made.Piece(
            Made.Carcass("30", "12", "40", "")
                .Replace(
                    "\"fills\": [  ]",
                    $$"""
                    "split": { "kind": "fixed-shelf", "material": "case" }, "sizes": [ "*", "*" ],
                    "bays": [ { "fills": [ {{Doors}} ] }, { "fills": [ {{Doors}} ] } ]
                    """,
                    StringComparison.Ordinal
                )
        );
        Assert.Single(piece.Steps, step => step.StartsWith("Try a sliding door", StringComparison.Ordinal));
    }

    [Fact]
    public void The_notch_for_a_toe_space_has_its_sizes()
    {
        var piece = Made.Piece(Made.Carcass("30", "12", "40", Shelves, """, "toe": "3 1/2 in", "toe_setback": "3 in" """));
        var sides = piece.Parts.Single(part => part.Name == "Side").Copies;
        Assert.All(sides, side => Assert.Equal(new ToeNotch(Length.FromInches(3), Length.FromInches(3, 1, 2)), side.ToeNotch));
        Assert.All(piece.Parts.SelectMany(part => part.Copies).Except(sides), copy => Assert.Empty(copy.Features));
    }

    [Fact]
    public void A_toe_board_flush_with_the_front_asks_for_no_notch()
    {
        var piece = Made.Piece(Made.Carcass("30", "12", "40", Shelves, """, "toe": "3 1/2 in", "toe_setback": "0 in" """));
        Assert.All(piece.Parts.SelectMany(part => part.Copies), copy => Assert.Empty(copy.Features));
    }
}
