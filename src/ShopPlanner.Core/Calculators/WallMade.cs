using System.Globalization;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A piece on a wall, worked out.</summary>
internal sealed record WallMade(WallAsked Asked)
{
    private const int MostInStud = 3;
    private const int MoreStuds = 3;

    private static readonly Length[] LongerThreads =
    [
        Length.FromInches(1.5m),
        Length.FromInches(2),
        Length.FromInches(2.5m),
        Length.FromInches(3),
    ];

    /// <summary>Studs that lie behind it wherever it hangs.</summary>
    public Working<double> Certain { get; } = WallFixings.Studs(Asked.Width, Asked.Spacing);

    /// <summary>Studs it is judged on.</summary>
    public int Studs => Asked.Found ?? (int)Certain.Value;

    /// <summary>Whether it is in studs and each fixing carries no more than it may, on two studs or more.</summary>
    public bool Holds => !Asked.IsAnchor && IsHeld(Asked, Studs);

    /// <summary>Whether nobody has looked for studs, and one more than is certain would do.</summary>
    public bool HoldsIfFound => Asked is { IsAnchor: false, Found: null } && !Holds && IsHeld(Asked, Studs + 1);

    /// <summary>Fixings in the top row, at least.</summary>
    public Working<double> Needed =>
        Asked.IsAnchor
            ? WallFixings.Anchors(Asked.Load, Pull, Asked.Each!)
            : WallFixings.Count(Load(Asked), Bottoms(Asked, Studs));

    /// <summary>Fixings of the top row that find a stud.</summary>
    public int Reached => Studs * Asked.Top;

    /// <summary>What would make it hold, each way by itself; empty where only another design would.</summary>
    public string Ways => string.Join("; or ", AllWays());

    public IEnumerable<Working?> Figures =>
        Asked.IsAnchor
            ? [Needed, Asked.Load, Pull]
            :
            [
                Needed,
                Share,
                Asked.Found is null ? Certain : null,
                Asked.Load,
                Pull,
                Load(Asked).Withdrawal,
                Load(Asked).Sideways,
            ];

    private Working<double> Pull => WallFixings.Pull(Asked.Load, Asked.Depth, Asked.Height);

    private Working<double>? Share =>
        Reached > 0
            ? WallFixings.Share(
                Load(Asked),
                Working.Of(
                    "Fasteners in the top row",
                    (double)Reached,
                    QuantityKind.Bare,
                    0,
                    "{studs} × {each}",
                    Working.Geometry,
                    ("studs", Counted("Studs", Studs)),
                    ("each", Counted("Fasteners in each stud", Asked.Top))
                ),
                Bottoms(Asked, Studs)
            )
            : null;

    private IEnumerable<string> AllWays()
    {
        if (FirstOf(Asked.Top + 1, MostInStud, count => IsHeld(Asked with { Top = count }, Studs)) is { } top)
            yield return $"{Number(top)} fasteners in each stud at the top";
        if (FirstOf(Asked.Bottom + 1, MostInStud, count => IsHeld(Asked with { Bottom = count }, Studs)) is { } bottom)
            yield return $"{Number(bottom)} in each stud along the bottom";
        if (FirstOf(Math.Max(Asked.Top, Asked.Bottom) + 1, MostInStud, count => IsHeld(Both(count), Studs)) is { } both)
            yield return $"{Number(both)} in each stud, both at the top and along the bottom";
        if (Studs < 2 && FirstOf(2, MostInStud, count => IsHeld(Both(count), 2)) is { } each)
            yield return $"2 studs and {Number(each)} fasteners in each, both at the top and along the bottom";
        if (FirstOf(Math.Max(2, Studs + 1), Math.Max(1, Studs) + MoreStuds, count => IsHeld(Asked, count)) is { } studs)
            yield return $"{Number(studs)} studs, with a cleat screwed across them first";
        if (Longer() is { } thread)
            yield return $"{Asked.Say(thread)} of thread in each stud";
        if (Most() is { } most)
            yield return $"at most {most} in total, piece and contents";
    }

    private WallAsked Both(int count) => Asked with { Top = count, Bottom = count };

    private Length? Longer()
    {
        foreach (var thread in LongerThreads.Where(one => one > Asked.Thread.Value))
            if (IsHeld(Asked with { Thread = Working.Given("Thread", thread) }, Studs))
                return thread;
        return null;
    }

    // The load that leaves each fixing with all it may carry, in whole units, rounded down.
    private string? Most()
    {
        if (Studs < 2 || Share is not { } share)
            return null;
        var whole = Math.Floor(QuantityKind.Mass.FromMetric(Asked.Load.Value * 100 / share.Value, Asked.Unit));
        return whole >= 1 ? Number((int)whole) + " " + QuantityKind.Mass.Name(Asked.Unit) : null;
    }

    private static bool IsHeld(WallAsked asked, int studs) =>
        studs >= 2 && Load(asked).Share(studs * asked.Top, studs * asked.Bottom) <= 1;

    private static WallLoad Load(WallAsked asked) =>
        new(
            asked.Load,
            WallFixings.Pull(asked.Load, asked.Depth, asked.Height),
            WallFixings.Shear(asked.Fixing!, asked.Gravity, asked.Thread),
            WallFixings.Withdrawal(asked.Fixing!, asked.Gravity, asked.Thread)
        );

    private static Working<double> Bottoms(WallAsked asked, int studs) =>
        Working.Of(
            "Fasteners along the bottom",
            (double)(studs * asked.Bottom),
            QuantityKind.Bare,
            0,
            "{studs} × {each}",
            Working.Geometry,
            ("studs", Counted("Studs", studs)),
            ("each", Counted("Fasteners in each stud, bottom", asked.Bottom))
        );

    private static Working<double> Counted(string name, int count) => Working.Given(name, count, QuantityKind.Bare, 0);

    private static int? FirstOf(int from, int to, Func<int, bool> isEnough) =>
        Enumerable.Range(from, Math.Max(0, to - from + 1)).Where(isEnough).Select(one => (int?)one).FirstOrDefault();

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
