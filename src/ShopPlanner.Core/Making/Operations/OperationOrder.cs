using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>
/// What comes before what on a part. Every rule leads from a stage to a later one, so no circle can arise; operations that no
/// rule connects may be done in any order.
/// </summary>
internal static class OperationOrder
{
    // On the same copy. Where a rule rests on a book, the step carries its source.
    private static readonly ImmutableArray<(Stage Before, Stage[] After)> OnOnePart =
    [
        (Stage.GlueUp, [Stage.Flatten, Stage.Size, Stage.Band]),
        (Stage.Flatten, [Stage.Size]),
        // Figures are measured from finished edges and ends.
        (
            Stage.Size,
            [
                Stage.Bevel,
                Stage.Band,
                Stage.Trench,
                Stage.Mortise,
                Stage.Tenon,
                Stage.Bore,
                Stage.Pins,
                Stage.Hinges,
                Stage.Notch,
                Stage.Shape,
            ]
        ),
        (Stage.Bevel, [Stage.Bore]),
        (Stage.Band, [Stage.Trench, Stage.Pins, Stage.Hinges, Stage.Notch]),
        // Pin holes are measured from the shelf or bottom that the dado takes.
        (Stage.Trench, [Stage.Pins, Stage.Notch, Stage.Shape]),
        // A fence needs the whole edge, a vise two flat faces.
        (Stage.Mortise, [Stage.Notch, Stage.Shape]),
        (Stage.Tenon, [Stage.Notch, Stage.Shape]),
        (Stage.Bore, [Stage.Shape]),
        (Stage.Notch, [Stage.Shape]),
    ];

    // What goes in is fitted to what takes it.
    private static readonly ImmutableArray<(Stage Before, Stage After)> OfOneJoint =
    [
        (Stage.Trench, Stage.Tenon),
        (Stage.Mortise, Stage.Tenon),
    ];

    /// <summary>The steps in an order that can be followed, each with the ids of those that come before it.</summary>
    public static ImmutableArray<WorkStep> Of(IEnumerable<Operation> operations)
    {
        var sorted = operations.OrderBy(one => one.Step.Phase).ThenBy(one => one.Stage).ToList();
        return
        [
            .. sorted.Select(
                (one, i) =>
                    one.Step with
                    {
                        After = [.. sorted.Take(i).Where(before => IsBefore(before, one)).Select(before => before.Step.Id)],
                    }
            ),
        ];
    }

    private static bool IsBefore(Operation one, Operation other)
    {
        if (OfOneJoint.Contains((one.Stage, other.Stage)) && one.Step.Joints.Intersect(other.Step.Joints).Any())
            return true;
        return Leads(one.Stage, other.Stage) && one.Step.Handles.Intersect(other.Step.Handles, StringComparer.Ordinal).Any();
    }

    // Edges are eased after all that is cut.
    private static bool Leads(Stage before, Stage after) =>
        after == Stage.Ease ? before < after : OnOnePart.Any(rule => rule.Before == before && rule.After.Contains(after));
}
