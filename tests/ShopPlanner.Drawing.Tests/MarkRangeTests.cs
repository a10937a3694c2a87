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
    [InlineData("PC_G1 PC_G2 PC_G4 TSF_K11 TSF_K12", "PC G1–G2, PC G4, TSF K11–K12")]
    [InlineData("Averylongmarkforone", "Averylongmarkfor…")]
    [InlineData("A99999999999999999999 A99999999999999999999", "A999999999999999…, A999999999999999…")]
    public void Marks_are_drawn_together(string marks, string expected) =>
        Assert.Equal(expected, MarkRange.Of([.. marks.Split(' ').Select(mark => mark.Replace('_', ' '))]));

    [Fact]
    public void None_is_missing_where_all_are_asked_for() =>
        Assert.Equal("A1, B1, C1, D1, E1–E2", MarkRange.All(["A1", "B1", "C1", "D1", "E1", "E2"]));
}
