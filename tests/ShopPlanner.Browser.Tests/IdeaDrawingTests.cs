using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>The drawing of an idea: read on a phone, pressed, walked through by keyboard, and how soon it follows a
/// slider.</summary>
public sealed partial class IdeaDrawingTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static readonly string[] Views = ["isometric", "front", "side", "plan", "exploded"];

    [Fact]
    public async Task On_a_phone_every_letter_is_at_least_11_px_high_and_every_tab_is_whole()
    {
        var page = await browser.OpenAsync(Screen.Phone);
        var idea = await BeginAsync(page, "Chest of drawers");
        foreach (var view in Views)
        {
            await OpenAsync(page, $"{idea}?view={view}");
            var least = await page.EvaluateAsync<double>(
                """
                () => {
                  const texts = [...document.querySelectorAll(".idea-picture .piece-picture text")].filter(el => el.checkVisibility());
                  return Math.min(99, ...texts.map(el => parseFloat(el.getAttribute("font-size")) * el.getScreenCTM().a
                    || parseFloat(el.getAttribute("font-size")) * Math.abs(el.getScreenCTM().b)));
                }
                """
            );
            Assert.True(least >= 11, $"{view}: a letter is {least:0.0} px high");
            var cut = await page.EvaluateAsync<int>(
                "[...document.querySelectorAll('.idea-picture .tabs a')].map(el => el.getBoundingClientRect())"
                    + ".filter(box => box.left < 0 || box.right > innerWidth || box.height < 44).length"
            );
            Assert.Equal(0, cut);
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        }
    }

    [Theory]
    [InlineData("front", "desktop")]
    [InlineData("isometric", "desktop")]
    [InlineData("front", "phone")]
    public async Task A_press_in_the_drawing_selects_a_bay_and_a_part(string view, string screen)
    {
        var page = await browser.OpenAsync(screen == "phone" ? Screen.Phone : Screen.Desktop);
        var idea = await BeginAsync(page, "Bookcase");
        await OpenAsync(page, $"{idea}?view={view}");
        await PressAsync(page, await MiddleAsync(page, "[data-bay='bays.bays.1'][tabindex]"), screen == "phone");
        await Expect(page.Locator(".bay-fields h3")).ToContainTextAsync("Bay 2, clear");
        await Expect(page.Locator("[data-opens='bay bays.bays.1']")).ToBeFocusedAsync();
        await PressAsync(page, await MiddleAsync(page, "[aria-label='F, Face stile']"), screen == "phone");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Part F" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Bays_and_parts_are_reached_and_chosen_by_keyboard()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var idea = await BeginAsync(page, "Bookcase");
        await OpenAsync(page, $"{idea}?view=front");
        await page.Locator(".idea-picture .tabs a").Last.FocusAsync();
        var (bay, part) = ("", "");
        for (var i = 0; i < 20 && (bay.Length == 0 || part.Length == 0); i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var here = await page.EvaluateAsync<string[]>(
                "[document.activeElement.dataset.bay ?? '', document.activeElement.dataset.mark ?? '']"
            );
            bay = bay.Length > 0 ? bay : here[0];
            if (part.Length > 0 || here[1].Length == 0)
                continue;
            part = here[1];
            await page.Keyboard.PressAsync("Enter");
            await Expect(page.Locator(".part-detail")).ToBeVisibleAsync();
            await Expect(page.Locator($".piece-picture [data-mark='{part}'][tabindex]:visible")).ToBeFocusedAsync();
        }

        Assert.True(bay.Length > 0 && part.Length > 0, $"bay '{bay}', part '{part}'");
        var place = page.Locator($".piece-picture [data-bay='{bay}'][tabindex]:visible");
        await place.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator($"[data-opens='bay {bay}']")).ToBeFocusedAsync();
        await Expect(place).ToHaveAttributeAsync("aria-pressed", "true");
    }

    // From the slider's event to the new picture in the page. Not part of the tests, since a busy machine would fail it; the
    // figures stand in the benchmarks' results.
    [Theory(Explicit = true)]
    [InlineData("Bookcase", "isometric")]
    [InlineData("Bookcase", "front")]
    [InlineData("Chest of drawers", "front")]
    [InlineData("Chest of drawers", "exploded")]
    public async Task The_picture_follows_the_slider_within_60_ms(string design, string view)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var idea = await BeginAsync(page, design);
        await OpenAsync(page, $"{idea}?view={view}");
        var times = await page.EvaluateAsync<double[]>(
            """
            async () => {
              const slider = document.querySelector("input[type=range][data-field='slider width']");
              const picture = document.querySelector(".idea-picture");
              const middle = Math.round((Number(slider.min) + Number(slider.max)) / 2), times = [];
              const drawn = () => new Promise(done => {
                const seen = new MutationObserver(records => {
                  if (!records.some(one => one.target.closest?.(".piece-picture"))) return;
                  seen.disconnect();
                  done();
                });
                seen.observe(picture, { subtree: true, childList: true });
              });
              for (let run = 0; run < 120; run++) {
                await new Promise(done => setTimeout(done, 60));
                const changed = drawn(), begun = performance.now();
                slider.value = middle + (run % 2 ? -run : run) % 60;
                slider.dispatchEvent(new Event("input", { bubbles: true }));
                await changed;
                times.push(performance.now() - begun);
              }
              return times.slice(20).sort((a, b) => a - b);
            }
            """
        );
        var (median, p95) = (times[times.Length / 2], times[times.Length * 95 / 100]);
        var line = string.Create(
            CultureInfo.InvariantCulture,
            $"{design}, {view}: median {median:0.0} ms, p95 {p95:0.0} ms, slowest {times[^1]:0.0} ms"
        );
        TestContext.Current.SendDiagnosticMessage(line);
        await File.AppendAllTextAsync(
            Path.Combine(AppContext.BaseDirectory, "slider-times.txt"),
            line + Environment.NewLine,
            TestContext.Current.CancellationToken
        );
        Assert.True(p95 < 60, line);
    }

    private static async Task<string> BeginAsync(IPage page, string design)
    {
        await page.GotoAsync("/designs");
        await LiveAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a project from this: " + design, Exact = true }).ClickAsync();
        await page.ArriveAsync(IdeaAddress());
        await LiveAsync(page);
        return page.Url.Split('?')[0];
    }

    // A spot of the element that nothing else covers, near its middle.
    private static Task<double[]> MiddleAsync(IPage page, string selector) =>
        page.EvaluateAsync<double[]>(
            """
            selector => {
              const all = [...document.querySelectorAll(".piece-picture " + selector)];
              const place = all.find(el => el.getBoundingClientRect().width > 0), own = Object.values(place.dataset)[0];
              place.scrollIntoView({ block: "center" });
              const box = place.getBoundingClientRect();
              for (const [u, v] of [[.5, .5], [.5, .3], [.3, .5], [.5, .7], [.7, .5], [.3, .3], [.7, .7], [.2, .5], [.8, .5]]) {
                const [x, y] = [box.x + box.width * u, box.y + box.height * v];
                const hit = document.elementFromPoint(x, y)?.closest("[data-bay], [data-mark]");
                if (hit && Object.values(hit.dataset)[0] === own) return [x, y];
              }
              throw new Error("nothing of " + selector + " can be pressed");
            }
            """,
            selector
        );

    private static Task PressAsync(IPage page, double[] at, bool isTouch) =>
        isTouch ? page.Touchscreen.TapAsync((float)at[0], (float)at[1]) : page.Mouse.ClickAsync((float)at[0], (float)at[1]);

    private static Task LiveAsync(IPage page) =>
        Expect(page.Locator("fieldset.until-live")).ToBeEnabledAsync(new() { Timeout = 60_000 });

    // The drawing hears presses.
    private static async Task OpenAsync(IPage page, string address)
    {
        await page.GotoAsync(address);
        await LiveAsync(page);
        await Expect(page.Locator(".idea[data-picks]")).ToHaveCountAsync(1);
    }

    [GeneratedRegex("/projects/[0-9a-f-]{36}/idea")]
    private static partial Regex IdeaAddress();
}
