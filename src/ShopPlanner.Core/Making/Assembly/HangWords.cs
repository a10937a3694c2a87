using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>The steps of doors, lids and leaves.</summary>
/// <param name="name">What one is called.</param>
/// <param name="count">How many there are.</param>
internal sealed class HangWords(string name, int count)
{
    private readonly string them = count > 1 ? "the " + UnitNames.Plural(name) : "the " + name.ToLowerInvariant();
    private readonly bool isDoor = name == "Door";

    public WorkStep Fit(string id, ImmutableArray<string> marks, ImmutableArray<string> after, WorkPhase phase) =>
        new(
            id,
            phase,
            WorkAction.FitDoor,
            $"Trim {them} to the measured opening",
            [
                "Measure the opening at both sides, above and below. Enter its width and height: the size of the door follows.",
                "Plane or saw edges and ends to that size, a little from each side.",
            ],
            marks,
            after,
            20 * count
        )
        {
            Tool = "saw with a guide, plane",
            Cautions = [Cautions.Guards],
            Source = Sources.DoorTrim,
        };

    public WorkStep Hang(string id, WorkPhase phase) =>
        new(id, phase, WorkAction.Hang, $"Hang {them}", [.. Says()], [], [], 20 * count)
        {
            Tool = "drill and driver, shims",
            Cautions = [Cautions.Drilling],
            Source = Sources.DoorTrim,
        };

    public WorkStep TakeOff(string id, ImmutableArray<string> marks, ImmutableArray<string> after) =>
        new(
            id,
            WorkPhase.Fitting,
            WorkAction.TakeOff,
            $"Take {them} off for the finish",
            ["Mark each hinge with its place, take the hinges off, and keep their screws with them."],
            marks,
            after,
            5 * count
        )
        {
            Source = FinishSources.Hinges,
        };

    public WorkStep PutBack(string id, ImmutableArray<string> marks, ImmutableArray<string> after) =>
        new(
            id,
            WorkPhase.InPlace,
            WorkAction.Hang,
            $"Hang {them} again",
            ["Put each hinge back where it was, and check the gaps once more."],
            marks,
            after,
            10 * count
        )
        {
            Source = FinishSources.Hinges,
        };

    private IEnumerable<string> Says()
    {
        if (!isDoor)
        {
            yield return "Set it in its place, mark the hinges on both parts, drill pilot holes, and screw them on.";
            yield return "Mount supports as their maker says, and try it at every angle. Mind your fingers.";
            yield break;
        }

        yield return "Set the door in its place on shims as thick as the gap, all around.";
        yield return "Mark the hinges on both parts, drill pilot holes, and drive one screw in each hinge.";
        yield return "Check that the gaps are even and the door swings freely, then drive the other screws.";
    }
}
