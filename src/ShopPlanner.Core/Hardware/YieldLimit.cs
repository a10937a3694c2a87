namespace ShopPlanner.Core.Hardware;

/// <summary>What a screw holds sideways by the yield equations of the design specification, with a gap between the pieces as its
/// technical report on dowel equations has it (inputs and the form with a gap from memory).</summary>
internal static class YieldLimit
{
    /// <summary>The smallest of the six ways in which a joint of two pieces of the same wood gives way, lb: a design load for ten
    /// years.</summary>
    /// <param name="screw">The screw.</param>
    /// <param name="gravity">Of the wood.</param>
    /// <param name="near">Thickness of the near piece, inches.</param>
    /// <param name="far">Thread in the far piece, inches.</param>
    /// <param name="gap">Between the pieces, inches: drywall counts as nothing.</param>
    public static double Of(HoldingScrew screw, double gravity, double near, double far, double gap)
    {
        var (d, bearing) = (screw.Root, 16_600 * Math.Pow(gravity, 1.84));
        var line = bearing * d; // lb for each inch of screw in the wood
        var moment = screw.Yield * d * d * d / 6;
        var (nearTurns, farTurns) = (line * near * near / 4, line * far * far / 4);
        double[] ways =
        [
            line * far,
            line * near,
            Root(2 / (4 * line), (near / 2) + gap + (far / 2), nearTurns + farTurns),
            Root(3 / (4 * line), gap + (far / 2), moment + farTurns),
            Root(3 / (4 * line), (near / 2) + gap, nearTurns + moment),
            Root(1 / line, gap, 2 * moment),
        ];
        return ways.Min() / (d <= 0.17 ? 2.2 : (10 * d) + 0.5);
    }

    // The load at which a × load² + b × load = c.
    private static double Root(double a, double b, double c) => (Math.Sqrt((b * b) + (4 * a * c)) - b) / (2 * a);
}
