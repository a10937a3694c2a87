using System.Text.Json;
using System.Text.RegularExpressions;

namespace ShopPlanner.Cli.Tests;

/// <summary>Workings of a document's own parts at the command line.</summary>
public sealed partial class WorkFromTests : IDisposable
{
    private readonly Scratch scratch = new();

    private static string Table => ShopPlannerProgram.FindAbove(Path.Combine("wwwroot-assets", "designs", "table.json"))!;

    public void Dispose() => scratch.Dispose();

    [Theory, InlineData("coats"), InlineData("stability"), InlineData("movement"), InlineData("glue-up"), InlineData("weight")]
    public async Task What_it_tells_to_enter_by_hand_gives_the_same_figure(string form)
    {
        var run = await ShopPlannerProgram.RunAsync("work", form, "--from", Table);
        Assert.Equal((0, ""), (run.Exit, run.Error));
        foreach (Match told in ByHand().Matches(run.Output))
        {
            var pairs = Pair().Matches(told.Groups["pairs"].Value).Select(pair => pair.Groups["pair"].Value);
            var again = await ShopPlannerProgram.RunAsync(["work", form, .. pairs]);
            Assert.Equal((0, ""), (again.Exit, again.Error));
            Assert.Contains(again.Output.Split('\n')[0], run.Output, StringComparison.Ordinal);
        }

        Assert.Matches(ByHand(), run.Output);
    }

    [Fact]
    public async Task Json_holds_what_was_added_up_and_the_answers()
    {
        var run = await ShopPlannerProgram.RunAsync("work", "weight", "--from", Table, "--set", "width=50", "--json");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        using var json = JsonDocument.Parse(run.Output);
        var root = json.RootElement;
        var sum = root.GetProperty("questions")
            .EnumerateArray()
            .Sum(one => one.GetProperty("answer").GetProperty("value").GetDouble());
        Assert.Equal(sum, root.GetProperty("sum").GetProperty("value").GetDouble(), 1e-9);
        foreach (var question in root.GetProperty("questions").EnumerateArray())
        foreach (var added in question.GetProperty("added").EnumerateArray())
            Assert.Equal(
                added.GetProperty("value").GetDouble(),
                added.GetProperty("shares").EnumerateArray().Sum(share => share.GetProperty("value").GetDouble()),
                1e-6
            );
        Assert.InRange(
            sum,
            root.GetProperty("range").GetProperty("least").GetDouble(),
            root.GetProperty("range").GetProperty("most").GetDouble()
        );
    }

    [Fact]
    public async Task A_cut_request_is_added_up_too_and_what_it_does_not_say_is_told()
    {
        var request = await ShopPlannerProgram.RunAsync("parts", Table, "--format", "cut-request");
        var run = await ShopPlannerProgram.RunWithInputAsync(request.Output, "work", "coats", "--from", "-");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Contains("No faces are noted", run.Output, StringComparison.Ordinal);
        var standing = await ShopPlannerProgram.RunWithInputAsync(request.Output, "work", "stability", "--from", "-");
        Assert.Contains("only a design does", standing.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_added_up_is_refused_in_a_line()
    {
        await RefusedAsync("sag isn't added up from parts", "work", "sag", "--from", Table);
        await RefusedAsync("there is no such file", "work", "weight", "--from", scratch["none.json"]);
        await RefusedAsync("name the design with --from", "work", "weight", "--set", "width=3");
        await RefusedAsync(
            "isn't a design",
            "work",
            "weight",
            "--from",
            scratch.Write("x.json", """{"format":"other","version":1}""")
        );
        await RefusedAsync("is not an input of coats", "work", "coats", "--from", Table, "span=3");
        await RefusedAsync("--set width", "work", "coats", "--from", Table, "--set", "width=wide");
    }

    private static async Task RefusedAsync(string with, params string[] words)
    {
        var run = await ShopPlannerProgram.RunAsync(words);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains(with, run.Error, StringComparison.Ordinal);
    }

    [GeneratedRegex("By hand: work [a-z-]+ (?<pairs>.+)", RegexOptions.ExplicitCapture)]
    private static partial Regex ByHand();

    [GeneratedRegex("\"(?<pair>[^\"]+)\"", RegexOptions.ExplicitCapture)]
    private static partial Regex Pair();
}
