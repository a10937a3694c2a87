using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Gathers what fences, stops and bits are set to: a figure that is the same for all parts is told once, one that
/// differs for each of them.</summary>
internal sealed class FigureList
{
    private readonly List<(string Name, string Of, Length Value)> all = [];

    /// <summary>Adds a figure.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="of">Of which part, told where others have another value.</param>
    /// <param name="value">How long.</param>
    public void Add(string name, string of, Length value) => all.Add((name, of, value));

    /// <summary>The figures in the order in which their names came.</summary>
    public ImmutableArray<WorkFigure> Figures =>
        [.. all.GroupBy(one => one.Name, StringComparer.Ordinal).SelectMany(same => Told(same.Key, [.. same]))];

    private static IEnumerable<WorkFigure> Told(string name, List<(string Name, string Of, Length Value)> same)
    {
        var values = same.GroupBy(one => one.Value).ToList();
        if (values.Count == 1)
            return [new(name, values[0].Key)];
        return values.Select(value => new WorkFigure($"{name}, {WordList.Of(value.Select(one => one.Of))}", value.Key));
    }
}
