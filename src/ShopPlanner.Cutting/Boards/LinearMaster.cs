using System.Diagnostics;
using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// The linear relaxation over the patterns known so far: every demand covered, no stock cut beyond its limit, cost least. Its
/// figures steer the search and are never believed as proof; <see cref="DualPoint"/> makes one of its duals.
/// </summary>
internal sealed class LinearMaster : IDisposable
{
    private const double Hair = 0.002;
    private readonly CuttingModel _model;
    private readonly Solver _solver =
        Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver is not part of this build.");
    private readonly Constraint[] _demands;
    private readonly Constraint?[] _limits;
    private readonly List<Variable> _variables = [];
    private readonly HashSet<Pattern> _known = [];
    private readonly MPSolverParameters _parameters = new();

    public LinearMaster(CuttingModel model)
    {
        _model = model;
        SolverText.Set(_solver, SolverText.Linear);
        _parameters.SetIntegerParam(MPSolverParameters.IntegerParam.INCREMENTALITY, 1);
        _parameters.SetIntegerParam(MPSolverParameters.IntegerParam.PRESOLVE, 0);
        _demands = [.. model.Demands.Select(demand => _solver.MakeConstraint(demand, double.PositiveInfinity))];
        _limits = [.. model.Kinds.Select(kind => kind.Unlimited ? null : _solver.MakeConstraint(0, kind.Limit))];
        _solver.Objective().SetMinimization();
        for (var item = 0; item < model.Count; item++)
            AddShortage(item);
    }

    /// <summary>The patterns, in the order they were added.</summary>
    public List<Pattern> Columns { get; } = [];

    /// <summary>Adds a pattern unless it is known.</summary>
    public void Add(Pattern pattern)
    {
        if (!_known.Add(pattern))
            return;
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        foreach (var piece in pattern.Pieces)
            _demands[piece.Item].SetCoefficient(variable, piece.Count);
        _limits[pattern.Kind]?.SetCoefficient(variable, 1);
        _solver.Objective().SetCoefficient(variable, _model.Kinds[pattern.Kind].Cost);
        Columns.Add(pattern);
        _variables.Add(variable);
    }

    /// <summary>Asks for what is still wanted within what is left; patterns that exceed either are shut out.</summary>
    public void Restrict(int[] wanted, int[] left)
    {
        for (var item = 0; item < wanted.Length; item++)
            _demands[item].SetLb(wanted[item]);
        for (var kind = 0; kind < left.Length; kind++)
            _limits[kind]?.SetUb(left[kind]);
        for (var column = 0; column < Columns.Count; column++)
        {
            var fits = left[Columns[column].Kind] > 0 && Columns[column].TimesWithin(wanted) > 0;
            _variables[column].SetUb(fits ? double.PositiveInfinity : 0);
        }
    }

    /// <summary>Asks for a hair more or less of every item.</summary>
    public void Nudge(int[] wanted, Random random)
    {
        for (var item = 0; item < wanted.Length; item++)
            _demands[item].SetLb(wanted[item] + (Hair * ((2 * random.NextDouble()) - 1)));
    }

    /// <summary>Solves; null when the solver failed or the time was up.</summary>
    public MasterPoint? Solve(TimeSpan left)
    {
        var clock = Stopwatch.StartNew();
        _solver.SetTimeLimit(Milliseconds(left));
        if (!Reoptimise() && !(clock.Elapsed < left && Afresh(left - clock.Elapsed)))
            return null;
        return new MasterPoint(
            _solver.Objective().Value(),
            [.. _demands.Select(row => Math.Max(0, row.DualValue()))],
            [.. _limits.Select(row => Math.Max(0, -(row?.DualValue() ?? 0)))],
            [.. _variables.Select(variable => variable.SolutionValue())]
        );
    }

    private static long Milliseconds(TimeSpan left) => (long)Math.Clamp(left.TotalMilliseconds, 1, int.MaxValue);

    private bool Reoptimise() => _solver.Solve(_parameters) == Solver.ResultStatus.OPTIMAL;

    // Now and then the numbers of a basis go bad on the way; without its history the same program solves.
    private bool Afresh(TimeSpan left)
    {
        var clock = Stopwatch.StartNew();
        _solver.SetTimeLimit(Milliseconds(left));
        _solver.Reset();
        if (Reoptimise())
            return true;
        if (clock.Elapsed >= left)
            return false;
        using var presolved = new MPSolverParameters();
        _solver.SetTimeLimit(Milliseconds(left - clock.Elapsed));
        _solver.Reset();
        return _solver.Solve(presolved) == Solver.ResultStatus.OPTIMAL;
    }

    public void Dispose()
    {
        _parameters.Dispose();
        _solver.Dispose();
    }

    private void AddShortage(int item)
    {
        if (_model.AlwaysFits(item))
            return;
        var variable = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _demands[item].SetCoefficient(variable, 1);
        _solver.Objective().SetCoefficient(variable, _model.Shortage);
    }
}

/// <summary>An optimum of the restricted relaxation, in floating point.</summary>
/// <param name="Objective">Least total over the known patterns.</param>
/// <param name="Items">Dual of each item's demand, zero or more.</param>
/// <param name="Kinds">Dual of each kind's limit, as a surcharge, zero or more.</param>
/// <param name="Times">How often each column is cut.</param>
internal sealed record MasterPoint(double Objective, double[] Items, double[] Kinds, double[] Times);
