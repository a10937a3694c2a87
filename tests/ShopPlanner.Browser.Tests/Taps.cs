using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests;

/// <summary>Taps at the bench, as a hand makes them.</summary>
internal static class Taps
{
    // Taps that follow at once count as one.
    private const float Between = 450;

    /// <summary>Waits as long as a hand takes between two taps that are meant.</summary>
    public static Task RestAsync(IPage page) => page.WaitForTimeoutAsync(Between);
}
