using ShopPlanner.Cutting;
using static ShopPlanner.Benchmarks.MadeUp;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// Jobs of any number of pieces: invented, for growth only; they say nothing of how good a plan is. The recipe, the same on
/// every machine because <see cref="Random"/> starts from the number of pieces: a third as many sizes as pieces, 200 at most,
/// every one of them wanted once and each further piece of a size drawn evenly. A board part is 6 to 60 in long in
/// sixteenths, no two alike. A sheet part is 6 to 40 by 3 to 24 in, in eighths, and one size in three may be turned.
/// </summary>
public static class GrowthJobs
{
    private const int MostSizes = 200;
    private const string Pine = "1x4";
    private const string Ply = "ply";

    /// <summary>Boards 1x4 of the four lengths that stores keep, at invented prices.</summary>
    public static CutRequest Boards(int pieces)
    {
        var random = new Random(pieces);
        var counts = Counts(random, pieces);
        var lengths = new HashSet<int>();
        while (lengths.Count < counts.Length)
            lengths.Add(random.Next(6 * 16, 60 * 16));
        return Request(
            [Board(Pine, "3 1/2")],
            [
                Stock("6 ft", Pine, "72", "3 1/2", 4.05m),
                Stock("8 ft", Pine, "96", "3 1/2", 5.35m),
                Stock("10 ft", Pine, "120", "3 1/2", 6.90m),
                Stock("12 ft", Pine, "144", "3 1/2", 7.95m),
            ],
            [.. lengths.Select((length, i) => Part($"P{i}", Pine, $"{length}/16", counts[i], "3 1/2"))]
        );
    }

    /// <summary>Plywood in three sizes.</summary>
    public static CutRequest Sheets(int pieces)
    {
        var random = new Random(pieces);
        var counts = Counts(random, pieces);
        return Request(
            [Sheet(Ply)],
            [Stock("full", Ply, "96", "48", 58), Stock("half", Ply, "48", "48", 34), Stock("quarter", Ply, "48", "24", 20)],
            [
                .. counts.Select(
                    (count, i) =>
                        Part(
                            $"P{i}",
                            Ply,
                            $"{random.Next(6 * 8, 40 * 8)}/8",
                            count,
                            $"{random.Next(3 * 8, 24 * 8)}/8",
                            i % 3 == 0 ? Grain.Any : Grain.Length
                        )
                ),
            ]
        );
    }

    private static int[] Counts(Random random, int pieces)
    {
        var counts = new int[Math.Min(MostSizes, (pieces + 2) / 3)];
        for (var piece = 0; piece < pieces; piece++)
            counts[piece < counts.Length ? piece : random.Next(counts.Length)]++;
        return counts;
    }
}
