using System.Diagnostics;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>
/// What is typed while the line is down is kept, sent when it stands again, and called saved only when it is stored.
/// </summary>
public sealed class OutageTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    // How each route is opened; null where a page has no field. A new page is added here, or the test of coverage fails.
    private static readonly Dictionary<string, string?> Pages = new()
    {
        ["/"] = null,
        ["/book"] = null,
        ["/designs"] = null,
        ["/plans"] = null,
        ["/plans/new"] = "/plans/new",
        ["/plans/runs/{Id:guid}"] = null,
        ["/plans/{Id:guid}"] = null,
        ["/plans/{Id:guid}/{Tab}"] = "plan to buy",
        ["/projects"] = "/projects",
        ["/projects/trash"] = null,
        ["/projects/{Id:guid}"] = "first of /projects",
        ["/projects/{Id:guid}/build"] = "idea build",
        ["/projects/{Id:guid}/buy"] = "plan to buy",
        ["/projects/{Id:guid}/cuts"] = null,
        ["/projects/{Id:guid}/finish"] = "idea finish",
        ["/projects/{Id:guid}/idea"] = "idea",
        ["/projects/{Id:guid}/parts"] = "first of /projects",
        ["/projects/{Id:guid}/publish"] = "idea publish",
        ["/rack-and-bin"] = "/rack-and-bin",
        ["/rack-and-bin/{Id:guid}"] = "first of /rack-and-bin",
        ["/search"] = "/search?q=pine",
        ["/shop"] = "/shop",
        ["/shop/files"] = null,
        ["/stores"] = "/stores",
        ["/stores/{Id:guid}"] = "first of /stores",
        ["/weekends"] = "/weekends",
        ["/welcome"] = "/welcome",
        ["/welcome/{Card}"] = "/welcome/store",
        ["/workings"] = null,
        ["/workings/{Name}"] = "/workings/sag?span=36&load=75&unit=in",
    };

    public static TheoryData<string> WithFields() => [.. Pages.Values.OfType<string>().Distinct()];

    [Fact]
    public void Every_page_is_known_to_these_tests() =>
        Assert.Equal(FieldPages.Routes.Where(route => !FieldPages.IsPlain(route)), Pages.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(WithFields))]
    public async Task Every_input_of_a_page_is_kept_under_a_name_of_its_own(string place)
    {
        var page = await kept.OpenAsync();
        await GoAsync(page, place);
        await Fields.OpenAllAsync(page);
        var without = await page.EvaluateAsync<string[]>(
            """
            [...document.querySelectorAll("main :is(input, select, textarea)")]
              .filter(el => !("field" in el.dataset) && el.type !== "file" && !("pick" in el.dataset)).map(el => el.outerHTML)
            """
        );
        Assert.Empty(without);
        var ids = (await Fields.ReadAsync(page)).Select(field => (field.Id, field.Kind)).ToList();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Distinct(), ids);
    }

    [Theory]
    [MemberData(nameof(WithFields))]
    public async Task What_is_typed_without_a_line_outlives_an_outage_and_a_kill(string place)
    {
        var page = await kept.OpenAsync();
        await GoAsync(page, place);
        await Fields.OpenAllAsync(page);
        await Fields.SettledAsync(page);
        kept.Line.Drop();
        var first = await TypeWithoutLineAsync(page, 3);
        await SaysKeptAsync(page);
        kept.Line.Restore();
        await HoldsAsync(page, place, first);

        await kept.App.KillAsync();
        var second = await TypeWithoutLineAsync(page, 5);
        await kept.RestartAsync();
        // The page opens again by itself.
        await page.WaitForFunctionAsync("() => document.body.dataset.line !== 'down'", null, new() { Timeout = 60_000 });
        await HoldsAsync(page, place, second);
        await page.Context.CloseAsync();
    }

    private static async Task<Dictionary<string, string>> TypeWithoutLineAsync(IPage page, int step)
    {
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        var typed = await ChangeAllAsync(page, step);
        await ShowsTypedAsync(page, typed);
        return typed;
    }

    private async Task HoldsAsync(IPage page, string place, Dictionary<string, string> typed)
    {
        await Fields.SettledAsync(page);
        await ShowsTypedAsync(page, typed);
        // A panel that opened again by itself has sent its texts since.
        await Fields.SettledAsync(page);
        await HoldsWhatIsStoredAsync(page, place);
    }

    [Fact]
    public async Task Filters_chosen_without_a_line_count_when_it_stands_again()
    {
        var page = await kept.OpenAsync();
        await GoAsync(page, "/rack-and-bin");
        kept.Line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        await page.GetByLabel("Where", new() { Exact = true }).SelectOptionAsync("rack");
        await page.GetByLabel("Find", new() { Exact = true }).FillAsync("no such tag");
        await page.GetByLabel("Find", new() { Exact = true }).PressAsync("Tab");
        kept.Line.Restore();
        await Expect(page.Locator(".stock-table")).ToHaveCountAsync(0);
        await Expect(page.GetByLabel("Where", new() { Exact = true })).ToHaveValueAsync("rack");
        await Expect(page.GetByLabel("Find", new() { Exact = true })).ToHaveValueAsync("no such tag");
    }

    private static async Task GoAsync(IPage page, string place)
    {
        await page.GotoAsync(await AddressAsync(page, place));
        await Fields.SettledAsync(page);
    }

    private static async Task<string> AddressAsync(IPage page, string place)
    {
        if (place.Split(' ') is ["idea", .. var step])
            return (await BeginIdeaAsync(page)).Replace(
                "/idea",
                "/" + (step is [var one] ? one : "idea"),
                StringComparison.Ordinal
            );
        return await Places.AddressAsync(page, place == "plan to buy" ? "plans /buy" : place);
    }

    private static async Task<string> BeginIdeaAsync(IPage page)
    {
        await page.GotoAsync("/projects");
        if (await page.Locator("main a.name", new() { HasText = "Bookcase" }).CountAsync() == 0)
        {
            await page.GotoAsync("/designs");
            await Fields.SettledAsync(page);
            await page.GetByRole(AriaRole.Button, new() { Name = "Start a project from this: Bookcase", Exact = true })
                .ClickAsync();
            await page.ArriveAsync(url => url.EndsWith("/idea", StringComparison.Ordinal));
            return new Uri(page.Url).AbsolutePath;
        }

        var parts = await page.Locator("main a.name", new() { HasText = "Bookcase" }).First.GetAttributeAsync("href");
        return parts!.Replace("/parts", "/idea", StringComparison.Ordinal);
    }

    // Fields that stand for the same thing are not typed in twice, and what rebuilds the page is tried elsewhere.
    private static async Task<Dictionary<string, string>> ChangeAllAsync(IPage page, int step)
    {
        var fields = (await Fields.ReadAsync(page)).Where(field => !IsLeftAlone(field)).Select(field => field.Id);
        return await Fields.ChangeAsync(page, fields.Distinct(), step);
    }

    private static bool IsLeftAlone(FieldSeen field) =>
        field.Id.Contains("slider ", StringComparison.Ordinal)
        || field.Id.EndsWith("/ Unit", StringComparison.Ordinal)
        || field.Id.EndsWith("/ unit", StringComparison.Ordinal)
        || field.Id.EndsWith("/ State", StringComparison.Ordinal)
        || field.Id.EndsWith(" saw", StringComparison.Ordinal)
        || field.Id.EndsWith("/ material", StringComparison.Ordinal)
        || field.Id is " / Where" or " / Material" or " / Find"
        || field.Id.EndsWith("/ Sold as", StringComparison.Ordinal)
        || field.Id.EndsWith("/ Frame", StringComparison.Ordinal)
        || field.Id.EndsWith("/ Copy from", StringComparison.Ordinal)
        || field.Id.StartsWith("order / project ", StringComparison.Ordinal)
        || field.Id is "order / again"
        || field.Id.StartsWith("choices / ", StringComparison.Ordinal)
        || field.Id.EndsWith("/ Top", StringComparison.Ordinal);

    private static async Task ShowsTypedAsync(IPage page, Dictionary<string, string> typed)
    {
        var waiting = Stopwatch.StartNew();
        var lost = await LostAsync(page, typed);
        while (lost.Count > 0 && waiting.Elapsed < Patience)
        {
            await Fields.DrawnAsync(page);
            lost = await LostAsync(page, typed);
        }

        Assert.True(lost.Count == 0, string.Join("\n", lost));
    }

    private static async Task<List<string>> LostAsync(IPage page, Dictionary<string, string> typed)
    {
        // A row that was never stored has another name after the page was opened again.
        var all = await Fields.ReadAsync(page);
        var now = all.ToLookup(field => field.Id);
        var named = all.ToLookup(field => NameIn(field.Id));
        return
        [
            .. typed
                .Where(one =>
                    !now[one.Key].Any(field => field.Value == one.Value || IsStored(field))
                    && !(one.Key.StartsWith("row ", StringComparison.Ordinal) && IsRowTyped(named[NameIn(one.Key)], one.Value))
                )
                .Select(one => $"{one.Key}: typed {one.Value}, now {string.Join(" ", now[one.Key])}"),
        ];
    }

    private static bool IsStored(FieldSeen field) => field.Kept == field.Shown && field.Value == field.Kept;

    private static bool IsRowTyped(IEnumerable<FieldSeen> cells, string text) => cells.Any(cell => cell.Value == text);

    private static string NameIn(string id) => id[(id.LastIndexOf('/') + 1)..];

    private static async Task SaysKeptAsync(IPage page)
    {
        if (await Fields.SaveWordsAsync(page) is { Length: > 0 } words)
            Assert.StartsWith("Kept on this device, not saved yet (", words, StringComparison.Ordinal);
    }

    // Another device sees what this page calls stored; what it does not show is not called saved.
    private async Task HoldsWhatIsStoredAsync(IPage page, string place)
    {
        var here = (await Fields.ReadAsync(page)).Where(field => !field.Form && field.Id != " / Theme").ToList();
        if ((await Fields.SaveWordsAsync(page)) == "Saved")
            Assert.All(here, field => Assert.Equal(field.Kept, field.Value));
        if (
            place.StartsWith("/workings", StringComparison.Ordinal)
            || place.StartsWith("/rack", StringComparison.Ordinal)
            || place.StartsWith("/search", StringComparison.Ordinal)
        )
            return;
        var other = await kept.OpenElsewhereAsync();
        await other.GotoAsync(new Uri(page.Url).PathAndQuery);
        await Fields.SettledAsync(other);
        await Fields.OpenAllAsync(other);
        var there = (await Fields.ReadAsync(other)).ToLookup(field => field.Id);
        var differs = here.Where(field =>
            field.Kept is not ("" or "false") && there[field.Id].All(one => one.Kept != field.Kept)
        );
        Assert.True(
            !differs.Any(),
            string.Join("\n", differs.Select(field => $"{field}\n  elsewhere {string.Join(" ", there[field.Id])}"))
        );
        await other.Context.CloseAsync();
    }
}
