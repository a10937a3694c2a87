using System.Text.Json;

namespace ShopPlanner.Cli.Tests;

/// <summary>The steps command of the built program.</summary>
public sealed class StepsCommandTests : IDisposable
{
    private const string Made = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Case",
          "dimensions": [
            { "name": "width", "value": "20", "least": "16", "most": "60" },
            { "name": "depth", "value": "12", "least": "10", "most": "14" },
            { "name": "height", "value": "30" }
          ],
          "materials": [ { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4", "species": "plywood" } ],
          "frame": { "kind": "sheet-carcass", "case": "case" },
          "bays": { "fills": [ { "kind": "adjustable-shelves", "material": "case", "count": "2" } ] },
          "steps": [ "Glue the case.", "Square it." ]
        }
        """;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task Text_is_written_unless_json_is_asked_for()
    {
        var run = await ShopPlannerProgram.RunAsync("steps", scratch.Write("d.json", Made));
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.StartsWith("Case\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("\n1. ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Finish", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_holds_every_step_after_those_that_it_waits_for_and_only_marks_and_joints_of_the_design()
    {
        var file = scratch.Write("d.json", Made);
        var run = await ShopPlannerProgram.RunAsync("steps", file, "--json", "--set", "width=24");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        using var steps = JsonDocument.Parse(run.Output);
        using var parts = JsonDocument.Parse((await ShopPlannerProgram.RunAsync("parts", file, "--set", "width=24")).Output);
        var root = steps.RootElement;
        Assert.Equal(
            ("shop-planner/steps", 1, "Case", "in"),
            (
                root.GetProperty("format").GetString(),
                root.GetProperty("version").GetInt32(),
                root.GetProperty("name").GetString(),
                root.GetProperty("unit").GetString()
            )
        );
        var marks = parts
            .RootElement.GetProperty("parts")
            .EnumerateArray()
            .SelectMany(part => part.GetProperty("copies").EnumerateArray())
            .Select(copy => copy.GetProperty("mark").GetString()!)
            .ToHashSet();
        var joints = parts.RootElement.GetProperty("joints").GetArrayLength();
        var before = new HashSet<string>();
        foreach (var step in root.GetProperty("steps").EnumerateArray())
        {
            Assert.Subset(before, Texts(step, "after"));
            Assert.Subset(marks, Texts(step, "handles"));
            Assert.Subset(marks, Texts(step, "present"));
            Assert.All(step.GetProperty("joints").EnumerateArray(), one => Assert.InRange(one.GetInt32(), 0, joints - 1));
            Assert.True(before.Add(step.GetProperty("id").GetString()!));
        }

        Assert.NotEmpty(before);
        Assert.Equal("paint", root.GetProperty("finish").GetProperty("id").GetString());
    }

    [Fact]
    public async Task Another_finish_is_taken_and_a_file_is_written_whole()
    {
        var (file, to) = (scratch.Write("d.json", Made), Path.Combine(scratch.Folder, "steps.json"));
        var run = await ShopPlannerProgram.RunAsync("steps", file, "--finish", "clear", "--json", "-o", to);
        Assert.Equal((0, "", ""), (run.Exit, run.Error, run.Output));
        using var steps = JsonDocument.Parse(await File.ReadAllTextAsync(to, TestContext.Current.CancellationToken));
        Assert.Equal("clear", steps.RootElement.GetProperty("finish").GetProperty("id").GetString());
    }

    [Theory]
    [InlineData("--finish", "mud", "'mud' is not known: write one of ")]
    [InlineData("--glue", "spit", "'spit' is not known: write one of ")]
    [InlineData("--set", "width=400", "--set width: ")]
    [InlineData("--set", "wide=3", "wide")]
    [InlineData("--set", "width", "is not name=value")]
    public async Task What_is_asked_wrongly_is_refused_and_nothing_is_written(string option, string value, string says)
    {
        var run = await ShopPlannerProgram.RunAsync("steps", scratch.Write("d.json", Made), option, value);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bad_document_is_refused_with_a_line_for_each_fault()
    {
        var bad = Made.Replace("\"sheet-carcass\"", "\"tent\"", StringComparison.Ordinal)
            .Replace("\"value\": \"30\"", "\"value\": \"tall\"", StringComparison.Ordinal);
        var run = await ShopPlannerProgram.RunAsync("steps", scratch.Write("d.json", bad));
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.NotEmpty(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    private static HashSet<string> Texts(JsonElement step, string member) =>
        [.. step.GetProperty(member).EnumerateArray().Select(one => one.GetString()!)];
}
