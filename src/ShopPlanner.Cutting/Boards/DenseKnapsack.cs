using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Bounded knapsack by dynamic programming over capacities, one pass for all kinds of stock. The values are whole numbers below
/// 2^53 held in doubles, which add them exactly and are compared four at a time. A pattern of the first j items in turn is a by-
/// product for each j, which gives many different patterns for one pass.
/// </summary>
internal sealed class DenseKnapsack(CuttingModel model) : IKnapsack
{
    private const int Block = 8;
    private readonly double[] best = new double[model.Longest + 1 + Block];
    private readonly int stride = (int)((model.Longest / Block) + 1);
    private readonly int patterns = Math.Clamp(32 / Math.Max(1, model.Kinds.Length), 1, 12);
    private byte[] taken = [];
    private bool backwards;

    /// <summary>Steps of one solution, as a measure of its time.</summary>
    public static double Work(CuttingModel model) =>
        model.Longest * (double)model.Sizes.Select((size, i) => Bundles(model, i)).Sum();

    public KnapsackResult Solve(long[] values, int[] wanted, long[] thresholds)
    {
        var bundles = Split(values, wanted);
        backwards = !backwards;
        Prepare(bundles.Count);
        var most = new long[model.Kinds.Length];
        var steps = new List<(int Bundle, long Value)>[model.Kinds.Length];
        for (var kind = 0; kind < most.Length; kind++)
            steps[kind] = [];
        for (var bundle = 0; bundle < bundles.Count; bundle++)
        {
            Improve(bundles[bundle], taken.AsSpan(bundle * stride, stride));
            Note(bundle, most, steps);
        }

        return new(most, Collect(bundles, steps, thresholds));
    }

    public bool IsSlow => false;

    public List<Pattern> Guess(long[] values, int[] wanted, long[] thresholds) => Solve(values, wanted, thresholds).Patterns;

    private static int Bundles(CuttingModel model, int item) =>
        (int)Math.Log2(Math.Min(model.Demands[item], model.Longest / model.Sizes[item]) + 1) + 1;

    private void Prepare(int bundles)
    {
        Array.Clear(best);
        if (taken.Length < bundles * (long)stride)
            taken = new byte[bundles * (long)stride];
    }

    // Bundles of 1, 2, 4 … pieces make every number of pieces up to what is wanted.
    private List<(int Item, int Count, long Size, double Value)> Split(long[] values, int[] wanted)
    {
        var bundles = new List<(int, int, long, double)>();
        for (var i = 0; i < values.Length; i++)
        {
            var item = backwards ? values.Length - 1 - i : i;
            if (values[item] <= 0)
                continue;
            var left = (int)Math.Min(wanted[item], model.Longest / model.Sizes[item]);
            for (var count = 1; left > 0; left -= count, count *= 2)
            {
                count = Math.Min(count, left);
                bundles.Add((item, count, count * model.Sizes[item], (double)(count * values[item])));
            }
        }

        return bundles;
    }

    private void Improve((int Item, int Count, long Size, double Value) bundle, Span<byte> taken)
    {
        taken.Clear();
        ref var best = ref MemoryMarshal.GetArrayDataReference(this.best);
        var value = Vector256.Create(bundle.Value);
        var size = (int)bundle.Size;
        for (var at = (int)model.Longest / Block * Block; at >= size; at -= Block)
            taken[at / Block] = Raise(ref best, at, size, value);
        if (size % Block != 0)
            RaiseFirst(size, bundle.Value, taken);
    }

    // Both halves are read before either is written, and lower capacities are still those without the bundle.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static byte Raise(ref double best, int at, int size, Vector256<double> value)
    {
        var low = Vector256.LoadUnsafe(ref best, (nuint)at);
        var high = Vector256.LoadUnsafe(ref best, (nuint)at + 4);
        var withLow = Vector256.LoadUnsafe(ref best, (nuint)(at - size)) + value;
        var withHigh = Vector256.LoadUnsafe(ref best, (nuint)(at - size) + 4) + value;
        var bits =
            Vector256.GreaterThan(withLow, low).ExtractMostSignificantBits()
            | (Vector256.GreaterThan(withHigh, high).ExtractMostSignificantBits() << 4);
        if (bits == 0)
            return 0;
        Vector256.Max(low, withLow).StoreUnsafe(ref best, (nuint)at);
        Vector256.Max(high, withHigh).StoreUnsafe(ref best, (nuint)at + 4);
        return (byte)bits;
    }

    // The block in which the bundle begins to fit; what it is added to lies before the first whole block.
    private void RaiseFirst(int size, double value, Span<byte> taken)
    {
        var end = Math.Min((size / Block * Block) + Block - 1, (int)model.Longest);
        for (var at = end; at >= size; at--)
        {
            if (best[at - size] + value <= best[at])
                continue;
            best[at] = best[at - size] + value;
            taken[at / Block] |= (byte)(1 << (at % Block));
        }
    }

    private void Note(int bundle, long[] most, List<(int Bundle, long Value)>[] steps)
    {
        for (var kind = 0; kind < most.Length; kind++)
        {
            var value = (long)best[model.Kinds[kind].Capacity];
            if (value <= most[kind])
                continue;
            most[kind] = value;
            steps[kind].Add((bundle, value));
        }
    }

    private List<Pattern> Collect(
        List<(int Item, int Count, long Size, double Value)> bundles,
        List<(int Bundle, long Value)>[] steps,
        long[] thresholds
    )
    {
        var found = new List<Pattern>();
        for (var kind = 0; kind < steps.Length; kind++)
        {
            var worth = steps[kind].Where(step => step.Value > thresholds[kind]).ToList();
            var every = Math.Max(1, worth.Count / patterns);
            for (var i = worth.Count - 1; i >= 0; i -= every)
                found.Add(Trace(kind, worth[i].Bundle, bundles));
        }

        return found;
    }

    private Pattern Trace(int kind, int last, List<(int Item, int Count, long Size, double Value)> bundles)
    {
        var counts = new int[model.Count];
        var at = (int)model.Kinds[kind].Capacity;
        for (var bundle = last; bundle >= 0; bundle--)
        {
            if ((taken[((long)bundle * stride) + (at / Block)] >> (at % Block) & 1) == 0)
                continue;
            counts[bundles[bundle].Item] += bundles[bundle].Count;
            at -= (int)bundles[bundle].Size;
        }

        return Pattern.FromCounts(kind, counts);
    }
}
