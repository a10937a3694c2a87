using ShopPlanner.Core.Designs.Judging;

namespace ShopPlanner.Core.Tests.Designs.Bad;

/// <summary>A document that is wrong is refused, with a fault that names the place, the value and what would be right.</summary>
public sealed class BadDesignTests
{
    public static TheoryData<int> Numbers => [.. BadDesigns.All.Select(one => one.Number)];

    public static TheoryData<string> Names => [.. BadDesigns.Good.Keys];

    [Fact]
    public void There_are_many_of_both_versions()
    {
        Assert.True(BadDesigns.All.Count >= 161, $"{BadDesigns.All.Count}");
        Assert.Equal(BadDesigns.All.Count, BadDesigns.All.Select(one => one.Text).Distinct().Count());
        Assert.True(BadDesigns.All.Count(one => one.Text.Contains("\"version\":1", StringComparison.Ordinal)) > 40);
        Assert.True(BadDesigns.All.Count(one => one.Text.Contains("\"version\":2", StringComparison.Ordinal)) > 40);
    }

    [Theory, MemberData(nameof(Names))]
    public void What_they_are_made_from_is_right(string name)
    {
        var evaluation = Made.Evaluate(BadDesigns.Good[name]);
        Assert.Empty(evaluation.Faults);
        Assert.NotEmpty(PieceJudge.Of(evaluation.Piece!));
    }

    [Theory, MemberData(nameof(Numbers))]
    public void It_is_refused_at_its_place(int number)
    {
        var bad = BadDesigns.All[number - 1];
        var evaluation = Made.Evaluate(bad.Text);
        Assert.Null(evaluation.Piece);
        var fault = evaluation.Faults.FirstOrDefault(one =>
            one.Field == bad.Place && one.Message.Contains(bad.Says, StringComparison.Ordinal)
        );
        Assert.True(fault is not null, $"{number}: {bad.Place} {bad.Says}\n" + string.Join("\n", evaluation.Faults));
        // What is missing has no value.
        Assert.True(fault.Value.Length > 0 || IsOfNothing(fault.Message), $"{number} names no value: {fault}");
    }

    private static bool IsOfNothing(string message) =>
        message.StartsWith("is missing", StringComparison.Ordinal)
        || message.StartsWith("are missing", StringComparison.Ordinal)
        || message.StartsWith("is empty", StringComparison.Ordinal)
        || message.StartsWith("isn't JSON here", StringComparison.Ordinal)
        || message.StartsWith("must have width", StringComparison.Ordinal)
        || message.StartsWith("goes with bays", StringComparison.Ordinal)
        || message.StartsWith("asks for more than", StringComparison.Ordinal);
}
