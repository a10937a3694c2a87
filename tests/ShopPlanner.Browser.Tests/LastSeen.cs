using System.Reflection;
using Microsoft.Playwright;
using Xunit.v3;

[assembly: ShopPlanner.Browser.Tests.LastSeen]

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// Writes beside a failed test where its pages stood: a failure that a busy machine brings about seldom comes twice, and a
/// timeout alone does not tell what was there instead.
/// </summary>
[AttributeUsage(AttributeTargets.Assembly)]
public sealed class LastSeenAttribute : Attribute, IBeforeAfterTestAttribute
{
    private const string Place =
        "() => [location.href, 'focus on ' + document.activeElement?.outerHTML.slice(0, 120), "
        + "(document.querySelector('main') ?? document.body)?.innerText.slice(0, 900)].join('\\n')";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);
    private static readonly List<IPage> Opened = [];

    /// <summary>A page of the test that runs.</summary>
    public static void Watch(IPage page)
    {
        lock (Opened)
            Opened.Add(page);
    }

    /// <inheritdoc />
    public void Before(MethodInfo methodUnderTest, IXunitTest test)
    {
        lock (Opened)
            Opened.Clear();
    }

    /// <inheritdoc />
    public void After(MethodInfo methodUnderTest, IXunitTest test)
    {
        if (TestContext.Current.TestState?.Result != TestResult.Failed)
            return;
        List<IPage> pages;
        lock (Opened)
            pages = [.. Opened.Where(page => !page.IsClosed)];
        foreach (var page in pages)
            TestContext.Current.TestOutputHelper?.WriteLine("A page stood at " + Task.Run(() => ReadAsync(page)).Result);
    }

    private static async Task<string> ReadAsync(IPage page)
    {
        try
        {
            return await page.EvaluateAsync<string>(Place).WaitAsync(Patience);
        }
        catch (Exception problem) when (problem is PlaywrightException or TimeoutException)
        {
            return $"{page.Url}, which could not be read: {problem.Message}";
        }
    }
}
