using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>How drawer fronts grow from the top one down.</summary>
internal enum Graded
{
    /// <summary>All alike.</summary>
    Equal,

    /// <summary>Each taller than the one above by the same amount.</summary>
    Step,

    /// <summary>Each taller than the one above by the same ratio.</summary>
    Ratio,
}

/// <summary>Heights of drawer fronts one above the other.</summary>
internal static class DrawerFronts
{
    /// <summary>Gaps between fronts.</summary>
    public static readonly SourceNote Gaps = new(
        "Geometry; 1/8 in between overlay fronts as a woodwork institute has it, 1/16 to 3/32 in around inset ones",
        Certainty.Quoted
    );

    /// <summary>What the fronts share: the height without its gaps.</summary>
    /// <param name="height">Of the case for overlay fronts, of the opening for inset ones.</param>
    /// <param name="outer">Gap above the first and below the last.</param>
    /// <param name="between">Gap between two.</param>
    /// <param name="count">One or more.</param>
    public static Working<Length> Shared(Working<Length> height, Working<Length> outer, Working<Length> between, int count)
    {
        var gaps = Working.Given("Gaps between", count - 1, QuantityKind.Bare, 0);
        return Working.Of(
            "All fronts together",
            height.Value - (outer.Value * 2) - (between.Value * (count - 1)),
            "{height} − 2 × {outer} − {gaps} × {between}",
            Gaps,
            ("height", height),
            ("outer", outer),
            ("gaps", gaps),
            ("between", between)
        );
    }

    /// <summary>The top front's height as it comes out, not rounded; zero or less where the grading takes it all.</summary>
    public static double First(Length shared, int count, Graded graded, Length step, double ratio) =>
        graded switch
        {
            Graded.Step => (shared.Ticks - (step.Ticks * (count * (count - 1) / 2.0))) / count,
            Graded.Ratio when Math.Abs(ratio - 1) > 1e-9 => shared.Ticks * (ratio - 1) / (Math.Pow(ratio, count) - 1),
            _ => (double)shared.Ticks / count,
        };

    /// <summary>All heights from the top down. Each ends at the tick where its exact end lies, so they fill the height.</summary>
    public static ImmutableArray<Length> Heights(double first, int count, Graded graded, Length step, double ratio)
    {
        var ends = new long[count + 1];
        var sum = 0.0;
        for (var i = 0; i < count; i++)
        {
            sum += graded switch
            {
                Graded.Step => first + (step.Ticks * (double)i),
                Graded.Ratio => first * Math.Pow(ratio, i),
                _ => first,
            };
            ends[i + 1] = (long)Math.Round(sum);
        }

        return [.. Enumerable.Range(0, count).Select(i => Length.FromTicks(ends[i + 1] - ends[i]))];
    }
}
