using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>Steps marked and notes written by a tablet that keeps them until there is a network.</summary>
public sealed class NotedStepTests
{
    private static readonly Guid Tablet = new("0b6f1d52-3a54-4c6e-9d7d-2f3c6f0a1b11");

    [Fact]
    public async Task What_comes_late_changes_nothing_that_was_said_after_it()
    {
        await using var given = await PlannedShop.OpenAsync();
        var work = given.Shop.Get<IWorkService>();
        var project = given.Project.Id;
        var added = await work.AddStepAsync(project, WorkPage.Build, "Glue the frame", "", CommandId.New(), TestShop.Cancel);
        var step = added.Value!.Steps.Single(one => one.Title == "Glue the frame").Step.Id;

        Assert.True((await work.MarkAsync(project, step, StepMark.Open, Id(4), TestShop.Cancel)).Ok);
        Assert.True((await work.NoteAsync(project, step, "Squeeze-out wiped", Id(3), TestShop.Cancel)).Ok);
        Assert.True((await work.MarkAsync(project, step, StepMark.Done, Id(2), TestShop.Cancel)).Ok);
        var late = await work.NoteAsync(project, step, "", Id(1), TestShop.Cancel);

        Assert.True(late.Ok);
        var now = late.Value.Steps.Single(one => one.Step.Id == step);
        Assert.Equal((StepMark.Open, "Squeeze-out wiped"), (now.Mark, now.Note));
    }

    private static CommandId Id(long number) => new(Guid.CreateVersion7()) { Turn = new(Tablet, number) };
}
