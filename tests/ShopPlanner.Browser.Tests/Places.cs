using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>An address of every page that the program routes to.</summary>
internal static partial class Places
{
    private const string Nobody = "00000000-0000-0000-0000-000000000001";

    // How each route is opened: an address, the first link of a list, or a plan's. A new page is added here, or the test of
    // coverage fails.
    private static readonly Dictionary<string, string> Ways = new()
    {
        ["/"] = "/",
        ["/bench"] = "/bench",
        ["/bench/steps/{ProjectId:guid}"] = "steps of project",
        ["/bench/trust"] = "/bench/trust",
        ["/bench/{PlanId:guid}"] = "bench",
        ["/bench/{PlanId:guid}/{Number:int}"] = "bench /1",
        ["/bench/{PlanId:guid}/{Number:int}/finish"] = "bench /1/finish?all-made=true",
        ["/bench/bin"] = "/bench/bin",
        ["/bench/{PlanId:guid}/settings"] = "bench /settings",
        ["/book"] = "/book",
        ["/bench/{PlanId:guid}/wrong"] = "bench /wrong",
        ["/bench/{PlanId:guid}/{Number:int}/wrong/{Cut:int}"] = "bench /1/wrong/1",
        ["/designs"] = "/designs",
        ["/error"] = "/error",
        ["/not-found"] = "/not-found",
        ["/owner"] = "/owner",
        ["/pair"] = "/pair",
        ["/paper/labels"] = "/paper/labels",
        ["/paper/templates/{ProjectId:guid}"] = "templates of project",
        ["/plans"] = "/plans",
        ["/plans/new"] = "/plans/new",
        ["/plans/runs/{Id:guid}"] = "/plans/runs/" + Nobody,
        ["/plans/{Id:guid}"] = "plans",
        ["/plans/{Id:guid}/{Tab}"] = "plans /buy",
        ["/projects"] = "/projects",
        ["/projects/trash"] = "/projects/trash",
        ["/projects/{Id:guid}"] = "first of /projects",
        ["/projects/{Id:guid}/build"] = "idea build",
        ["/projects/{Id:guid}/buy"] = "project buy",
        ["/projects/{Id:guid}/cuts"] = "project cuts",
        ["/projects/{Id:guid}/finish"] = "idea finish",
        ["/projects/{Id:guid}/idea"] = "idea",
        ["/projects/{Id:guid}/parts"] = "first of /projects",
        ["/projects/{Id:guid}/publish"] = "idea publish",
        ["/rack-and-bin"] = "/rack-and-bin",
        ["/rack-and-bin/{Id:guid}"] = "first of /rack-and-bin",
        ["/search"] = "/search?q=pine",
        ["/shop"] = "/shop",
        ["/shop/access"] = "/shop/access",
        ["/shop/condition"] = "/shop/condition",
        ["/shop/files"] = "/shop/files",
        ["/shopping"] = "/shopping",
        ["/shopping/project/{Project:guid}"] = "shopping of project",
        ["/shopping/{Plan:guid}"] = "shopping",
        ["/sign-in"] = "/sign-in",
        ["/stores"] = "/stores",
        ["/stores/{Id:guid}"] = "first of /stores",
        ["/weekends"] = "/weekends",
        ["/welcome"] = "/welcome",
        ["/welcome/{Card}"] = "/welcome/store",
        ["/workings"] = "/workings",
        ["/workings/{Name}"] = "/workings/sag?span=36&load=75%20lb&unit=in",
    };

    /// <summary>The routes that are known here.</summary>
    public static IEnumerable<string> Known => Ways.Keys.Order(StringComparer.Ordinal);

    /// <summary>Opens a page of that route and waits until it can be used.</summary>
    public static async Task GoAsync(IPage page, string route)
    {
        await page.GotoAsync(await AddressAsync(page, Ways[route]));
        // A page with a live connection says so itself; some of those have no fields.
        if (await page.Locator("fieldset.until-live").CountAsync() > 0)
            await Fields.SettledAsync(page);
    }

    /// <summary>Returns the address of a way, and makes what it needs.</summary>
    public static Task<string> AddressAsync(IPage page, string way) =>
        way.Split(' ') switch
        {
            ["idea"] => IdeaAsync(page),
            ["idea", var step] => StepOfIdeaAsync(page, step),
            ["first", "of", var list] => FirstAsync(page, list),
            ["project", var step] => StepAsync(page, step),
            ["shopping", "of", "project"] => ShoppingAsync(page),
            ["steps", "of", "project"] => BenchStepsAsync(page),
            ["templates", "of", "project"] => TemplatesAsync(page),
            ["bench" or "plans" or "shopping", .. var more] => PlanAsync(page, way.Split(' ')[0], string.Concat(more)),
            _ => Task.FromResult(way),
        };

    private static async Task<string> FirstAsync(IPage page, string list)
    {
        await page.GotoAsync(list);
        return (await page.Locator($"main a[href^='{list}/']:not([download])").First.GetAttributeAsync("href"))!;
    }

    private static async Task<string> ShoppingAsync(IPage page) =>
        (await FirstAsync(page, "/projects"))
            .Replace("/projects/", "/shopping/project/", StringComparison.Ordinal)
            .Replace("/parts", "", StringComparison.Ordinal);

    private static async Task<string> BenchStepsAsync(IPage page) =>
        (await StepOfIdeaAsync(page, "")).Replace("/projects/", "/bench/steps/", StringComparison.Ordinal).TrimEnd('/');

    private static async Task<string> TemplatesAsync(IPage page) =>
        (await StepOfIdeaAsync(page, "")).Replace("/projects/", "/paper/templates/", StringComparison.Ordinal).TrimEnd('/');

    private static async Task<string> StepAsync(IPage page, string step) =>
        (await FirstAsync(page, "/projects")).Replace("/parts", "/" + step, StringComparison.Ordinal);

    private static async Task<string> StepOfIdeaAsync(IPage page, string step) =>
        (await IdeaAsync(page)).Replace("/idea", "/" + step, StringComparison.Ordinal);

    private static async Task<string> IdeaAsync(IPage page)
    {
        await page.GotoAsync("/designs");
        await Fields.SettledAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a project from this: Bookcase", Exact = true }).ClickAsync();
        await page.ArriveAsync(IdeaAddress());
        return new Uri(page.Url).AbsolutePath;
    }

    private static async Task<string> PlanAsync(IPage page, string place, string more)
    {
        await page.GotoAsync("/plans");
        await Fields.SettledAsync(page);
        var plans = page.Locator("main .rows a.name");
        if (await plans.CountAsync() == 0)
        {
            await page.GotoAsync("/plans/new");
            await Fields.SettledAsync(page);
            await page.GetByRole(AriaRole.Button, new() { Name = "Plan the cuts" }).ClickAsync();
            await page.ArriveAsync(PlanAddress(), 60_000);
            await page.GotoAsync("/plans");
        }

        await Expect(plans.First).ToBeVisibleAsync();
        var plan = (await plans.First.GetAttributeAsync("href"))!;
        return plan.Replace("/plans/", $"/{place}/", StringComparison.Ordinal) + more;
    }

    [GeneratedRegex("/projects/[0-9a-f-]{36}/idea$")]
    private static partial Regex IdeaAddress();

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex PlanAddress();
}
