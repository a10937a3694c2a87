using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Published examples with their published answers, through the whole planner.</summary>
public sealed class PublishedExampleTests
{
    private static readonly (int Length, int Quantity)[] Rolls =
    [
        (2200, 20),
        (2150, 18),
        (2140, 16),
        (2100, 14),
        (2050, 12),
        (2000, 10),
        (1930, 20),
        (1880, 18),
        (1820, 18),
        (1710, 14),
        (1560, 12),
        (1520, 25),
        (1380, 22),
    ];

    // Rolls of 5600: cutting stock sample of OR-Tools' math_opt, "Best known solution uses 73 boards" (data from Wikipedia's
    // article on the cutting stock problem). Total length over 5600 is 72.7, so fewer than 73 is impossible. With a kerf k taken
    // off every part and the stock, n pieces fit a row exactly when they did before: the answer must stay the same.
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Seventy_three_rolls_of_5600(int kerf) => Check(73, kerf, 5600, Rolls);

    // Rolls of 110: cutting example of the AMPL book (Fourer, Gay, Kernighan; relaxation 46.25, 47 rolls from memory; the same
    // data stand in GLPK's cut-fix-size.mod).
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void Forty_seven_rolls_of_110(int kerf) => Check(47, kerf, 110, (75, 8), (55, 10), (50, 24), (45, 35), (20, 48));

    // theboohers.org, 27 April 2014, "quick solution to my cutting stock problem": a retaining wall from boards of 8, 10 and 12 ft
    // at 20.57, 29.97 and 37.27; kerf ignored. Answer there: one of 8 ft and one of 12 ft, about $58.
    [Fact]
    public void One_board_of_eight_and_one_of_twelve_feet_for_a_retaining_wall()
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Board()],
                [
                    Some.Stock("8", "8 ft", price: 20.57m),
                    Some.Stock("10", "10 ft", price: 29.97m),
                    Some.Stock("12", "12 ft", price: 37.27m),
                ],
                [Some.Part("A", "43 1/8"), Some.Part("B", "48 7/8"), Some.Part("C", "44 1/2", 3)],
                kerf: "0"
            )
        );
        Assert.Equal((PlanStatus.Proven, Money.From(57.84m)), (plan.Status, plan.Cost));
        Assert.Equal(["8", "12"], plan.Buy.Select(purchase => purchase.Stock));
    }

    // Orders of a furniture maker, sheets of 2750 x 1220 mm: Macedo, Alves and Valério de Carvalho, "Arc-flow model for the
    // two-dimensional guillotine cutting stock problem", Computers & Operations Research 37 (2010), instances A-1 and A-4. Three
    // sheets each, the grain kept: proven optimal for any number of cutting stages.
    [Theory]
    [InlineData(1680, 420, 6, 463, 386, 18)]
    [InlineData(76, 386, 8, 2357, 375, 8)]
    public void Three_sheets_for_a_furniture_order(int length1, int width1, int quantity1, int length2, int width2, int quantity2)
    {
        var request = Some.Request(
            [Some.Sheet()],
            [Some.Stock("s", "2750 mm", "1220 mm", 1, material: "ply")],
            [
                Some.Part("A", $"{length1} mm", quantity1, $"{width1} mm", material: "ply"),
                Some.Part("B", $"{length2} mm", quantity2, $"{width2} mm", material: "ply"),
            ],
            kerf: "0"
        );
        var plan = Some.Planned(request, new SearchControl { Time = TimeSpan.FromSeconds(20) });
        Assert.Equal((PlanStatus.Proven, Money.From(3)), (plan.Status, plan.Cost));
    }

    private static void Check(int boards, int kerf, int stock, params (int Length, int Quantity)[] parts)
    {
        var request = Some.Request(
            [Some.Board()],
            [Some.Stock("s", $"{stock - kerf} mm", price: 1)],
            parts.Select(part => Some.Part($"P{part.Length}", $"{part.Length - kerf} mm", part.Quantity)),
            kerf: $"{kerf} mm"
        );
        var plan = Some.Planned(request, new SearchControl { Time = TimeSpan.FromSeconds(20) });
        Assert.Equal((PlanStatus.Proven, Money.From(boards)), (plan.Status, plan.Cost));
    }
}
