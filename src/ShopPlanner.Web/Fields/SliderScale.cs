using System.Globalization;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Fields;

/// <summary>The steps of a dimension's slider: sixteenths of an inch, millimetres, or ones.</summary>
/// <param name="Range">The dimension.</param>
/// <param name="Unit">Of the design.</param>
public sealed record SliderScale(DimensionRange Range, LengthUnit Unit)
{
    /// <summary>Whether it has both limits and there is something between them.</summary>
    public bool IsUsable => Range is { Least: not null, Most: not null } && Most > Least;

    /// <summary>First step.</summary>
    public long Least => -(-(Range.Least ?? 0) / Step);

    /// <summary>Last step.</summary>
    public long Most => (Range.Most ?? 0) / Step;

    /// <summary>Step nearest to the value; the first one where there is none.</summary>
    public long At => Range.Value is { } value ? (long)Math.Round((double)value / Step) : Least;

    /// <summary>What a step is written as.</summary>
    public string Text(long step) =>
        Range.Dimension.IsCount
            ? step.ToString(CultureInfo.InvariantCulture)
            : LengthFormat.Exact(Length.FromTicks(Math.Clamp(step * Step, Range.Least ?? 0, Range.Most ?? long.MaxValue)), Unit);

    /// <summary>A limit in words.</summary>
    public string? Limit(long? limit) =>
        limit is null ? null
        : Range.Dimension.IsCount ? limit.Value.ToString(CultureInfo.InvariantCulture)
        : LengthFormat.WithUnit(Length.FromTicks(limit.Value), Unit);

    private long Step =>
        Range.Dimension.IsCount ? 1
        : Unit == LengthUnit.Inch ? Length.TicksPerInch / 16
        : Length.TicksPerMillimetre;
}
