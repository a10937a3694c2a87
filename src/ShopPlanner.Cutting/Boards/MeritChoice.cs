using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Whole numbers of times for given patterns that place the same pieces for no more cost, best in one level of
/// <see cref="BoardMerit"/> after the other: an integer program to which each level adds what it reached as a condition.
/// </summary>
internal sealed class MeritChoice : IDisposable
{
    private readonly CuttingModel _model;
    private readonly Plan _plan;
    private readonly List<Pattern> _patterns;
    private readonly BoardMerit[] _merits;
    private readonly Solver _solver = SolverText.IntegerSolver();
    private readonly Variable[] _times;
    private readonly int[] _placed;

    public MeritChoice(CuttingModel model, Plan plan, List<Pattern> patterns)
    {
        (_model, _plan, _patterns) = (model, plan, patterns);
        _merits = [.. patterns.Select(Merit)];
        _placed = [.. model.Demands.Select((demand, item) => demand - plan.Unmet[item])];
        var limits = model.Kinds.Select(kind => _solver.MakeConstraint(0, kind.Limit)).ToArray();
        var demands = _placed.Select(placed => _solver.MakeConstraint(placed, placed)).ToArray();
        var cost = _solver.MakeConstraint(0, plan.Cost);
        _times = [.. patterns.Select(pattern => Column(pattern, limits, demands, cost))];
    }

    /// <summary>The best plan found, if it beats the one given.</summary>
    public Plan? Solve(Search search)
    {
        var best = (Plan: _plan, Merit: Merit(_plan));
        foreach (var level in Levels())
        {
            Hint(best.Plan);
            if (
                SolverText.Solve(_solver, search, Plan, briefly: search.ByIterations).Plan is { } plan
                && Merit(plan) is var merit
                && Beats(plan, merit, best.Merit)
            )
                best = (plan, merit);
            level(best.Merit);
        }

        return best.Plan == _plan ? null : best.Plan;
    }

    public void Dispose() => _solver.Dispose();

    private bool Beats(Plan plan, BoardMerit merit, BoardMerit than) => plan.Total <= _plan.Total && merit > than;

    // Each level states its aim when it is reached and returns what fixes it when it is left.
    private IEnumerable<Action<BoardMerit>> Levels()
    {
        var binned = _model.Kinds.Any(kind => kind.Origin.FromBin);
        if (binned)
            yield return Aim(one => one.FromBin, most: true, merit => merit.FromBin);
        if (_model.Kinds.Length > 1)
            yield return Aim(one => one.NewStocks, most: false, merit => merit.NewStocks);
        if (_merits.Any(one => one.Leftovers != 0))
            yield return Aim(one => one.Leftovers, most: true, merit => merit.Leftovers);
        yield return AimAtFewPatterns();
    }

    private Action<BoardMerit> Aim(Func<BoardMerit, long> part, bool most, Func<BoardMerit, long> whole)
    {
        var objective = _solver.Objective();
        objective.Clear();
        var row = _solver.MakeConstraint(double.NegativeInfinity, double.PositiveInfinity);
        for (var at = 0; at < _times.Length; at++)
        {
            objective.SetCoefficient(_times[at], part(_merits[at]));
            row.SetCoefficient(_times[at], part(_merits[at]));
        }

        objective.SetOptimizationDirection(most);
        return merit =>
        {
            if (most)
                row.SetLb(whole(merit));
            else
                row.SetUb(whole(merit));
        };
    }

    private Action<BoardMerit> AimAtFewPatterns()
    {
        var objective = _solver.Objective();
        objective.Clear();
        for (var at = 0; at < _times.Length; at++)
        {
            var cut = _solver.MakeBoolVar("");
            var row = _solver.MakeConstraint(double.NegativeInfinity, 0);
            row.SetCoefficient(_times[at], 1);
            row.SetCoefficient(cut, -_times[at].Ub());
            objective.SetCoefficient(cut, 1);
        }

        objective.SetMinimization();
        return _ => { };
    }

    private Variable Column(Pattern pattern, Constraint[] limits, Constraint[] demands, Constraint cost)
    {
        var most = Math.Min(_model.Kinds[pattern.Kind].Limit, pattern.TimesWithin(_placed));
        var variable = _solver.MakeIntVar(0, most, "");
        limits[pattern.Kind].SetCoefficient(variable, 1);
        foreach (var piece in pattern.Pieces)
            demands[piece.Item].SetCoefficient(variable, piece.Count);
        cost.SetCoefficient(variable, _model.Kinds[pattern.Kind].Cost);
        return variable;
    }

    private void Hint(Plan plan)
    {
        var times = plan.Cuts.ToDictionary(cut => cut.Pattern, cut => (double)cut.Times);
        _solver.SetHint(_times, [.. _patterns.Select(pattern => times.GetValueOrDefault(pattern))]);
    }

    private Plan Plan() =>
        Boards.Plan.Of(
            _model,
            _times
                .Select((variable, column) => (_patterns[column], (int)Math.Round(variable.SolutionValue())))
                .Where(cut => cut.Item2 > 0)
        );

    private BoardMerit Merit(Plan plan) => BoardMerit.Sum(plan.Cuts.Select(cut => (Merit(cut.Pattern), cut.Times)));

    private BoardMerit Merit(Pattern pattern)
    {
        var longest = _model.Kinds.Max(kind => kind.Origin.Capacity);
        return BoardMerit.One(_model.Kinds[pattern.Kind].Origin, pattern.Used(_model) * _model.SizeUnit, longest);
    }
}
