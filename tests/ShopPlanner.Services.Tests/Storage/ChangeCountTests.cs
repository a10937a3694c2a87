using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Storage;

/// <summary>Every change of the shop is told how it is counted, whoever else writes at the same time.</summary>
public sealed class ChangeCountTests
{
    private const int Writers = 20;

    [Fact]
    public async Task Each_change_is_told_its_own_number()
    {
        await using var shop = await TestShop.OpenAsync();
        var before = shop.Work.Changes;
        var told = await Task.WhenAll(Enumerable.Range(0, Writers).Select(_ => WriteAsync(shop, Done.Value)));
        Assert.Equal(Enumerable.Range(1, Writers).Select(i => before + i), told.Select(number => number!.Value).Order());
        Assert.Equal(before + Writers, shop.Work.Changes);
    }

    [Fact]
    public async Task What_was_refused_has_no_number()
    {
        await using var shop = await TestShop.OpenAsync();
        var before = shop.Work.Changes;
        Assert.Null(await WriteAsync(shop, Outcome.Faulty<Done>(new Fault("shop", "", "is shut"))));
        Assert.Equal(before, shop.Work.Changes);
    }

    private static async Task<long?> WriteAsync(TestShop shop, Outcome<Done> outcome)
    {
        long? told = null;
        await shop.Work.WriteAsync(_ => Task.FromResult(outcome), number => told = number, TestShop.Cancel);
        return told;
    }
}
