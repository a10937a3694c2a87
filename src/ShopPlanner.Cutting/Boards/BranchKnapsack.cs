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
    private int _failures;

    public bool IsSlow => otherwise is not null && _failures >= GiveUpAfter;

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
            _failures++;
            return otherwise.Solve(values, wanted, thresholds);
        }

        _failures = 0;
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
        private readonly CuttingModel _model;
        private readonly int[] _order;
        private readonly long[] _values;
        private readonly long[] _sizes;
        private readonly int[] _most;
        private readonly double[] _rates;
        private readonly long[] _smallest;
        private readonly int[] _counts;
        private readonly long _steps;
        private long _step;
        private long _best;
        private List<int[]> _improvements = [];

        public Run(CuttingModel model, long[] values, int[] wanted, long steps)
        {
            _model = model;
            _steps = steps;
            _order =
            [
                .. Enumerable
                    .Range(0, values.Length)
                    .Where(i => values[i] > 0 && wanted[i] > 0)
                    .OrderByDescending(i => values[i] / (double)model.Sizes[i])
                    .ThenBy(i => i),
            ];
            _values = [.. _order.Select(i => values[i])];
            _sizes = [.. _order.Select(i => model.Sizes[i])];
            _most = [.. _order.Select(i => wanted[i])];
            // A hair too much, so that the bound in doubles is never below the true one.
            _rates = [.. _order.Select((_, at) => _values[at] / (double)_sizes[at] * (1 + 1e-12))];
            _smallest = SmallestFrom(_sizes);
            _counts = new int[_order.Length];
        }

        public bool Exhausted => _step > _steps;

        /// <summary>No pattern of the kind is worth more than this; adds those found worth more than the threshold.</summary>
        public long Solve(int kind, long threshold, List<Pattern> patterns)
        {
            (_step, _best, _improvements) = (0, 0, []);
            Array.Clear(_counts);
            Descend(0, _model.Kinds[kind].Capacity, 0, threshold);
            foreach (var counts in _improvements.TakeLast(Kept))
                patterns.Add(Build(kind, counts));
            return Exhausted ? Continuous(_model.Kinds[kind].Capacity) : _best;
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
            if (value > _best)
                Improve(value, threshold);
            while (at < _order.Length && _sizes[at] > room)
                at++;
            if (at == _order.Length || room < _smallest[at] || ++_step > _steps)
                return;
            if (value + (room * _rates[at]) < _best + 1)
                return;
            var most = (int)Math.Min(_most[at], room / _sizes[at]);
            for (var count = most; count >= 0; count--)
            {
                var rest = room - (count * _sizes[at]);
                var next = at + 1 < _rates.Length ? _rates[at + 1] : 0;
                if (count < most && value + (count * _values[at]) + (rest * next) < _best + 1)
                    break;
                _counts[at] = count;
                Descend(at + 1, rest, value + (count * _values[at]), threshold);
            }

            _counts[at] = 0;
        }

        private void Improve(long value, long threshold)
        {
            _best = value;
            if (value > threshold)
                _improvements.Add((int[])_counts.Clone());
        }

        private long Continuous(long room)
        {
            var value = 0.0;
            for (var at = 0; at < _order.Length && room > 0; at++)
            {
                var size = Math.Min(room, _most[at] * _sizes[at]);
                value += size * _rates[at];
                room -= size;
            }

            return Math.Max(_best, (long)Math.Ceiling(value));
        }

        private Pattern Build(int kind, int[] counts)
        {
            var byItem = new int[_model.Count];
            for (var at = 0; at < counts.Length; at++)
                byItem[_order[at]] = counts[at];
            return Pattern.FromCounts(kind, byItem);
        }
    }
}
