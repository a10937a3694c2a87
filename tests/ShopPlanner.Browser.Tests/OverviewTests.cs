using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>The overview of a plan's boards and sheets, by keyboard, on a phone, and how long it takes to draw.</summary>
[Collection(OneShop.Name)]
public sealed partial class OverviewTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_board_chosen_by_keyboard_has_the_focus_and_from_the_settings_too()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, "/plans/{Id:guid}");
        await ChooseAsync(page, page.Locator(".thumbs a").Last);

        await page.GetByRole(AriaRole.Link, new() { Name = "By setting", Exact = true }).ClickAsync();
        await Expect(page).ToHaveURLAsync(BySetting());
        await Expect(page.Locator(".layout")).ToHaveCountAsync(0);
        await ChooseAsync(page, page.Locator(".runs ul a").First);
        await page.GoBackAsync();
        await Expect(page.Locator(".runs").First).ToBeVisibleAsync();
    }

    private static async Task ChooseAsync(IPage page, ILocator link)
    {
        var target = (await link.GetAttributeAsync("href"))!.Split('#')[1];
        await link.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#" + target)).ToBeFocusedAsync();
        await Expect(page.Locator("#" + target)).ToBeInViewportAsync();
    }

    [Fact]
    public async Task On_a_phone_two_stand_beside_one_another_and_nothing_sticks_out()
    {
        var page = await browser.OpenAsync(Screen.Phone);
        await Places.GoAsync(page, "/plans/{Id:guid}");
        var lefts = await page.EvaluateAsync<double[]>(
            "[...new Set([...document.querySelectorAll('.thumbs li')].map(li => li.getBoundingClientRect().left))]"
        );
        Assert.InRange(lefts.Length, 1, 2);
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    // Thirty boards and sheets, as often as the plan's own make that many: taken out, put in again, laid out and painted. Not
    // part of the tests, since a busy machine would fail it; the figure stands in the benchmarks' results.
    [Fact(Explicit = true)]
    public async Task Thirty_layouts_are_drawn_quickly()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, "/plans/{Id:guid}");
        var times = await page.EvaluateAsync<double[]>(
            """
            async () => {
              const overview = document.querySelector(".overview");
              const items = [...overview.querySelectorAll(".thumbs li")].map(li => li.outerHTML);
              const all = Array.from({ length: 30 }, (_, i) => items[i % items.length]).join("");
              const html = `<h2>All</h2><ul class="thumbs">${all}</ul>`;
              const frame = () => new Promise(done => requestAnimationFrame(done));
              const times = [];
              for (let run = 0; run < 15; run++) {
                overview.replaceChildren();
                await frame(); await frame();
                const begun = performance.now();
                overview.innerHTML = html;
                overview.getBoundingClientRect();
                await frame();
                await new Promise(done => setTimeout(done));
                times.push(performance.now() - begun);
              }
              return times.sort((a, b) => a - b);
            }
            """
        );
        TestContext.Current.SendDiagnosticMessage(
            string.Create(CultureInfo.InvariantCulture, $"median {times[7]:0.0} ms, slowest {times[^1]:0.0} ms")
        );
        await File.WriteAllTextAsync(
            Path.Combine(AppContext.BaseDirectory, "overview-times.txt"),
            string.Join(' ', times.Select(time => time.ToString("0.0", CultureInfo.InvariantCulture))),
            TestContext.Current.CancellationToken
        );
        Assert.True(times[7] < 150, $"half of the runs took more than {times[7]} ms");
    }

    [GeneratedRegex(@"\?by=setting$")]
    private static partial Regex BySetting();
}
