using System.Diagnostics;
using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// The linear relaxation over the patterns known so far: every demand covered, no stock cut beyond its limit, cost least. Its
/// figures steer the search and are never believed as proof; <see cref="DualPoint"/> makes one of its duals.
/// </summary>
internal sealed class RestrictedMaster : IDisposable
{
    private const double Perturbation = 0.002;
    private readonly CuttingModel model;
    private readonly Solver solver =
        Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver is not part of this build.");
    private readonly Constraint[] demands;
    private readonly Constraint?[] limits;
    private readonly List<Variable> variables = [];
    private readonly HashSet<Pattern> known = [];
    private readonly MPSolverParameters parameters = new();

    public RestrictedMaster(CuttingModel model)
    {
        this.model = model;
        SolverParameters.Set(solver, SolverParameters.Linear);
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.INCREMENTALITY, 1);
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.PRESOLVE, 0);
        demands = [.. model.Demands.Select(demand => solver.MakeConstraint(demand, double.PositiveInfinity))];
        limits = [.. model.Kinds.Select(kind => kind.Unlimited ? null : solver.MakeConstraint(0, kind.Limit))];
        solver.Objective().SetMinimization();
        for (var item = 0; item < model.Count; item++)
            AddShortage(item);
    }

    /// <summary>The patterns, in the order they were added.</summary>
    public List<Pattern> Columns { get; } = [];

    /// <summary>Adds a pattern unless it is known.</summary>
    public void Add(Pattern pattern)
    {
        if (!known.Add(pattern))
            return;
        var variable = solver.MakeNumVar(0, double.PositiveInfinity, "");
        foreach (var piece in pattern.Pieces)
            demands[piece.Item].SetCoefficient(variable, piece.Count);
        limits[pattern.Kind]?.SetCoefficient(variable, 1);
        solver.Objective().SetCoefficient(variable, model.Kinds[pattern.Kind].Cost);
        Columns.Add(pattern);
        variables.Add(variable);
    }

    /// <summary>Asks for what is still wanted within what is left; patterns that exceed either are shut out.</summary>
    public void Restrict(int[] wanted, int[] left)
    {
        for (var item = 0; item < wanted.Length; item++)
            demands[item].SetLb(wanted[item]);
        for (var kind = 0; kind < left.Length; kind++)
            limits[kind]?.SetUb(left[kind]);
        for (var column = 0; column < Columns.Count; column++)
        {
            var fits = left[Columns[column].Kind] > 0 && Columns[column].TimesWithin(wanted) > 0;
            variables[column].SetUb(fits ? double.PositiveInfinity : 0);
        }
    }

    /// <summary>Asks for slightly more or less of every item.</summary>
    public void Perturb(int[] wanted, Random random)
    {
        for (var item = 0; item < wanted.Length; item++)
            demands[item].SetLb(wanted[item] + (Perturbation * ((2 * random.NextDouble()) - 1)));
    }

    /// <summary>Solves; null when the solver failed or the time was up.</summary>
    public MasterPoint? Solve(TimeSpan left)
    {
        var clock = Stopwatch.StartNew();
        solver.SetTimeLimit(Milliseconds(left));
        if (!Reoptimise() && !(clock.Elapsed < left && Afresh(left - clock.Elapsed)))
            return null;
        return new MasterPoint(
            solver.Objective().Value(),
            [.. demands.Select(row => Math.Max(0, row.DualValue()))],
            [.. limits.Select(row => Math.Max(0, -(row?.DualValue() ?? 0)))],
            [.. variables.Select(variable => variable.SolutionValue())]
        );
    }

    private static long Milliseconds(TimeSpan left) => (long)Math.Clamp(left.TotalMilliseconds, 1, int.MaxValue);

    private bool Reoptimise() => solver.Solve(parameters) == Solver.ResultStatus.OPTIMAL;

    // Now and then the numbers of a basis go bad on the way; without its history the same program solves.
    private bool Afresh(TimeSpan left)
    {
        var clock = Stopwatch.StartNew();
        solver.SetTimeLimit(Milliseconds(left));
        solver.Reset();
        if (Reoptimise())
            return true;
        if (clock.Elapsed >= left)
            return false;
        using var presolved = new MPSolverParameters();
        solver.SetTimeLimit(Milliseconds(left - clock.Elapsed));
        solver.Reset();
        return solver.Solve(presolved) == Solver.ResultStatus.OPTIMAL;
    }

    public void Dispose()
    {
        parameters.Dispose();
        solver.Dispose();
    }

    private void AddShortage(int item)
    {
        if (model.AlwaysFits(item))
            return;
        var variable = solver.MakeNumVar(0, double.PositiveInfinity, "");
        demands[item].SetCoefficient(variable, 1);
        solver.Objective().SetCoefficient(variable, model.Shortage);
    }
}

/// <summary>An optimum of the restricted relaxation, in floating point.</summary>
/// <param name="Objective">Least total over the known patterns.</param>
/// <param name="Items">Dual of each item's demand, zero or more.</param>
/// <param name="Kinds">Dual of each kind's limit, as a surcharge, zero or more.</param>
/// <param name="Times">How often each column is cut.</param>
internal sealed record MasterPoint(double Objective, double[] Items, double[] Kinds, double[] Times);
