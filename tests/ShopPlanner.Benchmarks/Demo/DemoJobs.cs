using ShopPlanner.Cutting;
using static ShopPlanner.Benchmarks.MadeUp;

namespace ShopPlanner.Benchmarks;

/// <summary>Invented jobs of the size that a shop has; every size and price is made up.</summary>
public static class DemoJobs
{
    private const string Pine = "1x";

    public static IEnumerable<(string Name, CutRequest Request)> All() =>
        [("three projects", ThreeProjects()), ("500 board parts", ManyBoardParts()), ("150 sheet parts", ManySheetParts())];

    /// <summary>A bench, a bookcase and a tool cupboard together: four sections of board, one of sheet, two stores, a bin.</summary>
    private static CutRequest ThreeProjects() =>
        Request(
            [Board("1x3", "2 1/2"), Board("1x4", "3 1/2"), Board("1x6", "5 1/2"), Board("2x4", "3 1/2"), Sheet("ply")],
            [
                .. Store("near", ("1x3", 4.10m), ("1x4", 5.35m), ("1x6", 8.20m), ("2x4", 4.45m)),
                .. Store("far", ("1x3", 3.85m), ("1x4", 5.60m), ("1x6", 7.90m), ("2x4", 4.60m)),
                Offcut("B1", "1x3", "41 3/8", "2 1/2"),
                Offcut("B2", "1x4", "27", "3 1/2"),
                Offcut("B3", "2x4", "33 1/4", "3 1/2"),
                Stock("ply-full", "ply", "96", "48", 58),
                Stock("ply-half", "ply", "48", "48", 34),
                Offcut("B4", "ply", "30", "22 1/2"),
            ],
            [
                Part("bench-leg", "2x4", "16 3/4", 8, "3 1/2"),
                Part("bench-rail", "2x4", "43 1/2", 4, "3 1/2"),
                Part("bench-tie", "2x4", "11 1/4", 4, "3 1/2"),
                Part("bench-slat", "1x4", "48", 6, "3 1/2"),
                Part("case-face", "1x3", "71 1/4", 2, "2 1/2"),
                Part("case-rail", "1x3", "31", 3, "2 1/2"),
                Part("case-edge", "1x3", "34 1/2", 6, "1 1/2"),
                Part("case-foot", "1x4", "12 5/8", 4, "3 1/2"),
                Part("case-crown", "1x6", "37 1/2", 1, "5 1/2"),
                Part("door-stile", "1x3", "29 7/8", 4, "2 1/2"),
                Part("door-rail", "1x3", "11 3/16", 4, "2 1/2"),
                Part("cleat", "1x6", "30 1/2", 2, "2 5/8"),
                Part("drawer-side", "1x6", "15 1/4", 6, "5 1/2"),
                Part("drawer-end", "1x6", "13", 6, "5"),
                Part("case-side", "ply", "72", 2, "11 1/4"),
                Part("case-shelf", "ply", "34 1/2", 5, "11"),
                Part("case-top", "ply", "36", 1, "11 1/4"),
                Part("cupboard-side", "ply", "30", 2, "11 1/2"),
                Part("cupboard-shelf", "ply", "26 1/2", 3, "11 1/4"),
                Part("cupboard-back", "ply", "30", 1, "28", Grain.Any),
                Part("drawer-bottom", "ply", "14 1/2", 3, "12 1/2", Grain.Any),
                Part("panel", "ply", "24 3/8", 2, "8 1/4"),
                Part("jig", "ply", "16", 1, "10", Grain.Any),
            ]
        );

    private static CutRequest ManyBoardParts()
    {
        var random = new Random(500);
        var lengths = Enumerable.Range(0, 40).Select(_ => random.Next(6 * 16, 60 * 16)).ToList();
        var counts = new int[lengths.Count];
        for (var piece = 0; piece < 500; piece++)
            counts[piece < counts.Length ? piece : random.Next(counts.Length)]++;
        return Request(
            [Board(Pine, "3 1/2")],
            [
                Stock("8 ft", Pine, "96", "3 1/2", 5.35m),
                Stock("10 ft", Pine, "120", "3 1/2", 6.90m),
                Stock("12 ft", Pine, "144", "3 1/2", 7.95m),
            ],
            [.. lengths.Select((length, i) => Part($"P{i}", Pine, $"{length}/16", counts[i], "3 1/2"))]
        );
    }

    private static CutRequest ManySheetParts()
    {
        var random = new Random(150);
        return Request(
            [Sheet("ply")],
            [Stock("full", "ply", "96", "48", 58), Stock("half", "ply", "48", "48", 34), Stock("quarter", "ply", "48", "24", 20)],
            [
                .. Enumerable
                    .Range(0, 50)
                    .Select(i =>
                        Part(
                            $"P{i}",
                            "ply",
                            $"{random.Next(6 * 8, 40 * 8)}/8",
                            3,
                            $"{random.Next(3 * 8, 24 * 8)}/8",
                            i % 3 == 0 ? Grain.Any : Grain.Length
                        )
                    ),
            ]
        );
    }

    private static IEnumerable<CutStock> Store(string store, params (string Section, decimal Price)[] sections) =>
        from section in sections
        from feet in new[] { 6, 8, 10 }
        select Stock(
            $"{store} {section.Section} {feet} ft",
            section.Section,
            $"{feet} ft",
            Width(section.Section),
            Math.Round(section.Price * feet / 8, 2)
        );

    private static string Width(string section) =>
        section switch
        {
            "1x3" => "2 1/2",
            "1x6" => "5 1/2",
            _ => "3 1/2",
        };
}
