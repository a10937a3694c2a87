namespace ShopPlanner.Scheduling.Tests.Checking;

/// <summary>Tries every start of every task, minute by minute.</summary>
internal sealed class EverySchedule
{
    private readonly ScheduleRequest request;
    private readonly List<(int From, int LaborEnd, int Free)>[] places;
    private readonly Dictionary<string, int> numbers;
    private readonly (int From, int LaborEnd, int Free)[] chosen;
    private readonly Dictionary<string, int[]> taken;
    private int best = int.MaxValue;

    private EverySchedule(ScheduleRequest request)
    {
        this.request = request;
        var last = request.Windows.Select(window => window.Closes).DefaultIfEmpty(0).Max();
        places =
        [
            .. request.Tasks.Select(task =>
                Enumerable
                    .Range(0, last + 1)
                    .Select(start => Minutewise.Place(request, task, start))
                    .OfType<(int, int, int)>()
                    .ToList()
            ),
        ];
        numbers = request.Tasks.Select((task, i) => (task.Id, i)).ToDictionary(one => one.Id, one => one.i);
        chosen = new (int, int, int)[places.Length];
        taken = request.Resources.ToDictionary(one => one.Key, _ => new int[last + request.Tasks.Sum(task => task.Hold) + 1]);
    }

    /// <summary>The earliest finish; null where there is no schedule.</summary>
    public static int? Finish(ScheduleRequest request)
    {
        var search = new EverySchedule(request);
        search.Try(0, 0);
        return search.best == int.MaxValue ? null : search.best;
    }

    private void Try(int task, int finish)
    {
        if (finish >= best)
            return;
        if (task == places.Length)
        {
            best = finish;
            return;
        }

        foreach (var place in places[task])
        {
            chosen[task] = place;
            if (!KeepsOrder(task))
                continue;
            Add(task, 1);
            if (Fits())
                Try(task + 1, Math.Max(finish, place.Free));
            Add(task, -1);
        }
    }

    private bool KeepsOrder(int task) =>
        request.Precedences.All(one =>
            numbers[one.Before] > task
            || numbers[one.After] > task
            || chosen[numbers[one.After]].From >= chosen[numbers[one.Before]].Free + one.Wait
        );

    private bool Fits() => request.Resources.All(one => Array.TrueForAll(taken[one.Key], amount => amount <= one.Value));

    private void Add(int task, int sign)
    {
        foreach (var (resource, amount) in request.Tasks[task].LaborUses)
            for (var minute = chosen[task].From; minute < chosen[task].LaborEnd; minute++)
                taken[resource][minute] += sign * amount;
        foreach (var (resource, amount) in request.Tasks[task].HoldUses)
            for (var minute = chosen[task].LaborEnd; minute < chosen[task].Free; minute++)
                taken[resource][minute] += sign * amount;
    }
}
