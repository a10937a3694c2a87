namespace ShopPlanner.Scheduling.Checks;

/// <summary>How long something lasts, in words.</summary>
public static class Minutes
{
    private const int Hour = 60;

    /// <summary>Returns a time like <c>45 min</c>, <c>8 h</c>, <c>1 h 30 min</c>.</summary>
    /// <param name="minutes">Zero or more.</param>
    public static string Say(long minutes)
    {
        var (hours, rest) = (minutes / Hour, minutes % Hour);
        return (hours, rest) switch
        {
            (0, _) => Text($"{rest} min"),
            (_, 0) => Text($"{hours} h"),
            _ => Text($"{hours} h {rest} min"),
        };
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
