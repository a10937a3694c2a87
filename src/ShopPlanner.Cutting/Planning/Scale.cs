namespace ShopPlanner.Cutting.Planning;

/// <summary>The greatest common measure of a job's sizes, so that the solvers work with small whole numbers.</summary>
internal static class Scale
{
    /// <summary>The greatest number that divides all; 1 when there are none.</summary>
    public static long Of(IEnumerable<long> sizes)
    {
        var measure = sizes.Aggregate(0L, Common);
        return measure == 0 ? 1 : measure;
    }

    /// <summary>The quotient, rounded up.</summary>
    public static long Up(long size, long measure) => (size + measure - 1) / measure;

    private static long Common(long a, long b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }
}
