namespace ShopPlanner.Cutting.Steering;

/// <summary>How much of the time and of the rounds a phase may use up, counted from the start of the search.</summary>
internal sealed class SearchLimits(SearchControl control, SearchClock clock)
{
    private long rounds;

    public SearchClock Clock => clock;

    public void Count(long more) => rounds += more;

    /// <summary>True when the phase that may go up to this share of everything is over.</summary>
    public bool IsOver(double share) => clock.IsPast(share) || (control.Iterations is { } most && rounds >= most * share);

    /// <summary>Share of time or rounds, whichever is further, that is used up; zero without a limit.</summary>
    public double Share() =>
        Math.Max(
            control.Iterations is { } most ? (double)rounds / Math.Max(1, most) : 0,
            control.Time is { } time ? clock.Elapsed / time : 0
        );

    /// <summary>Rounds of a phase, so many or what the limit leaves.</summary>
    public long Rounds(long wanted) => control.Iterations is { } most ? Math.Clamp(most - rounds, 0, wanted) : wanted;
}
