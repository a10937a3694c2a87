using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests;

/// <summary>Waits for a page's address.</summary>
internal static class Arrival
{
    private const int Patience = 45_000;

    /// <summary>Waits until the address is one of these, and the page is loaded.</summary>
    public static Task ArriveAsync(this IPage page, Regex address, int patience = Patience) =>
        ArriveAsync(page, address.IsMatch, patience);

    /// <inheritdoc cref="ArriveAsync(IPage, Regex, int)" />
    // The library's own wait looks at the address and listens for a change after that: one that comes in between is not heard.
    public static async Task ArriveAsync(this IPage page, Func<string, bool> isThere, int patience = Patience)
    {
        var cancel = TestContext.Current.CancellationToken;
        var clock = Stopwatch.StartNew();
        while (!isThere(page.Url))
        {
            Assert.True(clock.ElapsedMilliseconds < patience, $"the page is still at {page.Url} after {patience / 1000} s");
            await Task.Delay(25, cancel);
        }

        await page.WaitForFunctionAsync("document.readyState === 'complete'");
    }
}
