using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>What a script asks the server and the server does not do is seen by the person.</summary>
[Collection(OneShop.Name)]
public sealed class AskTests(BrowserFixture browser)
{
    // Each script's own gesture, with a server that fails.
    public static TheoryData<string, string> Gestures() =>
        new()
        {
            {
                "idea.js",
                """
                    place.innerHTML = "<div class='piece-picture'><b data-mark='A1'>A1</b></div>";
                    attach(place, owner);
                    place.querySelector("b").click();
                    """
            },
            {
                "sheet.js",
                """
                    attach(place, owner);
                    const copied = new DataTransfer();
                    copied.setData("text/plain", "B\tRail\t20");
                    place.dispatchEvent(new ClipboardEvent("paste", { clipboardData: copied, bubbles: true, cancelable: true }));
                    """
            },
            {
                "steps.js",
                """
                    attach(place, owner);
                    place.dispatchEvent(new KeyboardEvent("keydown", { key: "z", ctrlKey: true, bubbles: true }));
                    """
            },
        };

    [Theory]
    [MemberData(nameof(Gestures))]
    public async Task A_call_that_fails_is_told_on_the_page(string script, string gesture)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/workings");
        await Fields.SettledAsync(page);
        var said = new List<string>();
        page.Console += (_, line) => said.Add(line.Text);
        await page.EvaluateAsync(
            $$"""
            async () => {
              const { attach } = await import("/scripts/{{script}}");
              const place = document.querySelector("main").appendChild(document.createElement("div"));
              place.tabIndex = 0;
              const owner = { invokeMethodAsync: () => Promise.reject(new Error("the server is confused")) };
              {{gesture}}
            }
            """
        );
        var notice = page.Locator("#blazor-error-ui");
        await Expect(notice).ToBeVisibleAsync();
        Assert.Contains(said, line => line.Contains("was not done: Error: the server is confused", StringComparison.Ordinal));
        await notice.GetByRole(AriaRole.Link).ClickAsync();
        await Fields.SettledAsync(page);
        await Expect(notice).ToBeHiddenAsync();
        Assert.EndsWith("/workings", page.Url, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(true, 2)]
    [InlineData(false, 1)]
    public async Task After_an_outage_only_what_does_nothing_twice_is_asked_again(bool mayRepeat, int asked)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/workings");
        await Fields.SettledAsync(page);
        var calls = await page.EvaluateAsync<int>(
            """
            async mayRepeat => {
              const { ask } = await import("/scripts/ask.js");
              let calls = 0;
              const answer = () => calls === 1 ? new Promise(() => {}) : Promise.resolve();
              ask({ invokeMethodAsync: () => (calls++, answer()) }, "Paste", [], mayRepeat);
              for (const state of ["show", "hide", "show", "hide"]) {
                document.dispatchEvent(new CustomEvent("shop-line", { detail: state }));
                await new Promise(done => setTimeout(done));
              }
              return calls;
            }
            """,
            mayRepeat
        );
        Assert.Equal(asked, calls);
        await page.Context.CloseAsync();
    }
}
