using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Access;

/// <summary>
/// Slows down whoever guesses: after five wrong tries from one place, each next one has to wait twice as long, at most a minute.
/// Nobody is locked out for good, and other places are not held up.
/// </summary>
internal sealed class TryLimits(TimeProvider clock)
{
    private const int Free = 5,
        MostPlaces = 1000;

    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1),
        Remembered = TimeSpan.FromMinutes(15);

    private readonly Lock gate = new();
    private readonly Dictionary<string, (int Tries, long At)> places = new(StringComparer.Ordinal);

    /// <summary>Counts a try before it is looked at, so that many at once are counted too.</summary>
    /// <returns>Null where it may be made; otherwise how long to wait.</returns>
    public Fault? Begin(string from)
    {
        lock (gate)
        {
            Forget();
            var (tries, at) = places.GetValueOrDefault(from);
            var left = tries < Free ? TimeSpan.Zero : Wait(tries) - clock.GetElapsedTime(at);
            if (left > TimeSpan.Zero)
                return new Fault("", "", $"Too many tries. Wait {Math.Ceiling(left.TotalSeconds)} seconds, then try again");
            places[from] = (tries + 1, clock.GetTimestamp());
            return null;
        }
    }

    /// <summary>The try was right: its place counts from zero again.</summary>
    public void Succeed(string from)
    {
        lock (gate)
            places.Remove(from);
    }

    private static TimeSpan Wait(int tries) =>
        TimeSpan.FromSeconds(Math.Min(Longest.TotalSeconds, Math.Pow(2, Math.Min(tries - Free + 1, 10))));

    private void Forget()
    {
        foreach (var old in places.Where(one => clock.GetElapsedTime(one.Value.At) > Remembered).Select(one => one.Key).ToList())
            places.Remove(old);
        // From so many places nobody types: the oldest make way.
        while (places.Count >= MostPlaces)
            places.Remove(places.MinBy(one => one.Value.At).Key);
    }
}
