using System.Globalization;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Values within the limits of a design. A dimension whose limit is arithmetic on others is left alone: it follows
/// them.</summary>
internal static class DesignValues
{
    /// <summary>All corners of the limits, then so many chosen at random.</summary>
    public static IEnumerable<Dictionary<string, string>> Of(DesignDocument document, int trials, int seed) =>
        Corners(document).Concat(Chosen(document, trials, seed));

    private static IEnumerable<Dictionary<string, string>> Corners(DesignDocument document)
    {
        var plain = Plain(document);
        return Enumerable
            .Range(0, 1 << plain.Count)
            .Select(bits =>
                plain
                    .Select((one, i) => (one.Name, Text: (bits & (1 << i)) == 0 ? one.Least! : one.Most!))
                    .ToDictionary(one => one.Name, one => one.Text)
            );
    }

    private static IEnumerable<Dictionary<string, string>> Chosen(DesignDocument document, int trials, int seed)
    {
        var (plain, chance) = (Plain(document), new Random(seed));
        return Enumerable
            .Range(0, trials)
            .Select(_ => plain.ToDictionary(one => one.Name, one => Text(one, document.Unit, chance)));
    }

    private static List<DesignDimension> Plain(DesignDocument document) =>
        [.. document.Dimensions.Where(one => Limits(one, document.Unit) is not null)];

    private static string Text(DesignDimension dimension, LengthUnit unit, Random chance)
    {
        var (least, most) = Limits(dimension, unit)!.Value;
        if (dimension.IsCount)
            return chance.NextInt64(least, most + 1).ToString(CultureInfo.InvariantCulture);
        var step = unit == LengthUnit.Inch ? Length.TicksPerInch / 16 : Length.TicksPerMillimetre;
        return LengthFormat.Exact(Length.FromTicks(least + (chance.NextInt64(((most - least) / step) + 1) * step)), unit);
    }

    private static (long Least, long Most)? Limits(DesignDimension dimension, LengthUnit unit)
    {
        if (dimension.IsCount)
            return
                long.TryParse(dimension.Least, CultureInfo.InvariantCulture, out var few)
                && long.TryParse(dimension.Most, CultureInfo.InvariantCulture, out var many)
                ? (few, many)
                : null;
        var (least, most) = (LengthText.Parse(dimension.Least, unit), LengthText.Parse(dimension.Most, unit));
        return least.Ok && most.Ok ? (least.Value.Ticks, most.Value.Ticks) : null;
    }
}
