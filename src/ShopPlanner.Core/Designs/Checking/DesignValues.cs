using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Checking;

/// <summary>Values of a design's named dimensions within their limits. A dimension without both limits keeps its own. Limits that
/// depend on other dimensions are read after those are set, in the order of the document.</summary>
internal static class DesignValues
{
    /// <summary>The most dimensions whose limits are all combined: 2 to the power of this many pieces.</summary>
    public const int MostCorners = 12;

    /// <summary>All combinations of least and greatest values; of the first <see cref="MostCorners"/> dimensions where there are
    /// more.</summary>
    public static IEnumerable<ImmutableDictionary<string, string>> Corners(DesignDocument document)
    {
        var limited = Limited(document).Take(MostCorners).ToList();
        for (var corner = 0; corner < 1 << limited.Count; corner++)
        {
            var chosen = corner;
            yield return Set(
                document,
                limited,
                (range, place) => (chosen >> place & 1) == 0 ? range.Least!.Value : range.Most!.Value
            );
        }
    }

    /// <summary>Values at random, in steps that can be set: sixteenths of an inch or whole millimetres.</summary>
    public static ImmutableDictionary<string, string> Random(DesignDocument document, Random chance) =>
        Set(document, Limited(document), (range, _) => Within(range, document.Unit, chance));

    private static List<DesignDimension> Limited(DesignDocument document) =>
        [.. document.Dimensions.Where(one => one is { Least: not null, Most: not null })];

    private static ImmutableDictionary<string, string> Set(
        DesignDocument document,
        List<DesignDimension> dimensions,
        Func<DimensionRange, int, long> choose
    )
    {
        var values = ImmutableDictionary<string, string>.Empty;
        for (var place = 0; place < dimensions.Count; place++)
        {
            var range = DimensionRange.Of(document, values).Single(one => one.Dimension == dimensions[place]);
            if (range is { Least: { } least, Most: { } most } && least <= most)
                values = values.Add(range.Dimension.Name, Text(range.Dimension, choose(range, place), document.Unit));
        }

        return values;
    }

    private static long Within(DimensionRange range, LengthUnit unit, Random chance)
    {
        var (least, most) = (range.Least!.Value, range.Most!.Value);
        var step =
            range.Dimension.IsCount ? 1
            : unit == LengthUnit.Inch ? Length.TicksPerInch / 16
            : Length.TicksPerMillimetre;
        return least + (chance.NextInt64(((most - least) / step) + 1) * step);
    }

    private static string Text(DesignDimension dimension, long value, LengthUnit unit) =>
        dimension.IsCount ? value.ToString(CultureInfo.InvariantCulture) : LengthFormat.Exact(Length.FromTicks(value), unit);
}
