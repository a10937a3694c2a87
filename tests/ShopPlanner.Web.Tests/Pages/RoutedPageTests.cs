using System.Net;
using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Tests.Security;

namespace ShopPlanner.Web.Tests.Pages;

/// <summary>
/// Every page that an address leads to, with values in the address that no link of ours holds. The pages are asked of the program
/// itself, so that a new one is tested too.
/// </summary>
public sealed partial class RoutedPageTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly string[] OddValues =
    [
        "x",
        "BUY",
        "%20",
        "%00",
        "%25",
        "-1",
        "0",
        "2147483648",
        "99999999999999999999",
        "1e9",
        "null",
        "true",
        "00000000-0000-0000-0000-000000000000",
        "018f3c5e-0000-7000-8000-00000000abcd",
        "%F0%9F%AA%9A",
        "%E2%80%AE",
        "%ED%A0%80",
        "a%2Fb",
        "%3Cscript%3E",
        "'%3B--",
        "",
        new('9', 1500),
    ];

    /// <summary>Pages; the one that tells a failure is left out: it tells one.</summary>
    public static TheoryData<string> Templates() => [.. Pages().Select(page => page.Template)];

    [Theory]
    [MemberData(nameof(Templates))]
    public async Task With_good_values_the_page_is_there(string template)
    {
        var answer = await web.Client.GetAsync(await AddressAsync(template), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    // A NUL in the path is refused by the server itself, before any page is looked for.
    [Theory]
    [MemberData(nameof(Templates))]
    public async Task Odd_values_in_the_path_are_not_found_or_ignored(string template)
    {
        foreach (Match parameter in Parameter().Matches(template))
        foreach (var odd in OddValues.Where(odd => odd is not ("" or "%00")))
            await CheckAsync(
                await AddressAsync(template[..parameter.Index] + odd + template[(parameter.Index + parameter.Length)..])
            );
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public async Task Odd_values_behind_the_question_mark_are_ignored(string template)
    {
        var page = Pages().First(page => page.Template == template).Component;
        var address = await AddressAsync(template);
        foreach (var name in QueryNames(page).Append("unknown"))
        {
            foreach (var odd in OddValues)
                await CheckAsync($"{address}?{name}={odd}");
            await CheckAsync($"{address}?{name}=1&{name}=true");
            await CheckAsync($"{address}?{name}");
        }
    }

    private static IEnumerable<(Type Component, string Template)> Pages() =>
        typeof(Program)
            .Assembly.GetTypes()
            .Where(type => type != typeof(ErrorPage))
            .SelectMany(type => type.GetCustomAttributes<RouteAttribute>().Select(route => (type, route.Template)));

    private static IEnumerable<string> QueryNames(Type page) =>
        page.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            .Select(property => (property, query: property.GetCustomAttribute<SupplyParameterFromQueryAttribute>()))
            .Where(pair => pair.query is not null)
            .Select(pair => pair.query!.Name ?? pair.property.Name);

    private async Task CheckAsync(string address)
    {
        using var answer = await web.Client.GetAsync(address, TestContext.Current.CancellationToken);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var shown = address.Length <= 120 ? address : address[..120] + "…";
        Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.NotFound, $"{shown} answered {answer.StatusCode}");
        Assert.False(page.Contains("Something went wrong", StringComparison.Ordinal), $"{shown} shows a page that failed");
        Assert.True(
            page.Contains("<main", StringComparison.Ordinal)
                && (
                    answer.StatusCode == HttpStatusCode.OK
                    || page.Contains("There is nothing at this address", StringComparison.Ordinal)
                ),
            $"{shown} shows no page of ours"
        );
    }

    private async Task<string> AddressAsync(string template)
    {
        foreach (Match parameter in Parameter().Matches(template))
            template = template.Replace(
                parameter.Value,
                await GoodAsync(template.Split('/')[1], parameter.Groups["name"].Value),
                StringComparison.Ordinal
            );
        return template;
    }

    private async Task<string> GoodAsync(string place, string parameter)
    {
        var cancel = TestContext.Current.CancellationToken;
        return (place, parameter) switch
        {
            ("projects", "Id") => (await web.Service<IProjectService>().ListAsync(cancel: cancel))[0].Id.ToString(),
            ("stores", "Id") => (await web.Service<IStoreService>().ListAsync(cancel))[0].Id.ToString(),
            ("rack-and-bin", "Id") => (await web.Service<IStockService>().ListAsync(cancel))[0].Id.ToString(),
            ("plans", "Id") or ("bench", "PlanId") => (await Planned.OneAsync(web)).ToString(),
            ("plans", "Tab") => "buy",
            ("bench", "Number") or ("bench", "Cut") => "1",
            ("bench", "ProjectId") => (await web.Service<IProjectService>().ListAsync(cancel: cancel))[0].Id.ToString(),
            ("paper", "ProjectId") => (await web.Service<IProjectService>().ListAsync(cancel: cancel))[0].Id.ToString(),
            ("shopping", "Plan") => (await Planned.OneAsync(web)).ToString(),
            ("shopping", "Project") => (await web.Service<IProjectService>().ListAsync(cancel: cancel))[0].Id.ToString(),
            ("welcome", "Card") => "store",
            ("workings", "Name") => WorkingForms.All[0].Name,
            _ => throw new InvalidOperationException($"give a good value for {parameter} of a page under /{place} here"),
        };
    }

    [GeneratedRegex(@"\{(?<name>\w+)[^}]*\}")]
    private static partial Regex Parameter();
}
