using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// What is preferred among plans of equal cost, the first difference deciding: more of the bin used up, less new stock opened,
/// more valuable leftovers, fewer settings.
/// <para>
/// A leftover shorter than its stock's <see cref="BoardStock.KeepAtLeast"/> is worth nothing; a longer one 10,000·(r/L)^1.25,
/// rounded, with r its remaining capacity and L the longest stock's capacity. The power makes one long leftover worth more than
/// two halves, and a piece cut from a long offcut dearer than the same piece cut from a short one. The power itself is a choice
/// of ours.
/// </para>
/// </summary>
/// <param name="FromBin">Size of all pieces cut from the bin's stock; more is better.</param>
/// <param name="NewStocks">Stocks cut that are not from the bin; fewer is better.</param>
/// <param name="Leftovers">Value of all leftovers, less the value that the bin's stock had before it was cut; more is
/// better.</param>
/// <param name="Patterns">Different ways of cutting, each a setting of the stops; fewer is better.</param>
public sealed record BoardObjectives(long FromBin, long NewStocks, long Leftovers, int Patterns) : IComparable<BoardObjectives>
{
    private const double Power = 1.25;
    private const double Full = 10_000;

    /// <summary>The objectives of a solution.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="solution">Of that problem.</param>
    public static BoardObjectives Of(BoardProblem problem, BoardSolution solution)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solution);
        var longest = problem.Stocks.Select(stock => stock.Capacity).DefaultIfEmpty(1).Max();
        return Sum(
            solution.Patterns.Select(pattern =>
            {
                var used = pattern.Counts.Select((count, item) => count * problem.Items[item].Size).Sum();
                return (One(problem.Stocks[pattern.Stock], used, longest), pattern.Times);
            })
        );
    }

    /// <summary>Positive when this is better than the other.</summary>
    public int CompareTo(BoardObjectives? other) =>
        other is null
            ? 1
            : (FromBin, -NewStocks, Leftovers, -Patterns).CompareTo(
                (other.FromBin, -other.NewStocks, other.Leftovers, -other.Patterns)
            );

    /// <summary>True when worse than the other.</summary>
    public static bool operator <(BoardObjectives left, BoardObjectives right) => Compare(left, right) < 0;

    /// <summary>True when better than the other.</summary>
    public static bool operator >(BoardObjectives left, BoardObjectives right) => Compare(left, right) > 0;

    /// <summary>True when no better than the other.</summary>
    public static bool operator <=(BoardObjectives left, BoardObjectives right) => Compare(left, right) <= 0;

    /// <summary>True when no worse than the other.</summary>
    public static bool operator >=(BoardObjectives left, BoardObjectives right) => Compare(left, right) >= 0;

    /// <summary>What one stock cut once, with so much of it used, adds.</summary>
    internal static BoardObjectives One(BoardStock stock, long used, long longest)
    {
        var lost = stock.FromBin ? Value(stock, stock.Capacity, longest) : 0;
        return new(stock.FromBin ? used : 0, stock.FromBin ? 0 : 1, Value(stock, stock.Capacity - used, longest) - lost, 1);
    }

    /// <summary>The sum over different ways of cutting.</summary>
    internal static BoardObjectives Sum(IEnumerable<(BoardObjectives One, int Times)> cuts) =>
        cuts.Aggregate(
            new BoardObjectives(0, 0, 0, 0),
            (sum, cut) =>
                new(
                    sum.FromBin + (cut.One.FromBin * cut.Times),
                    sum.NewStocks + (cut.One.NewStocks * cut.Times),
                    sum.Leftovers + (cut.One.Leftovers * cut.Times),
                    sum.Patterns + 1
                )
        );

    private static long Value(BoardStock stock, long left, long longest) =>
        left > 0 && left >= stock.KeepAtLeast ? (long)Math.Round(Full * Math.Pow((double)left / longest, Power)) : 0;

    private static int Compare(BoardObjectives left, BoardObjectives right)
    {
        ArgumentNullException.ThrowIfNull(left);
        return left.CompareTo(right);
    }
}
