using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Materials;

public sealed class BoardMeasureTests
{
    /// <summary>Oracle: worked examples of Carpentry and Woodwork (1910s) and, from the sixth row, of Noyes, Handwork in Wood
    /// (1910); twelfths of a board foot.</summary>
    [Theory]
    [InlineData("1", "12", "10 ft", 10, 0)]
    [InlineData("6", "12", "16 ft", 96, 0)]
    [InlineData("9", "6", "14 ft", 63, 0)]
    [InlineData("8", "4", "18 ft", 48, 0)]
    [InlineData("1", "11", "14 ft", 12, 10)]
    [InlineData("1", "9", "5 ft", 3, 9)]
    [InlineData("1", "13", "23 ft", 24, 11)]
    public void Worked_examples_of_old_textbooks(string thickness, string width, string length, int feet, int twelfths) =>
        Assert.Equal(feet * 12m + twelfths, BoardFeet(thickness, width, length) * 12);

    /// <summary>Oracle: Carpentry and Woodwork: 2,880 cubic inches are 20 board feet.</summary>
    [Fact]
    public void Board_foot_is_144_cubic_inches() => Assert.Equal(20, (Area.Of(In("48"), In("60")) * In("1")).ToBoardFeet());

    /// <summary>Oracle: the cubic foot of an open unit definition, 0.028316846592 m³, by 12.</summary>
    [Fact]
    public void Board_foot_in_cubic_metres() =>
        Assert.Equal(0.002359737216m, (Area.Of(In("12"), In("12")) * In("1")).ToCubicMetres());

    /// <summary>Oracle: Noyes: 7/8 in dressed from 1 in, 6 in wide, 12 ft long, is 6 board feet.</summary>
    [Fact]
    public void Dressed_inch_counts_as_an_inch() => Assert.Equal(6, BoardFeet("7/8", "6", "12 ft"));

    /// <summary>Oracle: Carpentry and Woodwork counts 1/2 × 12 in × 10 ft as 5; Noyes sells it by the foot of face, so
    /// 10.</summary>
    [Theory]
    [InlineData(ThinStock.RealThickness, 5)]
    [InlineData(ThinStock.AsOneInch, 10)]
    public void Thin_stock_is_counted_by_the_sellers_rule(ThinStock rule, int expected) =>
        Assert.Equal(expected, BoardMeasure.Counted(In("1/2"), In("12"), In("10 ft"), 1, rule).ToBoardFeet());

    /// <summary>Oracle: Carpentry and Woodwork, the packing case of 1 in stock, 4 ft 8 in × 3 ft 2 in × 2 ft 8 in
    /// outside.</summary>
    [Fact]
    public void Packing_case_of_the_textbook() =>
        Assert.Equal(
            67 + 8m / 9,
            Sum(ThinStock.RealThickness, (2, "1", "56", "38"), (2, "1", "56", "30"), (2, "1", "36", "30")).ToBoardFeet(),
            20
        );

    /// <summary>Oracle: Mission Furniture, part 1, the magazine stand's list; sums by arithmetic.</summary>
    [Theory]
    [InlineData(ThinStock.AsOneInch, 13.098)]
    [InlineData(ThinStock.RealThickness, 11.461)]
    public void Magazine_stand_of_the_old_plan(ThinStock rule, double boardFeet) =>
        Assert.Equal(
            (decimal)boardFeet,
            Sum(
                    rule,
                    (1, "7/8", "15 1/2", "16 1/2"),
                    (1, "7/8", "11 1/2", "12 1/2"),
                    (1, "7/8", "12 1/2", "14 3/4"),
                    (1, "7/8", "13 1/2", "16 1/2"),
                    (2, "7/8", "14 1/2", "33 1/2"),
                    (1, "7/8", "3 1/4", "17"),
                    (1, "7/8", "2 1/2", "11 1/2"),
                    (6, "7/8", "2", "2")
                )
                .ToBoardFeet(),
            3
        );

    /// <summary>Oracle: Mission Furniture, part 1, the chair's list of 20 pieces; sum by arithmetic at actual size.</summary>
    [Fact]
    public void Chair_of_the_old_plan() =>
        Assert.Equal(
            13.312m,
            Sum(
                    ThinStock.RealThickness,
                    (4, "2 1/2", "2 1/2", "32 1/2"),
                    (2, "7/8", "5 3/4", "23 1/2"),
                    (2, "7/8", "5 3/4", "28 1/2"),
                    (2, "7/8", "4 1/2", "23 1/2"),
                    (1, "7/8", "4 1/2", "28 1/2"),
                    (2, "7/8", "2 1/2", "26 1/2"),
                    (7, "1/2", "2", "24")
                )
                .ToBoardFeet(),
            3
        );

    [Fact]
    public void Too_large_an_area_overflows_instead_of_wrapping() =>
        Assert.Throws<OverflowException>(() => Area.Of(Length.FromTicks(long.MaxValue), Length.FromTicks(long.MaxValue)) * 3);

    // The longest stock that is read, squared, as often as a plan may hold pieces.
    [Fact]
    public void Areas_of_the_largest_plan_add_up() =>
        Assert.Equal(
            1_000_000_000m,
            (Area.Of(Length.FromMillimetres(100_000), Length.FromMillimetres(100_000)) * 100_000).ToSquareMetres()
        );

    private static decimal BoardFeet(string thickness, string width, string length) =>
        BoardMeasure.Counted(In(thickness), In(width), In(length), 1, ThinStock.AsOneInch).ToBoardFeet();

    private static Volume Sum(ThinStock rule, params (int Count, string Thickness, string Width, string Length)[] list) =>
        list.Aggregate(
            Volume.Zero,
            (sum, p) => sum + BoardMeasure.Counted(In(p.Thickness), In(p.Width), In(p.Length), p.Count, rule)
        );

    private static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;
}
