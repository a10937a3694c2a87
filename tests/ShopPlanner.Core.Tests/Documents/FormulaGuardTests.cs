using ShopPlanner.Core.Documents;

namespace ShopPlanner.Core.Tests.Documents;

/// <summary>What a spreadsheet would run goes out as text and comes back the same.</summary>
public sealed class FormulaGuardTests
{
    [Theory]
    [InlineData("Leg", "Leg")]
    [InlineData("", "")]
    [InlineData("'", "'")]
    [InlineData("'Leg'", "'Leg'")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("'=1+1", "''=1+1")]
    [InlineData("''-1", "'''-1")]
    public void A_cell_goes_out_and_comes_back(string cell, string written)
    {
        Assert.Equal(written, FormulaGuard.Quote(cell));
        Assert.Equal(cell, FormulaGuard.Unquote(written));
    }
}
