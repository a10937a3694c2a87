using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Together;
using static ShopPlanner.Benchmarks.MadeUp;

namespace ShopPlanner.Benchmarks;

/// <summary>A joint job of several projects.</summary>
/// <param name="Request">All of them.</param>
/// <param name="Groups">Each project.</param>
/// <param name="Stores">What a trip to each store costs.</param>
public sealed record TogetherJob(CutRequest Request, ImmutableArray<PlanGroup> Groups, ImmutableArray<StoreTrip> Stores);

/// <summary>
/// Ten invented projects of forty pieces each that compete for one bin: for speed only. The recipe, the same on every machine:
/// each project wants eight kinds of part, five pieces of each, half of them from 1x4 boards and half from plywood, in eighths
/// of an inch; sixty offcuts, half of each; two stores that sell both at prices some percent apart.
/// </summary>
public static class TogetherJobs
{
    private const string Pine = "1x4",
        Ply = "ply",
        Wide = "3 1/2";

    private const int Projects = 10,
        Kinds = 8,
        Pieces = 5,
        Offcuts = 60;

    /// <summary>The job of a seed.</summary>
    public static TogetherJob Of(int seed)
    {
        var random = new Random(seed);
        var parts = Enumerable
            .Range(0, Projects)
            .SelectMany(project => Enumerable.Range(0, Kinds).Select(kind => PartOf(random, project, kind)))
            .ToArray();
        CutStock[] north =
        [
            Stock("n8", Pine, "96", Wide, 5.35m),
            Stock("n12", Pine, "144", Wide, 8.10m),
            Stock("np", Ply, "96", "48", 58),
        ];
        CutStock[] south =
        [
            Stock("s8", Pine, "96", Wide, 5.10m),
            Stock("s12", Pine, "144", Wide, 7.95m),
            Stock("sp", Ply, "96", "48", 61),
        ];
        var bin = Enumerable.Range(0, Offcuts).Select(i => OffcutOf(random, i));
        return new(
            Request([Board(Pine, Wide), Sheet(Ply)], [.. bin, .. north, .. south], parts),
            [
                .. parts
                    .GroupBy(part => part.Id.Split(' ')[0])
                    .Select(own => new PlanGroup(own.Key, [.. own.Select(part => part.Id)])),
            ],
            [
                new StoreTrip("North", [.. north.Select(one => one.Id)], Money.From(4), 30),
                new StoreTrip("South", [.. south.Select(one => one.Id)], Money.From(6), 45),
            ]
        );
    }

    private static CutPart PartOf(Random random, int project, int kind)
    {
        var id = $"P{project} {(char)('A' + kind)}";
        return kind % 2 == 0
            ? Part(id, Pine, $"{random.Next(8 * 8, 50 * 8)}/8", Pieces, Wide)
            : Part(
                id,
                Ply,
                $"{random.Next(8 * 8, 36 * 8)}/8",
                Pieces,
                $"{random.Next(4 * 8, 20 * 8)}/8",
                random.Next(2) == 0 ? Grain.Any : Grain.Length
            );
    }

    private static CutStock OffcutOf(Random random, int i) =>
        i % 2 == 0
            ? Offcut($"B{i}", Pine, $"{random.Next(12 * 8, 60 * 8)}/8", Wide)
            : Offcut($"B{i}", Ply, $"{random.Next(12 * 8, 48 * 8)}/8", $"{random.Next(6 * 8, 24 * 8)}/8");
}
