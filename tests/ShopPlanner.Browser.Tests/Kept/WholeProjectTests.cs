using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Core.Measures;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>A whole project at the bench: cut and built on a tablet whose network goes twice, with one cut gone wrong.</summary>
public sealed partial class WholeProjectTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };

    [Fact]
    public async Task A_project_is_cut_and_built_with_the_network_cut_twice_and_a_cut_gone_wrong_and_the_bin_is_true()
    {
        var page = await kept.OpenAsync(Screen.Tablet);
        var bin = await BinAsync(page);
        await page.GotoAsync("/bench");
        await page.Locator(".bench-list a").First.ClickAsync();
        await Expect(page.Locator("#bench")).ToBeVisibleAsync();
        var first = PlanOf(page);
        await WithoutANetworkAsync(page, () => CutAsync(page, 2));
        await GoWrongAsync(page);
        var second = PlanOf(page);
        Assert.NotEqual(first, second);
        await WithoutANetworkAsync(page, () => FinishABoardAsync(page));
        while (await page.GetByText("All boards and sheets of this plan are cut.").CountAsync() == 0)
            await FinishABoardAsync(page);

        foreach (var plan in new[] { first, second })
            await MoveAsync(page, plan, bin);
        await AssertIsBinAsync(page, bin);
        await BuildAsync(page, second);
    }

    private async Task WithoutANetworkAsync(IPage page, Func<Task> work)
    {
        await Expect(Saved(page)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
        kept.Line.Drop();
        await work();
        await Expect(Saved(page)).ToContainTextAsync("Saved on this tablet");
        kept.Line.Restore();
        await page.EvaluateAsync("() => { dispatchEvent(new Event('online')); }");
        await Expect(Saved(page)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
    }

    private static async Task CutAsync(IPage page, int cuts)
    {
        for (var n = 0; n < cuts; n++)
        {
            await page.Locator(".next-cut .huge:visible").ClickAsync();
            await Taps.RestAsync(page);
        }
    }

    private static async Task GoWrongAsync(IPage page)
    {
        await page.Locator(".next-cut .went-wrong:visible").ClickAsync();
        await page.GetByRole(AriaRole.Checkbox, new() { NameRegex = CannotBeUsed() }).First.CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the rest again" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Cut by the new plan" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Cut by the new plan" }).ClickAsync();
        await Expect(Saved(page)).ToHaveTextAsync("✓Saved on the shop's computer", Patient);
    }

    // The board that is next, cut by cut; its leftovers are what they should be.
    private static async Task FinishABoardAsync(IPage page)
    {
        var done = page.Locator(".next-cut:visible button[data-cut]");
        while (await done.CountAsync() > 0)
            await CutAsync(page, 1);
        await page.GetByRole(AriaRole.Link, new() { Name = "Measure the leftovers", Exact = true }).ClickAsync();
        var finish = page.GetByRole(AriaRole.Button, new() { NameRegex = Finish() }).First;
        var here = await page.Locator("form.finish input[name=Number]").InputValueAsync();
        await finish.ClickAsync();
        await Expect(page.Locator($".bench-all a[href$='/{here}']")).ToContainTextAsync("✓");
        await Taps.RestAsync(page);
    }

    // What a plan's boards and its cuts gone wrong put into the bin, and what was taken from it.
    private static async Task MoveAsync(IPage page, string plan, SortedDictionary<string, Size> bin)
    {
        var taken = new List<string>();
        await page.GotoAsync($"/bench/{plan}/wrong");
        await ReadAsync(page, ".write-tag", bin);
        await page.GotoAsync($"/bench/{plan}");
        var boards = await page.Locator(".bench-all a").CountAsync();
        for (var n = 1; n <= boards; n++)
        {
            await page.GotoAsync($"/bench/{plan}/{n}");
            if (await page.Locator(".next-cut.finished:visible").CountAsync() == 0)
                continue;
            await ReadAsync(page, ".bench-now .write-tag", bin);
            taken.AddRange(await page.Locator("[data-place] .take .tag").AllInnerTextsAsync());
        }

        foreach (var tag in taken)
            bin.Remove(tag);
    }

    private static async Task<SortedDictionary<string, Size>> BinAsync(IPage page)
    {
        await page.GotoAsync("/bench/bin");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Find an offcut");
        var bin = new SortedDictionary<string, Size>(StringComparer.Ordinal);
        await ReadAsync(page, "#next ~ .bin-piece:not([aria-label$='taken out']) .bin-what", bin);
        return bin;
    }

    // Tags and sizes, whatever the unit they are written in.
    private static async Task ReadAsync(IPage page, string where, SortedDictionary<string, Size> bin)
    {
        foreach (var text in await page.Locator(where).AllInnerTextsAsync())
        {
            var match = TagAndSize().Match(text);
            Assert.True(match.Success, text);
            bin[match.Groups["tag"].Value] = new(Read(match.Groups["length"].Value), Read(match.Groups["width"].Value));
        }
    }

    private static Length Read(string text) => LengthText.Parse(text, LengthUnit.Millimetre).Value;

    // A place may round to the nearest mark of its rule.
    private static async Task AssertIsBinAsync(IPage page, SortedDictionary<string, Size> expected)
    {
        var bin = await BinAsync(page);
        Assert.Equal(expected.Keys, bin.Keys);
        foreach (var (tag, size) in expected)
        {
            IsNear(size.Length, bin[tag].Length, tag);
            IsNear(size.Width, bin[tag].Width, tag);
        }
    }

    private static void IsNear(Length one, Length other, string tag) =>
        Assert.True(Math.Abs(one.ToMillimetres() - other.ToMillimetres()) <= 1, $"{tag}: {one}, in the bin {other}");

    private async Task BuildAsync(IPage page, string plan)
    {
        await page.GotoAsync($"/bench/{plan}");
        await page.GetByRole(AriaRole.Link, new() { NameRegex = Build() }).First.ClickAsync();
        await Expect(page.Locator("#bench-steps")).ToBeVisibleAsync();
        var next = page.Locator("button[data-mark-step].huge");
        await WithoutANetworkAsync(
            page,
            async () =>
            {
                while (await next.CountAsync() > 0)
                {
                    await next.ClickAsync();
                    await Taps.RestAsync(page);
                }
            }
        );
        await page.ReloadAsync();
        await Expect(page.Locator("li[data-step]").First).ToBeVisibleAsync();
        await Expect(page.Locator("li[data-step].open")).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }

    private readonly record struct Size(Length Length, Length Width);

    private static string PlanOf(IPage page) => Plan().Match(page.Url).Value;

    private static ILocator Saved(IPage page) => page.Locator("[data-saved] [role=status]");

    [GeneratedRegex("^Can't be used as ")]
    private static partial Regex CannotBeUsed();

    [GeneratedRegex("^Finish")]
    private static partial Regex Finish();

    [GeneratedRegex("^Build ")]
    private static partial Regex Build();

    [GeneratedRegex("[0-9a-f-]{36}")]
    private static partial Regex Plan();

    [GeneratedRegex(@"(?<tag>B[0-9]+)\s+(on the )?(?<length>[^×]+) × (?<width>[^×]*?(mm|″))", RegexOptions.Singleline)]
    private static partial Regex TagAndSize();
}
