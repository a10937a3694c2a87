using CsCheck;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Properties over generated cases: each case must be one that counts, and enough of them must have been
/// tried.</summary>
internal static class Cases
{
    private const int Fewest = 100;

    /// <summary>Checks every case.</summary>
    /// <param name="cases">Makes only cases that count.</param>
    /// <param name="counts">Whether a case is one that the property speaks of.</param>
    /// <param name="check">Asserts the property.</param>
    public static void Check<T>(this Gen<T> cases, Func<T, bool> counts, Action<T> check)
    {
        var tried = 0;
        cases.Sample(one =>
        {
            Assert.True(counts(one), $"{one} is no case of this property");
            check(one);
            Interlocked.Increment(ref tried);
        });
        Assert.InRange(tried, Fewest, int.MaxValue);
    }
}
