using System.Globalization;

namespace ShopPlanner.Core.Measures;

/// <summary>
/// A length as hands set a fence or a stop to it: a mark of the rule, and what the exact length lacks of it. The mark is the
/// one at or above the length, so that a piece cut at the mark is never too short, and a shim between the piece and the fence
/// or stop takes off the rest; of a strip that is taken off a part it is the mark at or below, so that what remains is never
/// too short. What is stored and worked out stays exact.
/// <para>Common practice, where the shop says nothing: a rule with thirty-seconds of an inch, or half millimeters, is what can
/// be set by eye.</para>
/// </summary>
/// <param name="Exact">The exact length.</param>
/// <param name="Mark">The mark to set.</param>
/// <param name="Unit">Of the rule.</param>
public readonly record struct RuleFigure(Length Exact, Length Mark, LengthUnit Unit)
{
    private const int Denominator = 32;

    private static readonly Length HalfMillimetre = Length.FromMillimetres(0.5m);

    // Common practice: paper is a tenth of a millimetre, and half of that is neither seen nor felt.
    private static readonly Length Unseen = Length.FromMillimetres(0.05m);

    // Common practice: a playing card is 0.3 mm, the thinnest shim that is found in a shop.
    private static readonly Length ByEye = Length.FromMillimetres(0.25m);

    /// <summary>The mark at or above a length: for a piece that must not come out short.</summary>
    /// <param name="exact">Zero or more.</param>
    /// <param name="unit">Of the rule.</param>
    public static RuleFigure NotShort(Length exact, LengthUnit unit) => At(exact, unit, up: true);

    /// <summary>The mark at or below a length: for a strip that is taken off.</summary>
    /// <param name="exact">Zero or more.</param>
    /// <param name="unit">Of the rule.</param>
    public static RuleFigure NotMore(Length exact, LengthUnit unit) => At(exact, unit, up: false);

    /// <summary>Whether the exact length is on a mark, as far as eye and finger can tell.</summary>
    public bool IsOnMark => Distance <= Unseen;

    /// <summary>The mark: <c>11 ¾″</c>, <c>298.5 mm</c>.</summary>
    public string Text => Bare + Sign;

    /// <summary>The mark where the unit is named elsewhere: <c>11 ¾</c>.</summary>
    public string Bare => LengthFormat.Set(Mark, Unit).Text;

    /// <summary>On which side of the mark: <c>just under</c>, <c>just over</c>; empty on the mark.</summary>
    public string Nearness =>
        IsOnMark ? ""
        : Exact < Mark ? "just under"
        : "just over";

    /// <summary>How far from the mark, as thick as the shim that makes it exact: <c>1/64″</c>, <c>0.4 mm</c>; empty on the mark,
    /// and for less than a shim, which is set by eye.</summary>
    public string Shim => Distance <= ByEye ? "" : Thickness(Distance);

    /// <summary>The figure in a few words: <c>11 ¾″</c>, <c>just under 11 ¾″</c>.</summary>
    /// <param name="withUnit">Whether the mark carries its unit.</param>
    public string Short(bool withUnit = true) => $"{Nearness} {(withUnit ? Text : Bare)}".TrimStart();

    /// <summary>The figure in words: <c>11 ¾″</c>, <c>just under 11 ¾″ by 1/64″</c>.</summary>
    public string InWords => Shim.Length == 0 ? Short() : $"{Short()} by {Shim}";

    private Length Distance => Exact < Mark ? Mark - Exact : Exact - Mark;

    private string Sign => Unit == LengthUnit.Inch ? "″" : " mm";

    private static RuleFigure At(Length exact, LengthUnit unit, bool up)
    {
        var step = unit == LengthUnit.Inch ? Length.TicksPerInch / Denominator : HalfMillimetre.Ticks;
        var below = Math.DivRem(exact.Ticks, step, out var rest);
        var isNear = rest <= Unseen.Ticks || step - rest <= Unseen.Ticks;
        var above = isNear ? rest > Unseen.Ticks : up;
        return new(exact, Length.FromTicks((below + (above ? 1 : 0)) * step), unit);
    }

    // Sixty-fourths are what shims are sold and planed to; anything else is told as a feeler gauge tells it (common practice:
    // thousandths of an inch, hundredths of a millimetre; a tenth does here).
    private string Thickness(Length thickness)
    {
        if (Unit == LengthUnit.Inch && thickness.Ticks % (Length.TicksPerInch / LengthFormat.FinestDenominator) == 0)
            return LengthFormat.Set(thickness, Unit).Text + Sign;
        return Unit == LengthUnit.Inch
            ? thickness.ToInches().ToString("0.000", CultureInfo.InvariantCulture) + Sign
            : thickness.ToMillimetres().ToString("0.0", CultureInfo.InvariantCulture) + Sign;
    }
}
