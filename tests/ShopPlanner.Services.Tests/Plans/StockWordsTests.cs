using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests.Plans;

public sealed class StockWordsTests
{
    [Theory]
    [InlineData("8 ft", "2 1/2 in", StockForm.Board, LengthUnit.Inch, "8 ft")]
    [InlineData("8 ft", "2 1/2 in", StockForm.Board, LengthUnit.Millimetre, "8 ft")]
    [InlineData("41 3/8 in", "2 1/2 in", StockForm.Board, LengthUnit.Inch, "41 3/8 in")]
    [InlineData("1000 mm", "2 1/2 in", StockForm.Board, LengthUnit.Inch, "1000 mm")]
    [InlineData("28 in", "1 1/2 in", StockForm.Board, LengthUnit.Inch, "28 × 1 1/2 in")]
    [InlineData("8 ft", "1 1/2 in", StockForm.Board, LengthUnit.Inch, "96 × 1 1/2 in")]
    [InlineData("96 in", "48 in", StockForm.Sheet, LengthUnit.Inch, "4 × 8 ft")]
    [InlineData("4 ft", "2 ft", StockForm.Sheet, LengthUnit.Millimetre, "2 × 4 ft")]
    [InlineData("24 in", "12 in", StockForm.Sheet, LengthUnit.Inch, "24 × 12 in")]
    [InlineData("97 in", "49 in", StockForm.Sheet, LengthUnit.Inch, "97 × 49 in")]
    [InlineData("2440 mm", "1220 mm", StockForm.Sheet, LengthUnit.Inch, "2440 × 1220 mm")]
    [InlineData("2440 mm", "1220 mm", StockForm.Sheet, LengthUnit.Millimetre, "2440 × 1220 mm")]
    public void Stock_is_called_by_the_size_it_is_sold_in(
        string length,
        string width,
        StockForm form,
        LengthUnit unit,
        string said
    ) =>
        Assert.Equal(
            said,
            StockWords.Size(
                LengthText.Parse(length, unit).Value,
                LengthText.Parse(width, unit).Value,
                form == StockForm.Board ? Length.FromInches(2, 1, 2) : null,
                unit
            )
        );
}
