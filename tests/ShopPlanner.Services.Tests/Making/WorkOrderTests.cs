using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Services.Tests.Making;

/// <summary>The order that a builder wants, as far as precedence allows it.</summary>
public sealed class WorkOrderTests
{
    // d waits for b and c, c waits for a.
    private static readonly ImmutableArray<WorkStep> Plan =
    [
        Step("a"),
        Step("b"),
        Step("c", "a"),
        Step("d", "b", "c"),
        Step("e"),
    ];

    [Theory]
    [InlineData("", "abcde")]
    [InlineData("edcba", "ebacd")]
    [InlineData("b", "abcde")]
    [InlineData("eabcd", "eabcd")]
    [InlineData("xeaybcd", "eabcd")]
    [InlineData("eeabcd", "eabcd")]
    public void Each_step_comes_after_what_it_waits_for(string wanted, string order)
    {
        var sorted = WorkOrder.Arrange(Plan, [.. wanted.Select(c => c.ToString())]);
        Assert.Equal(Plan.Length, sorted.Length);
        Assert.All(
            sorted.Index(),
            one => Assert.Subset(sorted.Take(one.Index).Select(s => s.Id).ToHashSet(), one.Item.After.ToHashSet())
        );
        Assert.Equal(order, string.Concat(sorted.Select(step => step.Id)));
    }

    [Fact]
    public void A_step_that_the_order_does_not_name_stands_behind_the_one_that_it_follows_in_the_plan() =>
        Assert.Equal(["e", "a", "b", "c", "d"], WorkOrder.Arrange(Plan, ["e", "a", "c", "d"]).Select(step => step.Id));

    [Fact]
    public void What_holds_a_step_back_is_named()
    {
        Assert.Equal("c", WorkOrder.Before(Plan, 0, 3)?.Id);
        Assert.Null(WorkOrder.Before(Plan, 3, 4));
        Assert.Equal("c", WorkOrder.After(Plan, 0, 4)?.Id);
        Assert.Null(WorkOrder.After(Plan, 3, 4));
    }

    private static WorkStep Step(string id, params string[] after) =>
        new(id, WorkPhase.Assembly, WorkAction.Join, id, [], [], [.. after], 1);
}
