using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings;

/// <summary>How figures came about, step by step, each step once.</summary>
public static class WorkingSteps
{
    /// <summary>Returns the figures and all that went into them: each figure before what it was made from, and none
    /// twice.</summary>
    public static ImmutableArray<Working> Of(IEnumerable<Working> figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        var (seen, steps) = (new HashSet<(string, string, string)>(), ImmutableArray.CreateBuilder<Working>());
        foreach (var figure in figures)
            Add(figure, seen, steps);
        return steps.ToImmutable();
    }

    /// <summary>Returns why rules were not made for some of the values that the figures rest on, each reason once.</summary>
    public static ImmutableArray<string> Outside(IEnumerable<Working> figures) =>
        [.. Of(figures).Select(step => step.OutsideRange).OfType<string>().Distinct()];

    private static void Add(Working figure, HashSet<(string, string, string)> seen, ImmutableArray<Working>.Builder steps)
    {
        if (!seen.Add((figure.Name, figure.Template, figure.Figure.Text(LengthUnit.Inch))))
            return;
        steps.Add(figure);
        foreach (var input in figure.Inputs)
            Add(input.Working, seen, steps);
    }
}
