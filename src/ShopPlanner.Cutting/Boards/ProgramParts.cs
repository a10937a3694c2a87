using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>What the integer programs of boards have in common.</summary>
internal static class ProgramParts
{
    /// <summary>Lets pieces of an item stay uncut, each at the price of a shortage; nothing where they always fit.</summary>
    /// <param name="solver">The program.</param>
    /// <param name="model">What is to be cut.</param>
    /// <param name="item">Index of the item.</param>
    /// <param name="demand">The constraint that asks for its pieces.</param>
    public static void AddShortage(Solver solver, CuttingModel model, int item, Constraint demand)
    {
        if (model.AlwaysFits(item))
            return;
        var variable = solver.MakeIntVar(0, model.Demands[item], "");
        demand.SetCoefficient(variable, 1);
        solver.Objective().SetCoefficient(variable, model.Shortage);
    }

    /// <summary>Returns the plan of a solution: each pattern as often as its variable says.</summary>
    public static Plan PlanOf(CuttingModel model, List<Pattern> patterns, Variable[] times) =>
        Plan.Of(
            model,
            times
                .Select((variable, column) => (patterns[column], (int)Math.Round(variable.SolutionValue())))
                .Where(cut => cut.Item2 > 0)
        );
}
