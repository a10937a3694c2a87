using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>The bench on a tablet whose network comes and goes, on plain http as on a home network.</summary>
public sealed partial class BenchOfflineTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    private const int Instant = 50,
        Glove = 48,
        Light = 300_000;

    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };

    [Fact]
    public async Task Two_hundred_marks_without_a_network_outlive_the_browser_and_land_once()
    {
        var profile = Directory.CreateTempSubdirectory("shop-planner-tablet-").FullName;
        try
        {
            var tablet = await kept.OpenTabletAsync(profile);
            var page = await OpenAsync(tablet);
            var before = await MadeAsync(page);
            kept.Line.Drop();
            var took = await page.EvaluateAsync<double>(Tick);
            Assert.InRange(took, 0, Instant);
            await page.EvaluateAsync(TwoHundred);
            await Expect(Saved(page)).ToContainTextAsync("Saved on this tablet, 201 marks waiting");
            var shown = await MadeAsync(page);
            await tablet.CloseAsync();

            kept.Line.Restore();
            var again = await kept.OpenTabletAsync(profile);
            var reopened = await OpenAsync(again);
            await Expect(Saved(reopened)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
            Assert.Equal(shown, await MadeAsync(reopened));
            Assert.NotEqual(before, shown);
            var elsewhere = await kept.OpenElsewhereAsync();
            Assert.Equal(shown, await MadeAsync(await OpenAsync(elsewhere.Context, elsewhere)));
            await PutBackAsync(reopened, before);
            await again.CloseAsync();
        }
        finally
        {
            Directory.Delete(profile, recursive: true);
        }
    }

    [Fact]
    public async Task A_double_tap_is_one_mark_and_a_killed_program_gets_it_when_it_runs_again()
    {
        var page = await OpenAsync();
        var before = await MadeAsync(page);
        var huge = page.Locator(".bench-now .huge:visible");
        await kept.App.KillAsync();
        await huge.DispatchEventAsync("click");
        await huge.DispatchEventAsync("click");
        await Expect(Saved(page)).ToContainTextAsync("Saved on this tablet, 1 mark waiting");
        await kept.RestartAsync();
        await page.EvaluateAsync(Online);
        await Expect(Saved(page)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
        Assert.Equal(Count(before) + 1, Count(await MadeAsync(page)));
        await PutBackAsync(page, before);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_answers_in_place_of_the_program_and_storage_that_is_full_are_told_and_lose_nothing()
    {
        var page = await OpenAsync();
        var before = await MadeAsync(page);
        await page.RouteAsync("**/bench/commands", call => call.FulfillAsync(new() { Body = "<h1>Log in to this network</h1>" }));
        await page.Locator(".bench-now .huge:visible").ClickAsync();
        await Expect(Saved(page)).ToContainTextAsync("does this network ask for a login?");
        await page.EvaluateAsync(
            "() => { IDBObjectStore.prototype.add = () => { throw new DOMException('no room', 'QuotaExceededError'); }; }"
        );
        await page.Locator(".bench-run[open] li:not(.next) button[data-cut]").First.ClickAsync();
        await Expect(Saved(page)).ToContainTextAsync("Not saved: this tablet can't keep marks, its storage is full.");
        await page.UnrouteAllAsync();
        await page.EvaluateAsync(Online);
        await Expect(Saved(page)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
        await PutBackAsync(page, before);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Two_tablets_end_alike_and_what_is_refused_is_kept_until_somebody_decides()
    {
        var (one, other) = (await OpenAsync(), await kept.OpenElsewhereAsync());
        await OpenAsync(other.Context, other);
        var before = await MadeAsync(one);
        kept.Line.Drop();
        await one.Locator(".bench-now .huge:visible").ClickAsync();
        await other.Locator(".bench-now .huge:visible").ClickAsync();
        await Expect(Saved(other)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
        await one.EvaluateAsync(
            """
            async () => {
              const open = indexedDB.open("shop-planner bench");
              await new Promise(done => open.onsuccess = done);
              const store = open.result.transaction("commands", "readwrite").objectStore("commands");
              store.put({ number: 9000, id: "0b6f1d52-3a54-4c6e-9d7d-2f3c6f0a1b11", kind: "cut", stock: 1, cut: 999, done: true,
                plan: document.getElementById("bench").dataset.plan, sender: "7c1e9a10-51f6-4f0e-8f37-5d1f7b8a2c22" });
              new BroadcastChannel("shop-planner bench").postMessage("changed");
            }
            """
        );
        kept.Line.Restore();
        await one.EvaluateAsync(Online);
        await Expect(one.Locator("[data-refused] li")).ToContainTextAsync("Not taken: cut 999 of", new() { Timeout = 60_000 });
        await Expect(Saved(one)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
        Assert.Equal(await MadeAsync(other), await MadeAsync(one));
        await one.GetByRole(AriaRole.Button, new() { Name = "Discard" }).ClickAsync();
        await Expect(one.Locator("[data-refused] li")).ToHaveCountAsync(0);
        await PutBackAsync(one, before);
        await one.Context.CloseAsync();
        await other.Context.CloseAsync();
    }

    [Fact]
    public async Task The_page_is_light_its_targets_are_for_gloves_and_the_order_is_remembered()
    {
        var page = await OpenAsync("/3");
        var bytes = await page.EvaluateAsync<int>(
            """
            () => [...performance.getEntriesByType("navigation"), ...performance.getEntriesByType("resource")]
              .reduce((sum, one) => sum + one.transferSize, 0)
            """
        );
        TestContext.Current.TestOutputHelper?.WriteLine($"{bytes} bytes");
        Assert.InRange(bytes, 1, Light);
        var small = await page.EvaluateAsync<string[]>(
            """
            least => [...document.querySelectorAll("main button, main a.button, .bench-bar a")]
              .filter(one => one.checkVisibility() && one.getBoundingClientRect().height < least)
              .map(one => `${one.textContent.trim()} ${one.getBoundingClientRect().height}`)
            """,
            Glove
        );
        Assert.Empty(small);
        await page.GetByRole(AriaRole.Link, new() { Name = "By setting", Exact = true }).ClickAsync();
        await Expect(page.Locator(".bench-run").First).ToBeVisibleAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync(BoardOf());
        await page.GotoAsync(page.Url.Replace(AllCuts, "", StringComparison.Ordinal));
        await Expect(page.Locator(".bench-run").First).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }

    private const string AllCuts = "/settings",
        Online = "() => { dispatchEvent(new Event('online')); }";

    private const string Tick = """
        () => {
          const button = document.querySelector(".bench-run li:not(.next) button[data-cut]"), begun = performance.now();
          const was = button.dataset.made;
          button.click();
          if (button.dataset.made === was) throw new Error("the mark is not drawn");
          return performance.now() - begun;
        }
        """;

    // Every board's page in turn, as fast as fingers may: not two within 400 ms on one row.
    private const string TwoHundred = """
        async () => {
          const pause = milliseconds => new Promise(done => setTimeout(done, milliseconds));
          await pause(450);
          for (let number = 0; number < 200; ) {
            for (const row of [...document.querySelectorAll(".bench-run li[data-row]")]) {
              if (number === 200) break;
              const button = row.querySelector("button[data-cut]");
              if (!button) continue;
              button.click();
              number++;
            }
            await pause(420);
          }
        }
        """;

    private async Task<IPage> OpenAsync(string part = AllCuts) =>
        await OpenAsync(null, await kept.OpenAsync(Screen.Tablet), part);

    // The page asks the server as soon as it is there: it can be used then.
    private static async Task<IPage> OpenAsync(IBrowserContext? context, IPage? at = null, string part = AllCuts)
    {
        var page = at ?? await context!.NewPageAsync();
        await page.GotoAsync("/bench");
        var plan = (await page.Locator(".bench-list a[href^='/bench/']").First.GetAttributeAsync("href"))!;
        await page.GotoAsync(plan + part);
        await Expect(Saved(page)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
        return page;
    }

    // The numbers of the cuts that the page shows as made.
    private static Task<string> MadeAsync(IPage page) =>
        page.EvaluateAsync<string>(
            """
            () => {
              const name = row => `${row.dataset.stock}.${row.dataset.row}`;
              return [...document.querySelectorAll(".bench-run li.made")].map(name).sort().join(" ");
            }
            """
        );

    private static async Task PutBackAsync(IPage page, string made)
    {
        await page.EvaluateAsync(
            """
            async made => {
              await new Promise(done => setTimeout(done, 450));
              for (const row of document.querySelectorAll(".bench-run li[data-row]"))
                if (row.classList.contains("made") !== made.split(" ").includes(`${row.dataset.stock}.${row.dataset.row}`))
                  row.querySelector("button[data-cut]").click();
            }
            """,
            made
        );
        await Expect(Saved(page)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
        Assert.Equal(made, await MadeAsync(page));
    }

    private static int Count(string made) => made.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;

    private static ILocator Saved(IPage page) => page.Locator("[data-saved] [role=status]");

    [GeneratedRegex("(Board|Sheet) [0-9]+ of [0-9]+")]
    private static partial Regex BoardOf();
}
