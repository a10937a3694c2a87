namespace ShopPlanner.Core.Measures;

/// <summary>Rounds a length to a mark that a rule in the shop has: sixteenths of an inch, or whole millimeters. What must not be
/// too short is rounded up, what must not be too long is rounded down.</summary>
public static class RuleMarks
{
    private const int PerInch = 16;

    /// <summary>The next mark that is not below the length.</summary>
    public static Length Up(Length length, LengthUnit unit) =>
        Length.FromTicks((long)Math.Ceiling((decimal)length.Ticks / Step(unit)) * Step(unit));

    /// <summary>The last mark that is not above the length.</summary>
    public static Length Down(Length length, LengthUnit unit) =>
        Length.FromTicks((long)Math.Floor((decimal)length.Ticks / Step(unit)) * Step(unit));

    /// <summary>The nearest half mark: thirty-seconds of an inch, or half millimeters.</summary>
    public static Length Nearest(Length length, LengthUnit unit)
    {
        var half = Step(unit) / 2;
        return Length.FromTicks((long)Math.Round((decimal)length.Ticks / half, MidpointRounding.AwayFromZero) * half);
    }

    private static long Step(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.TicksPerInch / PerInch : Length.TicksPerMillimetre;
}
