namespace ShopPlanner.Core.Measures;

/// <summary>Rounds a length up to a step, for what must not be told too small.</summary>
public static class LengthSteps
{
    /// <summary>The next length that is shown exactly: sixty-fourths of an inch, or tenths of a millimeter.</summary>
    public static Length ShownUp(Length length, LengthUnit unit) =>
        Up(
            length,
            unit == LengthUnit.Inch ? Length.TicksPerInch / LengthFormat.FinestDenominator : Length.TicksPerMillimetre / 10
        );

    /// <summary>The next half mark of a rule: thirty-seconds of an inch, or half millimeters.</summary>
    public static Length HalfMarkUp(Length length, LengthUnit unit) =>
        Up(length, unit == LengthUnit.Inch ? Length.TicksPerInch / 32 : Length.TicksPerMillimetre / 2);

    private static Length Up(Length length, long step)
    {
        var (whole, rest) = Math.DivRem(length.Ticks, step);
        return Length.FromTicks((whole + (rest > 0 ? 1 : 0)) * step);
    }
}
