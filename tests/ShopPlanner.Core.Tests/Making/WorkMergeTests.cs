using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making;

/// <summary>Work on parts, assembly and finish in one order.</summary>
public sealed class WorkMergeTests
{
    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void Parts_are_worked_and_coated_before_they_are_joined_and_the_rest_is_finished_after(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        var assembly = AssemblyOrder.Of(piece, WorkChoices.Usual);
        var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToList();
        var plan = WorkMerge.Of(
            piece.Name,
            piece.Unit,
            [.. marks.Select(mark => Step("sand:" + mark, WorkPhase.Parts, WorkAction.Sand, mark))],
            assembly,
            new(
                [
                    Step("edges", WorkPhase.FinishBefore, WorkAction.Coat, marks[0]),
                    Step("coat", WorkPhase.Finish, WorkAction.Coat),
                    Step("coat-2", WorkPhase.Finish, WorkAction.Coat) with
                    {
                        After = ["coat"],
                    },
                ],
                null,
                []
            )
        );
        Assert.Equal(assembly.Steps.Length + marks.Count + 3, plan.Steps.Length);
        var place = plan.Steps.Select((step, i) => (step.Id, i)).ToDictionary(one => one.Id, one => one.i);
        Assert.All(plan.Steps, step => Assert.All(step.After, before => Assert.True(place[before] < place[step.Id])));
        foreach (var mark in marks)
        {
            var first = plan.Steps.First(step => step.Phase > WorkPhase.FinishBefore && step.Handles.Contains(mark));
            Assert.Contains("sand:" + mark, All(plan, first.Id));
        }

        Assert.Contains("sand:" + marks[0], All(plan, "edges"));
        var joined = plan.Steps.First(step => step.Moves.Length > 0 && step.Handles.Contains(marks[0]));
        Assert.Contains("edges", All(plan, joined.Id));
        foreach (var step in plan.Steps.Where(step => step.Phase is WorkPhase.Assembly or WorkPhase.Fitting))
            Assert.Contains(step.Id, All(plan, "coat"));
        foreach (var step in plan.Steps.Where(step => step.Phase == WorkPhase.InPlace))
            Assert.Contains("coat-2", All(plan, step.Id));
    }

    [Fact]
    public void Steps_in_a_circle_are_named()
    {
        var wrong = Assert.Throws<InvalidOperationException>(() =>
            StepOrder.Sort([
                Step("one", WorkPhase.Parts, WorkAction.Sand) with
                {
                    After = ["two"],
                },
                Step("two", WorkPhase.Parts, WorkAction.Sand) with
                {
                    After = ["one"],
                },
            ])
        );
        Assert.Contains("one, two", wrong.Message, StringComparison.Ordinal);
    }

    private static WorkStep Step(string id, WorkPhase phase, WorkAction action, params string[] handles) =>
        new(id, phase, action, id, [id], [.. handles], [], 1);

    // All that comes before a step by what steps name.
    private static HashSet<string> All(WorkPlan plan, string id)
    {
        var steps = plan.Steps.ToDictionary(step => step.Id);
        var (found, open) = (new HashSet<string>(), new Stack<string>([id]));
        while (open.TryPop(out var next))
            foreach (var before in steps[next].After.Where(found.Add))
                open.Push(before);
        return found;
    }
}
