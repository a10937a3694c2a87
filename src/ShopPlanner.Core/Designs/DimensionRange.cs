using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs;

/// <summary>A named dimension with what it and its limits come to now.</summary>
/// <param name="Dimension">As the design has it.</param>
/// <param name="Text">As it stands: what was set, or the design's own text.</param>
/// <param name="IsSet">True where it was set, false where it follows the design.</param>
/// <param name="Value">Ticks of a length, or the whole number; null where it cannot be read or lies outside its limits.</param>
/// <param name="Least">Least value, in the same terms; null for none.</param>
/// <param name="Most">Greatest value; null for none.</param>
public sealed record DimensionRange(DesignDimension Dimension, string Text, bool IsSet, long? Value, long? Least, long? Most)
{
    /// <summary>Reads every dimension of a design; limits by arithmetic are worked out.</summary>
    /// <param name="document">The design.</param>
    /// <param name="changed">Texts in place of the document's.</param>
    public static ImmutableArray<DimensionRange> Of(DesignDocument document, IReadOnlyDictionary<string, string> changed)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(changed);
        // What is wrong the evaluation tells; here it only means that there is no figure.
        var scope = new Scope(document, changed, []);
        return [.. document.Dimensions.Select(one => Read(one, changed, scope))];
    }

    private static DimensionRange Read(DesignDimension dimension, IReadOnlyDictionary<string, string> changed, Scope scope)
    {
        var isSet = changed.TryGetValue(dimension.Name, out var text);
        return new(
            dimension,
            text ?? dimension.Value,
            isSet,
            Plain(scope.Find(dimension.Name, dimension.Name)),
            Limit(dimension.Least),
            Limit(dimension.Most)
        );

        long? Limit(string? limit) =>
            limit is null ? null
            : dimension.IsCount ? scope.Count(limit, dimension.Name)
            : scope.Length(dimension.Label, limit, dimension.Name)?.Value.Ticks;
    }

    private static long? Plain(Working? working) =>
        working switch
        {
            Working<Length> length => length.Value.Ticks,
            Working<int> count => count.Value,
            _ => null,
        };
}
