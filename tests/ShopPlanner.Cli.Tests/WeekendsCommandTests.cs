using System.Text.Json;

namespace ShopPlanner.Cli.Tests;

/// <summary>The weekends command of the built program.</summary>
public sealed class WeekendsCommandTests : IDisposable
{
    private const string Request = """
        {
          "format": "shop-planner/weekends-request", "version": 1,
          "windows": [[540, 1020], [2040, 2400]],
          "resources": { "person": 1, "clamps": 4 },
          "tasks": [
            { "id": "glue", "labour": 60, "hold": 240, "labourUses": { "person": 1, "clamps": 4 }, "holdUses": { "clamps": 4 } },
            { "id": "sand", "labour": 200, "hold": 0, "labourUses": { "person": 1 }, "holdUses": {} }
          ],
          "precedences": [ { "before": "glue", "after": "sand", "wait": 0 } ]
        }
        """;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task A_schedule_is_written_to_the_file_alone()
    {
        var run = await ShopPlannerProgram.RunAsync(
            "weekends",
            scratch.Write("r.json", Request),
            "-o",
            scratch["s.json"],
            "--seconds",
            "20"
        );
        Assert.Equal(new Run(0, "", ""), run);
        using var written = JsonDocument.Parse(
            await File.ReadAllTextAsync(scratch["s.json"], TestContext.Current.CancellationToken)
        );
        // Glued at 9:00, in clamps until 14:00; 200 minutes no longer fit before 17:00.
        Assert.Equal("proven", written.RootElement.GetProperty("status").GetString());
        Assert.Equal(2240, written.RootElement.GetProperty("finish").GetInt32());
        Assert.Equal(540, written.RootElement.GetProperty("starts").GetProperty("glue").GetInt32());
    }

    [Fact]
    public async Task What_is_impossible_gives_3_and_says_why()
    {
        var run = await ShopPlannerProgram.RunWithInputAsync(
            Request.Replace("200", "500", StringComparison.Ordinal),
            "weekends",
            "-"
        );
        Assert.Equal(3, run.Exit);
        using var written = JsonDocument.Parse(run.Output);
        Assert.Equal("impossible", written.RootElement.GetProperty("status").GetString());
        Assert.Contains(
            "'sand' takes 8 h 20 min",
            written.RootElement.GetProperty("reasons")[0].GetString(),
            StringComparison.Ordinal
        );
        Assert.StartsWith("'sand' takes 8 h 20 min", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrong_request_gives_2_with_a_line_for_each_fault_and_writes_nothing()
    {
        var wrong = Request
            .Replace("\"labour\": 60", "\"labour\": -60", StringComparison.Ordinal)
            .Replace("\"after\": \"sand\"", "\"after\": \"paint\"", StringComparison.Ordinal);
        var run = await ShopPlannerProgram.RunAsync("weekends", scratch.Write("r.json", wrong), "-o", scratch["s.json"]);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Equal(
            ["tasks[0].labour: '-60' is too few: 0 or more", "precedences[0].after: 'paint' is the id of no task"],
            run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)
        );
        Assert.Equal(["r.json"], scratch.Files);
    }
}
