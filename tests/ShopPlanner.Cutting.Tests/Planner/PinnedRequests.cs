using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Ten small requests that between them reach every part of the planner; the sizes come from a fixed seed.</summary>
internal static class PinnedRequests
{
    /// <summary>Each request by the name that its pinned plan goes by.</summary>
    public static IEnumerable<(string Name, CutRequest Request)> All() =>
        [
            ("boards", Boards(14, 1)),
            ("boards of limited stock", Boards(14, 2) with { Stock = [Some.Stock("8", "96", price: 6, quantity: 3)] }),
            ("many boards", Boards(50, 3)),
            ("ripped boards", Ripped(10, 4)),
            ("sheets", Sheets(10, 5)),
            ("many sheets", Sheets(36, 6)),
            ("sheets of limited stock", Sheets(12, 7) with { Stock = [Some.Stock("s", "96", "48", 60, 1, material: "ply")] }),
            ("sheets without a price", Unpriced(Sheets(9, 8))),
            ("sheets within limits of saw, store and car", Limited(Sheets(9, 9))),
            ("boards and sheets", Both(8, 10)),
        ];

    private static CutRequest Boards(int parts, int seed)
    {
        var random = new Random(seed);
        return Some.Request(
            [Some.Board()],
            [Some.Stock("8", "96", price: 6), Some.Stock("6", "72", price: 5), Some.Stock("o", "40", quantity: 2, offcut: true)],
            Enumerable.Range(0, parts).Select(i => Some.Part(Name("A", i), Size(random, 6, 60), 1 + random.Next(4)))
        );
    }

    private static CutRequest Ripped(int parts, int seed)
    {
        var random = new Random(seed);
        return Some.Request(
            [Some.Board("oak", "7 1/4")],
            [
                Some.Stock("8", "96", "7 1/4", 24, material: "oak"),
                Some.Stock("o", "50", "5", quantity: 1, offcut: true, material: "oak"),
            ],
            Enumerable
                .Range(0, parts)
                .Select(i =>
                    Some.Part(Name("R", i), Size(random, 8, 44), 1 + random.Next(3), Size(random, 1, 7), material: "oak")
                ),
            endTrim: "1/2"
        );
    }

    private static CutRequest Sheets(int parts, int seed)
    {
        var random = new Random(seed);
        return Some.Request(
            [Some.Sheet()],
            [
                Some.Stock("s", "96", "48", 60, material: "ply"),
                Some.Stock("h", "48", "48", 33, material: "ply"),
                Some.Stock("o", "40", "30", 0, 2, true, "ply"),
            ],
            Enumerable
                .Range(0, parts)
                .Select(i =>
                    Some.Part(
                        Name("P", i),
                        Size(random, 8, 36),
                        1 + random.Next(3),
                        Size(random, 4, 20),
                        random.Next(2) == 0 ? Grain.Any : Grain.Length,
                        "ply"
                    )
                ),
            edgeTrim: "1/4"
        );
    }

    private static CutRequest Unpriced(CutRequest request) =>
        request with
        {
            Stock = [.. request.Stock.Select(stock => stock with { Price = Money.Zero })],
        };

    private static CutRequest Limited(CutRequest request) =>
        request with
        {
            Saw = request.Saw with { WidestRip = Some.Of("24"), LongestCrosscut = Some.Of("36") },
            Store = new(2, Some.Of("1/8")),
            Carry = new(Some.Of("80"), Some.Of("40")),
        };

    private static CutRequest Both(int parts, int seed)
    {
        var (boards, sheets) = (Boards(parts, seed), Sheets(parts, seed + 1));
        return boards with
        {
            Materials = [.. boards.Materials, .. sheets.Materials],
            Stock = [.. boards.Stock, .. sheets.Stock.Select(stock => stock with { Id = "ply " + stock.Id })],
            Parts = [.. boards.Parts, .. sheets.Parts],
        };
    }

    private static string Name(string letter, int i) => letter + i.ToString(CultureInfo.InvariantCulture);

    private static string Size(Random random, int least, int most) =>
        (random.Next(least * 4, most * 4) / 4m).ToString(CultureInfo.InvariantCulture);
}
