using System.Globalization;
using System.Net;
using System.Text;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

using Fields = List<KeyValuePair<string, string>>;

/// <summary>Forms of the bench as no page of ours sends them: cut short, repeated, overlong, no numbers.</summary>
public sealed class OddFormTests
{
    private const string Finish = "Finish this board";
    private const string Token = "__RequestVerificationToken";

    private static readonly string[] OddValues =
    [
        "",
        " ",
        "abc",
        "-1",
        "0",
        "1.5",
        "1e9",
        "99999999999999999999",
        "2147483648",
        "\0",
        "\ud83e\ude9a",
        "\u202e1",
        "true,false",
        new('9', 5000),
    ];

    [Fact]
    public async Task A_finish_without_any_leftover_row_says_what_is_missing_and_changes_nothing()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var form = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);
        var fields = PlainBrowser.FieldsOf(form).Where(field => !field.Key.StartsWith("Leftovers", StringComparison.Ordinal));

        using var answer = await browser.PostAsync(form.GetAttribute("action")!, fields);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var page = (await PlainBrowser.ReadAsync(answer)).Body!.TextContent;
        Assert.Contains("Leftovers", page, StringComparison.Ordinal);
        Assert.Contains("missing", page, StringComparison.Ordinal);
        Assert.False((await shop.BoardAsync(plan)).Finished);
        Assert.Empty(await shop.StockAsync());
    }

    [Theory]
    [InlineData("cut")]
    [InlineData("finish")]
    [InlineData("reopen")]
    public async Task Every_odd_form_is_answered_in_words_and_a_refused_one_changes_nothing(string which)
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (action, fields) = await FormAsync(browser, plan, which);
        var isFinished = which == "reopen";

        foreach (var (what, change) in Odd([.. fields.Select(field => field.Key).Where(name => name != Token).Distinct()]))
        {
            using var answer = await browser.PostAsync(action, change(fields));
            var text = await answer.Content.ReadAsStringAsync(ShopServer.Cancel);
            Assert.True((int)answer.StatusCode is 303 or 400 or 404 or 409 or 422, $"{what}: {answer.StatusCode}\n{Short(text)}");
            if (answer.StatusCode == HttpStatusCode.SeeOther)
                (action, fields) = await AgainAsync(shop, browser, plan, which);
            else
                Assert.True(text.Contains("class=\"bench\"", StringComparison.Ordinal), $"{what}: {Short(text)}");
            var board = await shop.BoardAsync(plan);
            Assert.True(board.Finished == isFinished && (isFinished || board.Cuts.All(cut => !cut.Made)), what);
            Assert.True((await shop.StockAsync()).Count == (isFinished ? 1 : 0), what);
        }
    }

    [Fact]
    public async Task A_body_that_is_no_form_is_refused_in_words()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var browser = shop.Server.Browse();
        var plan = await shop.PlanAsync();
        var (action, _) = await FormAsync(browser, plan, "cut");
        foreach (
            var (type, body) in new[]
            {
                ("application/json", "{}"),
                ("multipart/form-data", "no boundary"),
                ("multipart/form-data; boundary=x", "--x\r\ncut short"),
                ("application/x-www-form-urlencoded", "%%%=%zz&&&==&" + new string('a', 5000)),
                ("application/x-www-form-urlencoded", string.Concat(Enumerable.Repeat("a=1&", 3000))),
            }
        )
        {
            using var content = new StringContent(body, Encoding.UTF8);
            content.Headers.Remove("Content-Type");
            content.Headers.TryAddWithoutValidation("Content-Type", type);
            using var answer = await browser.SendFormAsync(action, content);
            Assert.True(answer.StatusCode == HttpStatusCode.BadRequest, $"{type}: {answer.StatusCode}");
            Assert.Contains(
                "class=\"bench\"",
                await answer.Content.ReadAsStringAsync(ShopServer.Cancel),
                StringComparison.Ordinal
            );
        }
    }

    private static IEnumerable<(string What, Func<Fields, Fields> Change)> Odd(string[] names)
    {
        foreach (var name in names)
        {
            yield return ($"without {name}", form => form.Without(name));
            yield return ($"{name} twice", form => [.. form, KeyValuePair.Create(name, Of(form, name))]);
            yield return ($"{name} twice, not alike", form => [.. form, KeyValuePair.Create(name, Of(form, name) + "7")]);
            foreach (var odd in OddValues)
                yield return ($"{name} = {Short(odd)}", form => form.With((name, odd)));
        }

        foreach (var place in new[] { "-1", "abc", "", "7", "99999", "99999999999", "0][0" })
            yield return (
                $"a leftover at {place}",
                form => form.With(($"Leftovers[{place}].Length", "35"), ($"Leftovers[{place}].Index", "0"))
            );
        yield return ("leftovers as one", form => form.With(("Leftovers", "35")));
        yield return ("a great many leftovers", form => [.. form, .. Enumerable.Range(2, 200).SelectMany(Row)]);
        yield return ("nothing", form => [.. form.Where(field => field.Key == Token)]);
        yield return ("an overlong name", form => form.With((new string('x', 3000), "1")));
    }

    private static string Of(Fields form, string name) => form.First(field => field.Key == name).Value;

    private static IEnumerable<KeyValuePair<string, string>> Row(int place) =>
        new[] { ("Index", "-1"), ("Length", "1"), ("Width", "1"), ("Keep", "true") }.Select(pair =>
            KeyValuePair.Create(string.Create(CultureInfo.InvariantCulture, $"Leftovers[{place}].{pair.Item1}"), pair.Item2)
        );

    private static async Task<(string Action, Fields Fields)> FormAsync(PlainBrowser browser, Guid plan, string which)
    {
        if (which == "reopen")
        {
            var finish = (await browser.OpenAsync(Links.BenchFinish(plan, 1, allCutsMade: true))).FormOf(Finish);
            using var finished = await browser.SubmitAsync(finish);
            Assert.Equal(HttpStatusCode.SeeOther, finished.StatusCode);
        }

        return await ShownAsync(browser, plan, which);
    }

    // What was done is taken back, so that the next form finds the board as the first did.
    private static async Task<(string Action, Fields Fields)> AgainAsync(
        PlannedShop shop,
        PlainBrowser browser,
        Guid plan,
        string which
    )
    {
        var (bench, board) = (shop.Server.Get<IBenchService>(), await shop.BoardAsync(plan));
        if (board.Finished)
            Assert.True((await bench.ReopenAsync(plan, board.Layout, board.Copy, "test", CommandId.New(), ShopServer.Cancel)).Ok);
        foreach (var (cut, _) in board.Cuts.Where(cut => cut.Made))
            await bench.SetCutAsync(plan, board.Layout, board.Copy, cut.N, false, "test", CommandId.New(), ShopServer.Cancel);
        return await FormAsync(browser, plan, which);
    }

    private static async Task<(string Action, Fields Fields)> ShownAsync(PlainBrowser browser, Guid plan, string which)
    {
        var (address, button) = which switch
        {
            "cut" => (Links.BenchPlan(plan, 1), "Done"),
            "finish" => (Links.BenchFinish(plan, 1, allCutsMade: true), Finish),
            _ => (Links.BenchPlan(plan, 1), "Reopen this board"),
        };
        var form = (await browser.OpenAsync(address)).FormOf(button);
        return (form.GetAttribute("action")!, PlainBrowser.FieldsOf(form));
    }

    private static string Short(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
