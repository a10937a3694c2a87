using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Making;

/// <summary>Plans the work between the last cut and the finished piece.</summary>
public static class WorkPlanner
{
    /// <summary>Returns the plan. The same piece and choices give the same plan.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="choices">What the builder decides.</param>
    public static WorkPlan Of(Piece piece, WorkChoices choices)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var finish = FinishPlanner.Of(piece, choices);
        var operations = ToldOnce.Parts(OperationList.Of(piece, choices), piece);
        var assembly = AssemblyOrder.Of(piece, choices);
        var plan = WorkMerge.Of(
            piece.Name,
            piece.Unit,
            operations,
            assembly with
            {
                Steps = ToldOnce.Assembly(assembly.Steps, operations),
            },
            finish
        );
        return piece.Steps.IsEmpty ? plan : plan with { Steps = [Notes(piece), .. plan.Steps] };
    }

    /// <summary>Returns the plan for parts that belong to no design. Nothing is known of their joints, so it has no assembly:
    /// whoever builds adds its steps.</summary>
    /// <param name="name">Of the project.</param>
    /// <param name="unit">Unit of lengths in texts.</param>
    /// <param name="parts">As cut.</param>
    /// <param name="finished">The same parts, finished, by their marks.</param>
    /// <param name="choices">What the builder decides.</param>
    public static WorkPlan Of(
        string name,
        LengthUnit unit,
        ImmutableArray<PlainPart> parts,
        IReadOnlyList<CountedPart> finished,
        WorkChoices choices
    )
    {
        var finish = FinishPlanner.Of(name, unit, finished, choices);
        return WorkMerge.Of(name, unit, OperationList.Of(parts), new([], [], []), finish);
    }

    // What boxes and joints don't tell is read before the first of them is cut.
    private static WorkStep Notes(Piece piece) =>
        new("read:notes", WorkPhase.Parts, WorkAction.Read, "Read the notes on this piece", piece.Steps, [], [], 5);
}
