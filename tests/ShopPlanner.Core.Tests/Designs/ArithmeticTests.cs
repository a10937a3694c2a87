using System.Data;
using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Arithmetic in a design. A width is 1/64 in or more, so an outcome is shown as the outside width of a case.</summary>
public sealed class ArithmeticTests
{
    private const int Trials = 300;

    [Theory]
    [InlineData("20 in + 2 * 3 in", 26)]
    [InlineData("(20 in + 2 in) * 3", 66)]
    [InlineData("40 in - 10 in - 5 in", 25)]
    [InlineData("100 in / 2 / 5", 10)]
    [InlineData("100 in ÷ (2 × 5)", 10)]
    [InlineData("60 in − 2 × 5 in", 50)]
    [InlineData("-2 * -5 in", 10)]
    [InlineData("50 in + -5 in", 45)]
    [InlineData("depth * 3/4", 9)]
    [InlineData("3/4 * depth", 9)]
    [InlineData("depth + 3/4 in", 12.75)]
    [InlineData("depth - 3/4in", 11.25)]
    [InlineData("depth + 1 3/4 in", 13.75)]
    [InlineData("depth + 1-3/4 in", 13.75)]
    [InlineData("depth -3/4 in", 11.25)]
    [InlineData("3/4 in * 20", 15)]
    [InlineData("depth + 254 mm", 22)]
    [InlineData("depth + 25.4 cm", 22)]
    [InlineData("depth + 2 ft", 36)]
    [InlineData("depth + 1\\\" + 1'", 25)]
    [InlineData("1 1/2 ft", 18)]
    [InlineData("min(depth, 11 in) + max(depth, 11 in)", 23)]
    [InlineData("max(1, min(5, 3)) * depth", 36)]
    [InlineData("round(depth / 7, 1/16 in) * 7", 11.8125)]
    [InlineData("round(depth + 1/32 in, 1/16 in)", 12.0625)]
    [InlineData("round(7, 4) * depth", 96)]
    [InlineData("count(depth, 2 1/2 in) * 10 in", 40)]
    [InlineData("count(depth, depth / 3) * 10 in", 30)]
    [InlineData("count(5 in, 5 in / 3) * 10 in", 30)]
    [InlineData("count(32 in, 32 in / 3) * 10 in", 30)]
    [InlineData("count(7, 2) * depth", 36)]
    [InlineData("(depth - 2 in) / (5 in) * 1 ft", 24)]
    public void It_comes_to(string formula, double inches)
    {
        var width = Made.Piece(Made.Carcass(formula, "12", "30", "")).Outside.Dx;
        Assert.Equal(Length.FromInches((decimal)inches), width);
    }

    // DataTable.Compute of the class library reads the same signs with the usual precedence.
    [Fact]
    public void Random_arithmetic_comes_to_what_the_class_library_says()
    {
        using var outside = new DataTable();
        outside.Locale = CultureInfo.InvariantCulture;
        var chance = new Random(20261127);
        var tried = 0;
        while (tried < Trials)
        {
            var formula = Formula(chance, 4);
            var said = Convert.ToDouble(outside.Compute(formula, ""), CultureInfo.InvariantCulture);
            if (!double.IsFinite(said) || Math.Abs(said) > 900)
                continue;
            var width = Made.Piece(Made.Carcass($"1000 in + ({formula}) * 1 in", "12", "30", "")).Outside.Dx;
            Assert.True(
                Math.Abs((double)width.ToInches() - 1000 - said) < 0.0002,
                $"{formula}: {width.ToInches() - 1000}, outside {said}"
            );
            tried++;
        }
    }

    [Fact]
    public void The_order_of_names_does_not_matter()
    {
        var turned = Made.Case.Replace(
            "\"value\": \"30\", \"least\": \"10\", \"most\": \"60\"",
            "\"value\": \"gap * 5\"",
            StringComparison.Ordinal
        );
        Assert.Equal(Made.Piece(Made.Case).Outside, Made.Piece(turned).Outside);
    }

    private static string Formula(Random chance, int depth)
    {
        if (depth == 0 || chance.Next(4) == 0)
            return (chance.Next(1, 400) / 8m).ToString("0.000", CultureInfo.InvariantCulture);
        var (a, b) = (Formula(chance, depth - 1), Formula(chance, depth - 1));
        var text = $"{a} {"+-*/"[chance.Next(4)]} {b}";
        return chance.Next(3) == 0 ? "(" + text + ")" : text;
    }
}
