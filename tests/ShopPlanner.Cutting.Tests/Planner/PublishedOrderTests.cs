using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// Published orders for one stock length. Beside each answer stands why no plan does with fewer: a weight for each length such that no
/// board holds more than 1 in weight, so the order's weight, rounded up, is needed; <see cref="Heaviest"/> tries every board.
/// </summary>
public sealed class PublishedOrderTests
{
    private static readonly SearchControl Enough = new() { Time = TimeSpan.FromSeconds(20) };

    // Chvátal, Linear Programming (1983), p. 195, data as quoted in a handbook of SAS/OR (63975, example 4.5) and a notebook of
    // JuliaOpt. 452 1/4 by the weights; 49 × (45, 45), 206 × (36, 36, 14, 14) and 198 × (36, 31, 31) are 453 by hand.
    [Fact]
    public void Four_hundred_and_fifty_three_rolls_of_100() =>
        Check(453, 100, 100, (45, 97, 50), (36, 610, 50), (31, 395, 25), (14, 211, 0));

    // Mosel User Guide (Fair Isaac), example "Column generation for a cutting stock problem", rolls of 94: a solution of 161
    // rolls over a relaxation of 160.95; demands from the table of patterns printed beside it. Lengths in halves.
    [Fact]
    public void One_hundred_and_sixty_one_rolls_of_94() =>
        Check(161, 188, 42, (34, 150, 7), (42, 96, 9), (45, 48, 10), (48, 108, 11), (59, 227, 14));

    // Chvátal 1983, p. 198, sample omode05 of SAS/OR; the rolls' width of 91 from memory. Lengths in halves. Weights: the lengths.
    [Fact]
    public void Forty_four_rolls_of_91() => Check(44, 182, 182, (51, 78, 51), (45, 40, 45), (40, 30, 40), (30, 30, 30));

    // Cases beside the Python interface of AMPL's solver library (ampls-api, CuttingCases: Schrage19 in quarters, Sorrentino in
    // hundredths), which print no answer: no fewer than the total length needs, and so many are enough.
    [Fact]
    public void Thirty_four_rolls_of_349() =>
        Check(
            34,
            1396,
            1396,
            (183, 26, 183),
            (179, 13, 179),
            (169, 19, 169),
            (167, 47, 167),
            (163, 58, 163),
            (159, 39, 159),
            (155, 10, 155),
            (151, 31, 151),
            (139, 23, 139),
            (135, 23, 135)
        );

    [Fact]
    public void Eighteen_rolls_of_64_and_a_half() =>
        Check(18, 6450, 6450, (1876, 10, 1876), (1746, 33, 1746), (756, 40, 756), (677, 10, 677));

    // A textbook exercise without a printed answer: boards of 25 ft at a lumber yard. 300/2 + 1200 × 3/8 + 700/4 = 775.
    [Fact]
    public void Seven_hundred_and_seventy_five_boards_of_25_feet() => Check(775, 25, 8, (10, 300, 4), (9, 1200, 3), (7, 700, 2));

    // Winston, Operations Research, the column generation example of boards of 17 ft, data from memory. Weights: the lengths.
    [Fact]
    public void Nineteen_boards_of_17_feet() => Check(19, 17, 17, (9, 15, 9), (5, 20, 5), (3, 25, 3));

    // Gilmore and Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9 (1961): three stock
    // lengths with their costs; data from memory. With 7, 9 and 14 thirds for a length of 2, 3 and 4 no stock holds more than it
    // costs, and the order comes to 170; so do ten of 9 as (4, 3, 2) and ten of 6 as (4, 2).
    [Fact]
    public void Three_stock_lengths_at_three_costs()
    {
        (int, int, int)[] order = [(2, 20, 7), (3, 10, 9), (4, 20, 14)];
        Assert.All(new[] { (5, 6), (6, 7), (9, 10) }, stock => Assert.InRange(Heaviest(stock.Item1, order), 1, 3 * stock.Item2));
        var request = Some.Request(
            [Some.Board()],
            [Some.Stock("5", "5 ft", price: 6), Some.Stock("6", "6 ft", price: 7), Some.Stock("9", "9 ft", price: 10)],
            [Some.Part("2", "2 ft", 20), Some.Part("3", "3 ft", 10), Some.Part("4", "4 ft", 20)],
            kerf: "0"
        );
        var plan = Some.Planned(request, Enough);
        Assert.Equal((PlanStatus.Proven, Money.From(170)), (plan.Status, plan.Cost));
    }

    // Macedo, Alves and Valério de Carvalho 2010 (see the published examples): orders of furniture makers, sheets of
    // 2550 x 2100 mm, the grain kept.
    [Theory]
    [InlineData(2, "481 961 16", "1938 81 12", "466 80 16")]
    [InlineData(3, "431 1001 24")]
    public void Sheets_for_a_furniture_order(int sheets, params string[] order)
    {
        var parts = order
            .Select(line => line.Split(' '))
            .Select(
                (part, i) =>
                    Some.Part(
                        $"P{i}",
                        part[0] + " mm",
                        int.Parse(part[2], CultureInfo.InvariantCulture),
                        part[1] + " mm",
                        material: "ply"
                    )
            );
        var request = Some.Request([Some.Sheet()], [Some.Stock("s", "2550 mm", "2100 mm", 1, material: "ply")], parts, kerf: "0");
        var plan = Some.Planned(request, Enough);
        Assert.Equal((PlanStatus.Proven, Money.From(sheets)), (plan.Status, plan.Cost));
    }

    // As printed, and with a kerf in place of air: three taken off ten times every side and a kerf of three fit the same rows.
    private static void Check(int boards, int stock, int whole, params (int Length, int Quantity, int Weight)[] order)
    {
        Assert.InRange(Heaviest(stock, order), 1, whole);
        Assert.Equal(boards, (order.Sum(part => part.Quantity * part.Weight) + whole - 1) / whole);
        foreach (var (by, kerf) in new[] { (1, 0), (10, 3) })
        {
            var parts = order.Select(part => Some.Part($"P{part.Length}", $"{(part.Length * by) - kerf} mm", part.Quantity));
            var plan = Some.Planned(
                Some.Request([Some.Board()], [Some.Stock("s", $"{(stock * by) - kerf} mm", price: 1)], parts, $"{kerf} mm"),
                Enough
            );
            Assert.Equal((PlanStatus.Proven, Money.From(boards)), (plan.Status, plan.Cost));
        }
    }

    // The most that one board can hold, length by length: an unbounded knapsack in whole numbers.
    private static int Heaviest(int stock, (int Length, int Quantity, int Weight)[] order)
    {
        var best = new int[stock + 1];
        for (var room = 1; room <= stock; room++)
            best[room] = order
                .Where(part => part.Length <= room)
                .Select(part => best[room - part.Length] + part.Weight)
                .Append(0)
                .Max();
        return best[stock];
    }
}
