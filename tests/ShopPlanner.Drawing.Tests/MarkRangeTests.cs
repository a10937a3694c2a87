using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Drawing.Tests;

public sealed class MarkRangeTests
{
    [Theory]
    [InlineData("C1", "C1")]
    [InlineData("C1 C2 C3", "C1–C3")]
    [InlineData("C1 C2 C4", "C1–C2, C4")]
    [InlineData("C9 C10 D11", "C9–C10, D11")]
    [InlineData("A B C", "A, B, C")]
    [InlineData("1 2", "1, 2")]
    [InlineData("A1 B1 C1 D1 E1", "A1, B1, C1, D1 …")]
    [InlineData("Averylongmark", "Averylongm…")]
    [InlineData("A99999999999999999999 A99999999999999999999", "A999999999…, A999999999…")]
    public void Marks_are_drawn_together(string marks, string expected) => Assert.Equal(expected, MarkRange.Of(marks.Split(' ')));
}
