using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>A length as a fence or a stop is set: the last mark of a rule, and sheets of paper for what is left.</summary>
/// <param name="Length">Exact.</param>
public sealed record SettingFigure(Length Length) : Figure
{
    /// <summary>How thick a sheet is.</summary>
    public const string Paper =
        "A sheet of copy paper is about 0.004 in (0.1 mm) thick: measure a stack of ten (common practice).";

    private const long PaperTicks = Length.TicksPerMillimetre / 10;

    /// <summary>Whether it takes paper to set.</summary>
    /// <param name="length">Exact.</param>
    /// <param name="unit">Of the rule.</param>
    public static bool TakesPaper(Length length, LengthUnit unit) => Split(length, unit).Sheets > 0;

    /// <summary>The setting as it is told.</summary>
    /// <inheritdoc cref="TakesPaper" path="/param"/>
    public static string Of(Length length, LengthUnit unit)
    {
        var (mark, sheets) = Split(length, unit);
        var set = LengthFormat.WithUnit(mark, unit);
        return sheets switch
        {
            0 => set,
            1 => set + " + 1 sheet of paper",
            _ => FormattableString.Invariant($"{set} + {sheets} sheets of paper"),
        };
    }

    /// <inheritdoc />
    public override string Text(LengthUnit unit) => Of(Length, unit);

    /// <inheritdoc />
    public override string UnitName(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";

    /// <inheritdoc />
    public override double? Number(LengthUnit unit) => (double)Length.To(unit);

    // Sixty-fourths of an inch or half millimeters; as many sheets as come nearest.
    private static (Length Mark, long Sheets) Split(Length length, LengthUnit unit)
    {
        var step = unit == LengthUnit.Inch ? Length.TicksPerInch / LengthFormat.FinestDenominator : Length.TicksPerMillimetre / 2;
        var marks = length.Ticks / step;
        var rest = length.Ticks - (marks * step);
        var sheets = (rest + (PaperTicks / 2)) / PaperTicks;
        return step - rest <= PaperTicks / 2
            ? (Length.FromTicks((marks + 1) * step), 0)
            : (Length.FromTicks(marks * step), sheets);
    }
}
