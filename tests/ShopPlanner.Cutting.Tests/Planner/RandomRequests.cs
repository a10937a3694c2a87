using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// Small requests from a seed: a board material with parts of full and of less width, a sheet material, or both; sizes in
/// sixteenths of an inch and tenths of a millimetre mixed. New stock of one size is unlimited and holds every part.
/// </summary>
internal static class RandomRequests
{
    private static readonly Length BoardWidth = Some.Of("5 1/2");
    private static readonly string[] Kerfs = ["0", "1/8", "3/32", "2.7 mm"];
    private static readonly string[] Trims = ["0", "1/16", "1/2", "6 mm"];

    /// <summary>So many requests of at most so many kinds of part from each material.</summary>
    public static IEnumerable<CutRequest> From(int seed, int count, int mostParts = 4)
    {
        var random = new Random(seed);
        return Enumerable.Range(0, count).Select(_ => Next(random, mostParts));
    }

    private static CutRequest Next(Random random, int mostParts)
    {
        var kinds = random.Next(1, 4);
        var materials = new List<CutMaterial>();
        if (kinds != 2)
            materials.Add(new("board", StockForm.Board, null, BoardWidth));
        if (kinds != 1)
            materials.Add(new("sheet", StockForm.Sheet, null, null));
        return new(
            LengthUnit.Inch,
            new(Of(random, Kerfs), Of(random, Trims), Of(random, Trims)),
            new(Some.Of("12"), Some.Of("12"), Some.Of("6")),
            [.. materials],
            [.. materials.SelectMany(material => Stock(random, material))],
            [.. materials.SelectMany(material => Parts(random, material, mostParts))],
            new(5)
        );
    }

    private static IEnumerable<CutStock> Stock(Random random, CutMaterial material)
    {
        var id = material.Id[..1];
        var width = material.Width ?? Some.Of("48");
        yield return new($"{id}long", material.Id, Some.Of("96"), width, Money.From(random.Next(20, 60)), null, false);
        if (random.Next(2) == 0)
            yield return new(
                $"{id}short",
                material.Id,
                Size(random, 50, 80),
                width,
                Money.From(random.Next(10, 40)),
                null,
                false
            );
        if (random.Next(2) == 0)
        {
            var across = material.Width ?? Size(random, 10, 40);
            yield return new($"{id}bin", material.Id, Size(random, 15, 60), across, Money.Zero, random.Next(1, 3), true);
        }
    }

    private static IEnumerable<CutPart> Parts(Random random, CutMaterial material, int most)
    {
        var rips = random.Next(3) == 0;
        return Enumerable
            .Range(0, random.Next(1, most + 1))
            .Select(i =>
            {
                var width = material.Width is { } full ? (rips && i == 0 ? Size(random, 1, 5) : full) : Size(random, 4, 40);
                var grain = material.Form == StockForm.Sheet && random.Next(2) == 0 ? Grain.Any : Grain.Length;
                return new CutPart(
                    $"{material.Id[..1]}{i}",
                    "",
                    material.Id,
                    Size(random, 6, 44),
                    width,
                    grain,
                    random.Next(1, 4)
                );
            });
    }

    private static Length Size(Random random, int from, int to) =>
        random.Next(2) == 0
            ? Length.FromInches(random.Next(from * 16, to * 16) / 16m)
            : Length.FromMillimetres(random.Next(from * 254, to * 254) / 10m);

    private static Length Of(Random random, string[] texts) => Some.Of(texts[random.Next(texts.Length)]);
}
