using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>How a piece goes together: work on single parts first, nothing twice.</summary>
public sealed class StepTests
{
    private const string Shelves = """{ "kind": "adjustable-shelves", "material": "case", "count": "2" }""";

    [Theory]
    [MemberData(nameof(BuiltInDesignTests.Names), MemberType = typeof(BuiltInDesignTests))]
    public void Pin_holes_and_notches_come_before_all_that_joins_parts(string name)
    {
        var steps = DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>()).Piece!.Steps;
        Assert.Equal(steps.Distinct(), steps);
        var joined = steps.TakeWhile(step => !Joins(step)).Count();
        Assert.DoesNotContain(steps.Skip(joined), step => IsOnSingleParts(step));
    }

    [Fact]
    public void Pin_holes_of_two_bays_are_one_step()
    {
        var piece = Made.Piece(
            Made.Carcass("30", "12", "40", "")
                .Replace(
                    "\"fills\": [  ]",
                    $$"""
                    "split": { "kind": "fixed-shelf", "material": "case" }, "sizes": [ "*", "*" ],
                    "bays": [ { "fills": [ {{Shelves}} ] }, { "fills": [ {{Shelves}} ] } ]
                    """,
                    StringComparison.Ordinal
                )
        );
        Assert.Single(piece.Steps, step => step.Contains("pin holes", StringComparison.Ordinal));
    }

    [Fact]
    public void The_notch_for_a_toe_space_has_its_sizes()
    {
        var piece = Made.Piece(Made.Carcass("30", "12", "40", Shelves, """, "toe": "3 1/2 in", "toe_setback": "3 in" """));
        Assert.Contains(
            "Notch the lower front corner of both sides for the toe space: 3 ½″ high, 3″ deep.",
            piece.Steps[0],
            StringComparison.Ordinal
        );
        var sides = piece.Parts.Single(part => part.Name == "Side").Copies;
        Assert.All(sides, side => Assert.Equal(new ToeNotch(Length.FromInches(3), Length.FromInches(3, 1, 2)), side.ToeNotch));
        Assert.All(piece.Parts.SelectMany(part => part.Copies).Except(sides), copy => Assert.Empty(copy.Features));
    }

    [Fact]
    public void A_toe_board_flush_with_the_front_asks_for_no_notch()
    {
        var piece = Made.Piece(Made.Carcass("30", "12", "40", Shelves, """, "toe": "3 1/2 in", "toe_setback": "0 in" """));
        Assert.DoesNotContain(piece.Steps, step => step.StartsWith("Notch", StringComparison.Ordinal));
        Assert.All(piece.Parts.SelectMany(part => part.Copies), copy => Assert.Empty(copy.Features));
    }

    private static bool Joins(string step) =>
        step.Contains("glue", StringComparison.OrdinalIgnoreCase)
        || step.StartsWith("Screw", StringComparison.Ordinal)
        || step.StartsWith("Join ", StringComparison.Ordinal);

    private static bool IsOnSingleParts(string step) =>
        step.Contains("pin holes", StringComparison.Ordinal) || step.StartsWith("Notch", StringComparison.Ordinal);
}
