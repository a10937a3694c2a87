using System.Diagnostics;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Boards;

/// <summary>What a search knows so far: best plan, bound, time left. Reports every improvement. Safe for several
/// threads.</summary>
internal sealed class Search
{
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly SearchControl control;
    private TimeSpan reserve;
    private readonly Lock gate = new();
    private readonly Lock reports = new();

    public Search(CuttingModel model, SearchControl control, Plan start)
    {
        Model = model;
        this.control = control;
        Best = start;
        Report();
    }

    public CuttingModel Model { get; }

    public Plan Best { get; private set; }

    /// <summary>No plan has a lower total; in the model's unit.</summary>
    public long Bound { get; private set; }

    public int Workers => Math.Clamp(control.Workers, 1, Environment.ProcessorCount);

    public int Seed => control.Seed;

    /// <summary>True where no clock ends the search, so that solvers must be limited by their steps.</summary>
    public bool ByIterations => control.Time is null;

    /// <summary>Improvement rounds allowed.</summary>
    public long Iterations => control.Iterations ?? long.MaxValue;

    public CancellationToken Cancel => control.Cancel;

    /// <summary>True when the best plan is known to be best.</summary>
    public bool Proven => Bound >= Best.Total;

    public bool Expired => control.Cancel.IsCancellationRequested || Left <= TimeSpan.Zero;

    public bool Done => Proven || Expired;

    public TimeSpan Elapsed => clock.Elapsed;

    /// <summary>Time left, without what is kept back; a day when there is no clock.</summary>
    public TimeSpan Left => (control.Time ?? TimeSpan.FromDays(1)) - reserve - clock.Elapsed;

    /// <summary>Keeps time back for what follows the search for cost.</summary>
    public void KeepBack(TimeSpan time) => reserve = time;

    /// <summary>From now on only so much time is left, and no more than the clock allows; where there is none, steps end what
    /// follows.</summary>
    public void LeaveOnly(TimeSpan time)
    {
        if (control.Time is not { } all)
            return;
        var end = clock.Elapsed + time;
        reserve = all - (all < end ? all : end);
    }

    /// <summary>Takes a plan if it is better; says whether it was.</summary>
    public bool Offer(Plan plan)
    {
        lock (gate)
        {
            if (plan.Total >= Best.Total)
                return false;
            Best = plan;
        }

        Report();
        return true;
    }

    /// <summary>Takes a plan of the same total that is preferred for other reasons.</summary>
    public void Prefer(Plan plan)
    {
        lock (gate)
            if (plan.Total <= Best.Total)
                Best = plan;
    }

    /// <summary>Takes a proven bound if it is better.</summary>
    public void Raise(long bound)
    {
        lock (gate)
        {
            if (bound <= Bound)
                return;
            Bound = bound;
        }

        Report();
    }

    /// <summary>Tells the watcher where the search is; one report at a time, so that none is older than the one before.</summary>
    public void Report()
    {
        if (control.Progress is not { } progress)
            return;
        lock (reports)
        {
            var best = Best;
            Money? cost = best.Unmet.All(unmet => unmet == 0) ? Money.FromCount(best.Cost * Model.CostUnit) : null;
            progress(new SearchProgress("", cost, Money.FromCount(CostBound(best) * Model.CostUnit), Elapsed));
        }
    }

    /// <summary>Reports every second until disposed of.</summary>
    public IDisposable? Pulse() =>
        control.Progress is null ? null : new Timer(_ => Report(), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(1));

    /// <summary>What no plan with as few unmet pieces as this one can go below in cost.</summary>
    public long CostBound(Plan plan) =>
        Math.Clamp(Bound - (plan.Unmet.Sum(pieces => (long)pieces) * Model.Shortage), 0, plan.Cost);
}
