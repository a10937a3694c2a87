namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>
/// A measure of lengths from 0 to a stock's side that never counts a row of pieces for less than its parts: f is nondecreasing
/// and f(a) + f(b) ≤ f(a + b). For two such measures, f(width) · g(height) summed over the parts of a guillotine layout never
/// passes the stock's own: it holds for a part, and every cut keeps it.
/// </summary>
internal abstract record SideFunction(long Side)
{
    public abstract long Of(long x);
}

/// <summary>The length itself.</summary>
internal sealed record Plain(long Side) : SideFunction(Side)
{
    public override long Of(long x) => x;
}

/// <summary>Long ones count as the whole side, short ones as nothing (Martello and Vigo 1998; U of Fekete and Schepers
/// 2001).</summary>
/// <param name="Side">The stock's.</param>
/// <param name="Least">Shortest length that counts, at most half the side.</param>
internal sealed record Threshold(long Side, long Least) : SideFunction(Side)
{
    public override long Of(long x) =>
        x > Side - Least ? Side
        : x < Least ? 0
        : x;
}

/// <summary>Rounding to k-ths of the side (u of Fekete and Schepers 2001), times k to stay whole.</summary>
/// <param name="Side">The stock's.</param>
/// <param name="K">One or more.</param>
internal sealed record Steps(long Side, long K) : SideFunction(Side)
{
    public override long Of(long x) => (K + 1) * x % Side == 0 ? K * x : (K + 1) * x / Side * Side;
}

/// <summary>Multiples of a length, rounded down below half the side and up above it (Carlier, Clautiaux and Moukrim
/// 2007).</summary>
/// <param name="Side">The stock's.</param>
/// <param name="Unit">At most half the side.</param>
internal sealed record Multiples(long Side, long Unit) : SideFunction(Side)
{
    public override long Of(long x) =>
        2 * x < Side ? 2 * (x / Unit)
        : 2 * x == Side ? Side / Unit
        : 2 * ((Side / Unit) - ((Side - x) / Unit));
}

/// <summary>The measures worth trying for the sides that occur.</summary>
internal static class SideFunctions
{
    private const int MostSteps = 12;

    public static List<SideFunction> For(long side, IEnumerable<long> lengths, int most)
    {
        var marks = lengths
            .SelectMany(x => new[] { x, x + 1, side - x + 1, side - x })
            .Where(x => x > 0 && 2 * x <= side)
            .Distinct()
            .Order()
            .ToList();
        var thin = Thinned(marks, most);
        return
        [
            new Plain(side),
            .. Enumerable.Range(1, MostSteps).Select(k => new Steps(side, k)),
            .. thin.Select(x => new Threshold(side, x)),
            .. thin.Select(x => new Multiples(side, x)),
        ];
    }

    private static List<long> Thinned(List<long> marks, int most) =>
        marks.Count <= most ? marks : [.. Enumerable.Range(0, most).Select(i => marks[(int)((long)i * marks.Count / most)])];
}
