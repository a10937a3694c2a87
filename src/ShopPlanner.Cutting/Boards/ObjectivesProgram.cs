using Google.OrTools.LinearSolver;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Whole numbers of times for given patterns that place the same pieces for no more cost, best in one level of
/// <see cref="BoardObjectives"/> after the other: an integer program to which each level adds what it reached as a condition.
/// </summary>
internal sealed class ObjectivesProgram : IDisposable
{
    private readonly CuttingModel model;
    private readonly Plan plan;
    private readonly List<Pattern> patterns;
    private readonly BoardObjectives[] columnObjectives;
    private readonly Solver solver = SolverParameters.IntegerSolver();
    private readonly Variable[] times;
    private readonly int[] placed;

    public ObjectivesProgram(CuttingModel model, Plan plan, List<Pattern> patterns)
    {
        (this.model, this.plan, this.patterns) = (model, plan, patterns);
        columnObjectives = [.. patterns.Select(Objectives)];
        this.placed = [.. model.Demands.Select((demand, item) => demand - plan.Unmet[item])];
        var limits = model.Kinds.Select(kind => solver.MakeConstraint(0, kind.Limit)).ToArray();
        var demands = this.placed.Select(placed => solver.MakeConstraint(placed, placed)).ToArray();
        var cost = solver.MakeConstraint(0, plan.Cost);
        times = [.. patterns.Select(pattern => Column(pattern, limits, demands, cost))];
    }

    /// <summary>The best plan found, if it beats the one given.</summary>
    public Plan? Solve(Search search)
    {
        var best = (Plan: this.plan, Objectives: Objectives(this.plan));
        foreach (var level in Levels())
        {
            Hint(best.Plan);
            if (
                SolverParameters.Solve(solver, search, Plan, briefly: search.ByIterations).Plan is { } plan
                && Objectives(plan) is var reached
                && Beats(plan, reached, best.Objectives)
            )
                best = (plan, reached);
            level(best.Objectives);
        }

        return best.Plan == this.plan ? null : best.Plan;
    }

    public void Dispose() => solver.Dispose();

    private bool Beats(Plan plan, BoardObjectives reached, BoardObjectives than) =>
        plan.Total <= this.plan.Total && reached > than;

    // Each level states its aim when it is reached and returns what fixes it when it is left.
    private IEnumerable<Action<BoardObjectives>> Levels()
    {
        var binned = model.Kinds.Any(kind => kind.Origin.FromBin);
        if (binned)
            yield return Aim(one => one.FromBin, most: true, reached => reached.FromBin);
        if (model.Kinds.Length > 1)
            yield return Aim(one => one.NewStocks, most: false, reached => reached.NewStocks);
        if (columnObjectives.Any(one => one.Leftovers != 0))
            yield return Aim(one => one.Leftovers, most: true, reached => reached.Leftovers);
        yield return AimAtFewPatterns();
    }

    private Action<BoardObjectives> Aim(Func<BoardObjectives, long> part, bool most, Func<BoardObjectives, long> whole)
    {
        var objective = solver.Objective();
        objective.Clear();
        var row = solver.MakeConstraint(double.NegativeInfinity, double.PositiveInfinity);
        for (var at = 0; at < times.Length; at++)
        {
            objective.SetCoefficient(times[at], part(columnObjectives[at]));
            row.SetCoefficient(times[at], part(columnObjectives[at]));
        }

        objective.SetOptimizationDirection(most);
        return reached =>
        {
            if (most)
                row.SetLb(whole(reached));
            else
                row.SetUb(whole(reached));
        };
    }

    private Action<BoardObjectives> AimAtFewPatterns()
    {
        var objective = solver.Objective();
        objective.Clear();
        for (var at = 0; at < times.Length; at++)
        {
            var cut = solver.MakeBoolVar("");
            var row = solver.MakeConstraint(double.NegativeInfinity, 0);
            row.SetCoefficient(times[at], 1);
            row.SetCoefficient(cut, -times[at].Ub());
            objective.SetCoefficient(cut, 1);
        }

        objective.SetMinimization();
        return _ => { };
    }

    private Variable Column(Pattern pattern, Constraint[] limits, Constraint[] demands, Constraint cost)
    {
        var most = Math.Min(model.Kinds[pattern.Kind].Limit, pattern.TimesWithin(placed));
        var variable = solver.MakeIntVar(0, most, "");
        limits[pattern.Kind].SetCoefficient(variable, 1);
        foreach (var piece in pattern.Pieces)
            demands[piece.Item].SetCoefficient(variable, piece.Count);
        cost.SetCoefficient(variable, model.Kinds[pattern.Kind].Cost);
        return variable;
    }

    private void Hint(Plan plan)
    {
        var times = plan.Cuts.ToDictionary(cut => cut.Pattern, cut => (double)cut.Times);
        solver.SetHint(this.times, [.. patterns.Select(pattern => times.GetValueOrDefault(pattern))]);
    }

    private Plan Plan() => ProgramParts.PlanOf(model, patterns, times);

    private BoardObjectives Objectives(Plan plan) =>
        BoardObjectives.Sum(plan.Cuts.Select(cut => (Objectives(cut.Pattern), cut.Times)));

    private BoardObjectives Objectives(Pattern pattern)
    {
        var longest = model.Kinds.Max(kind => kind.Origin.Capacity);
        return BoardObjectives.One(model.Kinds[pattern.Kind].Origin, pattern.Used(model) * model.SizeUnit, longest);
    }
}
