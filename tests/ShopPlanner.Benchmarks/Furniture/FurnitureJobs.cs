using System.Globalization;
using ShopPlanner.Cutting;
using static ShopPlanner.Benchmarks.MadeUp;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// Invented cabinets from sheets, to compare by how the plans are cut. The recipe, the same on every machine because
/// <see cref="Random"/> starts from the job's number: one to three cabinets 16 to 40 in wide, 24 to 72 high and 10 to 24 deep, in
/// quarters, each with two sides, top and bottom, one to four shelves, a pair of doors and a back; a third of them with three
/// drawers of four sides and a bottom. Sheets of 96 × 48 in, 3/4 and 1/4, and three offcuts.
/// </summary>
public static class FurnitureJobs
{
    private const string Thick = "ply 3/4",
        Thin = "ply 1/4";

    /// <summary>Returns one of them.</summary>
    public static CutRequest Of(int number)
    {
        var random = new Random(number);
        var parts = new List<CutPart>();
        for (var cabinet = 1 + random.Next(3); cabinet > 0; cabinet--)
            AddCabinet(parts, random);
        return Request(
            [Sheet(Thick), Sheet(Thin)],
            [
                Stock("s1", Thick, "96", "48", 64.98m),
                Stock("s2", Thin, "96", "48", 29.98m),
                Offcut("B1", Thick, "48", "22 1/2"),
                Offcut("B2", Thick, "31 1/4", "15"),
                Offcut("B3", Thin, "40", "24"),
            ],
            [.. parts]
        );
    }

    private static void AddCabinet(List<CutPart> parts, Random random)
    {
        var (width, height, depth) = (Quarters(random, 16, 40), Quarters(random, 24, 72), Quarters(random, 10, 24));
        void Add(string name, string material, decimal length, decimal across, int quantity, Grain grain = Grain.Length) =>
            parts.Add(Part($"{name}{parts.Count}", material, Text(length), quantity, Text(across), grain));
        Add("side", Thick, height, depth, 2);
        Add("top", Thick, width - 1.5m, depth, 2);
        Add("shelf", Thick, width - 1.5625m, depth - 0.5m, 1 + random.Next(4));
        Add("door", Thick, height - 4.125m, (width / 2) - 0.0625m, 2);
        Add("back", Thin, height - 0.5m, width - 0.5m, 1, Grain.Any);
        if (random.Next(3) > 0)
            return;
        Add("drawer side", Thick, depth - 1, 4.5m, 6, Grain.Any);
        Add("drawer front", Thick, width - 4, 4.5m, 6, Grain.Any);
        Add("drawer bottom", Thin, width - 3.5m, depth - 1.5m, 3, Grain.Any);
    }

    private static decimal Quarters(Random random, int least, int most) => least + (random.Next(4 * (most - least)) / 4m);

    private static string Text(decimal inches) => inches.ToString(CultureInfo.InvariantCulture);
}
