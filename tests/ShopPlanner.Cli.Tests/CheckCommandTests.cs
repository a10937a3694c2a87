using System.Text.Json;

namespace ShopPlanner.Cli.Tests;

/// <summary>The check command of the built program.</summary>
public sealed class CheckCommandTests : IDisposable
{
    // A shelf that sags at its widest, and a side whose dado goes through it at the deepest.
    private const string Made = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Case",
          "dimensions": [
            { "name": "width", "value": "20", "least": "16", "most": "60" },
            { "name": "depth", "value": "12", "least": "10", "most": "14" },
            { "name": "height", "value": "30" },
            { "name": "deep", "value": "1/4", "least": "1/8", "most": "1" }
          ],
          "materials": [ { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4", "species": "plywood" } ],
          "frame": { "kind": "sheet-carcass", "case": "case", "let_in": "deep" },
          "bays": { "fills": [ { "kind": "adjustable-shelves", "material": "case", "count": "2" } ] }
        }
        """;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task As_it_stands_it_is_tried_once()
    {
        var run = await ShopPlannerProgram.RunAsync("check", scratch.Write("d.json", Made));
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.EndsWith("1 set of values tried: each can be built.\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Corners_find_what_cannot_be_built_and_say_where()
    {
        var run = await ShopPlannerProgram.RunAsync("check", scratch.Write("d.json", Made), "--corners");
        Assert.Equal(2, run.Exit);
        Assert.Contains("Can't be built: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("(4 of 9, first at deep=1, depth=10, width=16)", run.Output, StringComparison.Ordinal);
        Assert.EndsWith("9 sets of values tried: some can't be built as said above.\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_value_that_is_set_stays_in_every_try_and_the_same_seed_tries_the_same()
    {
        var file = scratch.Write("d.json", Made);
        string[] words = ["check", file, "--random", "40", "--set", "deep=1/4", "--json"];
        var (first, second) = (await ShopPlannerProgram.RunAsync(words), await ShopPlannerProgram.RunAsync(words));
        Assert.Equal(first.Output, second.Output);
        using var report = JsonDocument.Parse(first.Output);
        Assert.Equal(41, report.RootElement.GetProperty("tried").GetInt32());
        Assert.Empty(report.RootElement.GetProperty("faults").EnumerateArray());
        Assert.All(
            report.RootElement.GetProperty("findings").EnumerateArray(),
            finding => Assert.Equal("1/4", finding.GetProperty("values").GetProperty("deep").GetString())
        );
        var other = await ShopPlannerProgram.RunAsync([.. words, "--seed", "2"]);
        Assert.NotEqual(first.Output, other.Output);
    }

    [Theory]
    [InlineData("--random", "-1", "is not a whole number from 0 to 100000")]
    [InlineData("--random", "x", "is not a whole number")]
    [InlineData("--seed", "-3", "is not a whole number")]
    [InlineData("--set", "wide=3", "wide")]
    [InlineData("--set", "width", "is not name=value")]
    public async Task What_is_asked_wrongly_is_refused(string option, string value, string says)
    {
        var run = await ShopPlannerProgram.RunAsync("check", scratch.Write("d.json", Made), option, value);
        Assert.Equal(2, run.Exit);
        Assert.Contains(says, run.Error + run.Output, StringComparison.Ordinal);
    }
}
