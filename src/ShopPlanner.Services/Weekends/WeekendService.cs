using System.Collections.Immutable;
using NodaTime;
using ShopPlanner.Core.Measures;
using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Boards;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Weekends;

internal sealed class WeekendService(ShopWork work, WeekendRequests requests, TimeProvider time) : IWeekendService, IDisposable
{
    private readonly SemaphoreSlim turn = new(1, 1);
    private Made? last;

    public Task<WeekendSettings> SettingsAsync(CancellationToken cancel = default) =>
        work.ReadAsync(async db => View(await WeekendRows.ReadAsync(db, cancel)), cancel);

    public Task<Outcome<WeekendSettings>> SaveAsync(WeekendSettings settings, CancellationToken cancel = default) =>
        work.WriteAsync(db => SaveAsync(db, settings, cancel), cancel);

    public async Task<WeekendBoard> BoardAsync(CancellationToken cancel = default)
    {
        var made = await MadeAsync(cancel);
        var board = new BoardWriting(made.Asked, made.Schedule).Board();
        return board with
        {
            IsKept = IsKept(made),
            IsFreed = made.Asked.IsFreed,
            Cutting = made.Asked.Cutting,
            Lately = made.Asked.Lately,
        };
    }

    public async Task<Outcome<Done>> RememberAsync(CancellationToken cancel = default)
    {
        var made = await MadeAsync(cancel);
        if (made.Schedule.Status == ScheduleStatus.Impossible)
            return Outcome.Faulty<Done>(Fault.Of("schedule", "", "does not exist: see the reasons"));
        var kept = Moments(made.Asked, made.Schedule);
        return await ChangeAsync(document => document with { Kept = kept }, cancel);
    }

    public Task<Outcome<Done>> PutOffAsync(string task, DateTime? utc, CancellationToken cancel = default) =>
        ChangeAsync(
            document =>
                document with
                {
                    Moved = utc is { } moment ? document.Moved.SetItem(task, moment) : document.Moved.Remove(task),
                    Begins = document.Begins.Remove(task),
                },
            cancel
        );

    public async Task<Outcome<Done>> MoveAsync(string task, DateTime windowUtc, CancellationToken cancel = default)
    {
        var made = await MadeAsync(cancel);
        var outcome = await Task.Run(() => new WeekendMoves(made.Asked, made.Schedule).Move(task, windowUtc), cancel);
        if (outcome.Value is not { } moved)
            return new Outcome<Done>(outcome.Kind, null, outcome.Faults);
        var moments = Moments(made.Asked, moved);
        return await ChangeAsync(
            document =>
                document with
                {
                    Moved = document.Moved.Remove(task),
                    Begins = document.Begins.SetItem(task, moments[task]),
                    Kept = moments,
                },
            cancel
        );
    }

    public Task<Outcome<Done>> LetGoAsync(string? task, CancellationToken cancel = default) =>
        ChangeAsync(
            document => document with { Begins = task is null ? document.Begins.Clear() : document.Begins.Remove(task) },
            cancel
        );

    public async Task<ImmutableArray<WeekendTask>> WithinAsync(int minutes, CancellationToken cancel = default)
    {
        var made = await MadeAsync(cancel);
        return [.. Sitting.Fill(made.Asked.Request, made.Schedule, minutes).Select(task => made.Asked.Tasks[task.Id])];
    }

    public async Task<string> CalendarAsync(CancellationToken cancel = default)
    {
        var made = await MadeAsync(cancel);
        return new BoardWriting(made.Asked, made.Schedule).Calendar(Instant.FromDateTimeOffset(time.GetUtcNow()));
    }

    public void Dispose() => turn.Dispose();

    private static WeekendSettings View(StoredWeekends? row)
    {
        var document = WeekendRows.Document(row);
        return new(
            document.Hours,
            document.DaysOff,
            document.ExtraHours,
            document.Zone,
            document.People,
            document.Clamps,
            document.Drying,
            [.. document.Wishes.Select(one => new ProjectWish(one.Project, one.Priority, one.Due, one.IsLeftOut))],
            row?.Version ?? 0
        );
    }

    private async Task<Outcome<WeekendSettings>> SaveAsync(ShopContext db, WeekendSettings settings, CancellationToken cancel)
    {
        var row = await WeekendRows.ReadAsync(db, cancel);
        if (settings.Version != (row?.Version ?? 0))
            return Outcome.Conflict<WeekendSettings>(
                new Fault(nameof(settings.Version), "", "is not the latest: another device changed the hours. Load them again")
            );
        var wanted = WeekendRows.Document(row) with
        {
            Hours = settings.Hours,
            DaysOff = settings.DaysOff,
            ExtraHours = settings.ExtraHours,
            Zone = settings.Zone,
            People = settings.People,
            Clamps = settings.Clamps,
            Drying = settings.Drying,
            Wishes = [.. settings.Wishes.Select(one => new StoredWish(one.Project, one.Priority, one.Due, one.IsLeftOut))],
        };
        var reader = new HoursReader(requests.ShopZone);
        _ = (reader.Calendar(wanted), reader.Hands(wanted));
        foreach (var wish in wanted.Wishes)
            _ = reader.Due(wish);
        if (reader.Faults.Count > 0)
            return Outcome.Faulty<WeekendSettings>(reader.Faults);
        return View(await WeekendRows.StoreAsync(db, row, wanted, cancel));
    }

    private Task<Outcome<Done>> ChangeAsync(Func<WeekendDocument, WeekendDocument> change, CancellationToken cancel) =>
        work.WriteAsync<Done>(
            async db =>
            {
                var row = await WeekendRows.ReadAsync(db, cancel);
                await WeekendRows.StoreAsync(db, row, change(WeekendRows.Document(row)), cancel);
                return Done.Value;
            },
            cancel
        );

    // One at a time, and none again while nothing has changed.
    private async Task<Made> MadeAsync(CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            var (changes, begin) = (work.Changes, requests.Begin);
            if (last is { } known && known.Changes == changes && known.Begin == begin)
                return known;
            var document = await work.ReadAsync(
                async db => WeekendRows.Document(await WeekendRows.ReadAsync(db, cancel)),
                cancel
            );
            var asked = await requests.AskAsync(document, cancel);
            var schedule = await PlanAsync(asked, cancel);
            if (schedule.Status == ScheduleStatus.Impossible && asked.HasSet)
            {
                asked = asked.Freed();
                schedule = await PlanAsync(asked, cancel);
            }

            return last = new Made(changes, begin, asked, schedule);
        }
        finally
        {
            turn.Release();
        }
    }

    private static Task<Schedule> PlanAsync(AskedWeekends asked, CancellationToken cancel) =>
        Task.Run(() => SchedulePlanner.Plan(asked.Request, new ScheduleControl()), cancel);

    private static ImmutableSortedDictionary<string, DateTime> Moments(AskedWeekends asked, Schedule schedule) =>
        schedule.Starts.ToImmutableSortedDictionary(
            one => one.Key,
            one => asked.Clock.InstantAt(one.Value).ToDateTimeUtc(),
            StringComparer.Ordinal
        );

    private static bool IsKept(Made made) =>
        made.Asked.Request.Tasks.All(task =>
            task.Fixed is not null || (task.Earlier is { } earlier && made.Schedule.Starts.GetValueOrDefault(task.Id) == earlier)
        );

    private sealed record Made(long Changes, DateTime Begin, AskedWeekends Asked, Schedule Schedule);
}
