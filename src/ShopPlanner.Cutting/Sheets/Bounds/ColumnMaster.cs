using Google.OrTools.LinearSolver;
using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>Pieces of each type on a sheet.</summary>
internal sealed record Column(int Stock, int[] Counts);

/// <summary>An optimum of the relaxation over the columns known, in floating point; the dearest stock's price is 1.</summary>
internal sealed record ColumnPoint(double Objective, double[] Types, double[] Surcharges, double[] Times);

/// <summary>
/// The linear relaxation: demands covered, limits kept, price least. Steers only; what is claimed comes from
/// <see cref="CutKnapsack"/> in whole numbers.
/// </summary>
internal sealed class ColumnMaster : IDisposable
{
    private readonly SheetModel model;
    private readonly Solver solver =
        Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver is not part of this build.");
    private readonly MPSolverParameters parameters = new();
    private readonly Constraint[] demands;
    private readonly Constraint?[] limits;
    private readonly List<Variable> times = [];
    private readonly HashSet<string> known = [];

    public ColumnMaster(SheetModel model)
    {
        this.model = model;
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.INCREMENTALITY, 1);
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.PRESOLVE, 0);
        demands = [.. model.Types.Select(t => solver.MakeConstraint(t.Demand, double.PositiveInfinity))];
        limits = [.. model.Stocks.Select(s => s.Limit < model.Pieces ? solver.MakeConstraint(0, s.Limit) : null)];
        solver.Objective().SetMinimization();
        Dearest = Math.Max(1, model.Stocks.Max(s => s.Price));
    }

    /// <summary>What prices are told in.</summary>
    public long Dearest { get; }

    public List<Column> Columns { get; } = [];

    /// <summary>False when it is known.</summary>
    public bool Add(Column column)
    {
        if (!known.Add($"{column.Stock}:{string.Join(' ', column.Counts)}"))
            return false;
        var variable = solver.MakeNumVar(0, double.PositiveInfinity, "");
        for (var t = 0; t < column.Counts.Length; t++)
        {
            if (column.Counts[t] > 0)
                demands[t].SetCoefficient(variable, column.Counts[t]);
        }
        limits[column.Stock]?.SetCoefficient(variable, 1);
        solver.Objective().SetCoefficient(variable, (double)model.Stocks[column.Stock].Price / Dearest);
        Columns.Add(column);
        times.Add(variable);
        return true;
    }

    /// <summary>Shuts out the columns that hold more of a type than is wanted.</summary>
    public void Forbid(int type)
    {
        for (var i = 0; i < times.Count; i++)
        {
            if (Columns[i].Counts[type] > model.Types[type].Demand)
                times[i].SetUb(0);
        }
    }

    /// <summary>Null when the solver failed.</summary>
    public ColumnPoint? Solve()
    {
        if (solver.Solve(parameters) != Solver.ResultStatus.OPTIMAL)
        {
            solver.Reset();
            if (solver.Solve(parameters) != Solver.ResultStatus.OPTIMAL)
                return null;
        }
        return new(
            solver.Objective().Value(),
            [.. demands.Select(row => Math.Max(0, row.DualValue()))],
            [.. limits.Select(row => Math.Max(0, -(row?.DualValue() ?? 0)))],
            [.. times.Select(v => v.SolutionValue())]
        );
    }

    public void Dispose()
    {
        parameters.Dispose();
        solver.Dispose();
    }
}
