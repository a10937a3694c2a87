namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Bounded knapsack by branch and bound, items in order of value per size, for capacities too large to tabulate. Stops after a
/// number of steps; what it could not settle it leaves to another knapsack, or, where that cannot be had either, answers with the
/// continuous bound, which is never too low.
/// </summary>
internal sealed class BranchKnapsack(CuttingModel model, long steps, IKnapsack? otherwise) : IKnapsack
{
    private const int GiveUpAfter = 3;
    private const long GuessSteps = 20_000;
    private int failures;

    public bool IsSlow => otherwise is not null && failures >= GiveUpAfter;

    public KnapsackResult Solve(long[] values, int[] wanted, long[] thresholds)
    {
        if (IsSlow)
            return otherwise!.Solve(values, wanted, thresholds);
        var run = new Run(model, values, wanted, steps);
        var most = new long[model.Kinds.Length];
        var patterns = new List<Pattern>();
        for (var kind = 0; kind < most.Length; kind++)
        {
            most[kind] = run.Solve(kind, thresholds[kind], patterns);
            if (!run.Exhausted || otherwise is null)
                continue;
            failures++;
            return otherwise.Solve(values, wanted, thresholds);
        }

        failures = 0;
        return new(most, patterns);
    }

    public List<Pattern> Guess(long[] values, int[] wanted, long[] thresholds)
    {
        var run = new Run(model, values, wanted, GuessSteps);
        var patterns = new List<Pattern>();
        for (var kind = 0; kind < model.Kinds.Length; kind++)
            run.Solve(kind, thresholds[kind], patterns);
        return patterns;
    }

    private sealed class Run
    {
        private const int Kept = 8;
        private readonly CuttingModel model;
        private readonly int[] order;
        private readonly long[] values;
        private readonly long[] sizes;
        private readonly int[] most;
        private readonly double[] rates;
        private readonly long[] smallest;
        private readonly int[] counts;
        private readonly long steps;
        private long step;
        private long best;
        private List<int[]> improvements = [];

        public Run(CuttingModel model, long[] values, int[] wanted, long steps)
        {
            this.model = model;
            this.steps = steps;
            order =
            [
                .. Enumerable
                    .Range(0, values.Length)
                    .Where(i => values[i] > 0 && wanted[i] > 0)
                    .OrderByDescending(i => values[i] / (double)model.Sizes[i])
                    .ThenBy(i => i),
            ];
            this.values = [.. order.Select(i => values[i])];
            sizes = [.. order.Select(i => model.Sizes[i])];
            most = [.. order.Select(i => wanted[i])];
            // A little too much, so that the bound in doubles is never below the true one.
            rates = [.. order.Select((_, at) => this.values[at] / (double)sizes[at] * (1 + 1e-12))];
            smallest = SmallestFrom(sizes);
            counts = new int[order.Length];
        }

        public bool Exhausted => step > steps;

        /// <summary>No pattern of the kind is worth more than this; adds those found worth more than the threshold.</summary>
        public long Solve(int kind, long threshold, List<Pattern> patterns)
        {
            (step, best, improvements) = (0, 0, []);
            Array.Clear(this.counts);
            Descend(0, model.Kinds[kind].Capacity, 0, threshold);
            foreach (var counts in improvements.TakeLast(Kept))
                patterns.Add(Build(kind, counts));
            return Exhausted ? Continuous(model.Kinds[kind].Capacity) : best;
        }

        private static long[] SmallestFrom(long[] sizes)
        {
            var smallest = new long[sizes.Length + 1];
            smallest[^1] = long.MaxValue;
            for (var at = sizes.Length - 1; at >= 0; at--)
                smallest[at] = Math.Min(sizes[at], smallest[at + 1]);
            return smallest;
        }

        private void Descend(int at, long room, long value, long threshold)
        {
            if (value > best)
                Improve(value, threshold);
            while (at < order.Length && sizes[at] > room)
                at++;
            if (at == order.Length || room < smallest[at] || ++step > steps)
                return;
            if (value + (room * rates[at]) < best + 1)
                return;
            var most = (int)Math.Min(this.most[at], room / sizes[at]);
            for (var count = most; count >= 0; count--)
            {
                var rest = room - (count * sizes[at]);
                var next = at + 1 < rates.Length ? rates[at + 1] : 0;
                if (count < most && value + (count * values[at]) + (rest * next) < best + 1)
                    break;
                counts[at] = count;
                Descend(at + 1, rest, value + (count * values[at]), threshold);
            }

            counts[at] = 0;
        }

        private void Improve(long value, long threshold)
        {
            best = value;
            if (value > threshold)
                improvements.Add((int[])counts.Clone());
        }

        private long Continuous(long room)
        {
            var value = 0.0;
            for (var at = 0; at < order.Length && room > 0; at++)
            {
                var size = Math.Min(room, most[at] * sizes[at]);
                value += size * rates[at];
                room -= size;
            }

            return Math.Max(best, (long)Math.Ceiling(value));
        }

        private Pattern Build(int kind, int[] counts)
        {
            var byItem = new int[model.Count];
            for (var at = 0; at < counts.Length; at++)
                byItem[order[at]] = counts[at];
            return Pattern.FromCounts(kind, byItem);
        }
    }
}
