using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Operations;

/// <summary>A project's own list of parts: nothing is known but sizes.</summary>
public sealed class PlainPartTests
{
    [Fact]
    public void Parts_are_cut_to_size_and_eased()
    {
        var steps = OperationList.Of([Part("A1", 30, 31), Part("B1", 20, 20)]);
        Assert.Equal("TrimToSize EaseEdges", string.Join(' ', steps.Select(one => one.Action)));
        Assert.Equal("A1", string.Join(' ', steps[0].Handles));
        Assert.Equal(Made.Inches(30), steps[0].Figure("Length"));
        Assert.Equal("A1 B1", string.Join(' ', steps[1].Handles));
        Assert.Contains(steps[0].Id, steps[1].After);
    }

    [Fact]
    public void Parts_that_come_from_the_saw_at_their_size_are_not_cut_again() =>
        Assert.DoesNotContain(OperationList.Of([Part("A1", 30, 30)]), one => one.Action == WorkAction.TrimToSize);

    [Fact]
    public void No_parts_ask_for_no_work() => Assert.Empty(OperationList.Of([]));

    private static PlainPart Part(string mark, decimal length, decimal rough) =>
        new("Shelf", mark, Made.Inches(length), Made.Inches(8), Made.Inches(rough), Made.Inches(8));
}
