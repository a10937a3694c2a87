using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;

namespace ShopPlanner.Core.Making;

/// <summary>Plans the work between the last cut and the finished piece.</summary>
public static class WorkPlanner
{
    /// <summary>Returns the plan. The same piece and choices give the same plan.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="choices">What the builder decides.</param>
    public static WorkPlan Of(Piece piece, WorkChoices choices)
    {
        var finish = FinishPlanner.Of(piece, choices);
        var operations = ToldOnce.Parts(OperationList.Of(piece, choices), piece);
        var assembly = AssemblyOrder.Of(piece, choices);
        var plan = WorkMerge.Of(
            piece,
            operations,
            assembly with
            {
                Steps = ToldOnce.Assembly(assembly.Steps, operations),
            },
            finish.Steps,
            finish.Amounts,
            finish.Findings
        );
        return piece.Steps.IsEmpty ? plan : plan with { Steps = [Notes(piece), .. plan.Steps] };
    }

    // What boxes and joints don't tell is read before the first of them is cut.
    private static WorkStep Notes(Piece piece) =>
        new("read:notes", WorkPhase.Parts, WorkAction.Read, "Read the notes on this piece", piece.Steps, [], [], 5);
}
