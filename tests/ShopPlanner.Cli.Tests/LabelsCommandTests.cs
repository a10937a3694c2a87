using System.Text;

namespace ShopPlanner.Cli.Tests;

/// <summary>The labels command of the built program.</summary>
public sealed class LabelsCommandTests : IDisposable
{
    private const string Made = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Case",
          "dimensions": [
            { "name": "width", "value": "20", "least": "16", "most": "60" },
            { "name": "depth", "value": "12" },
            { "name": "height", "value": "30" }
          ],
          "materials": [ { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" } ],
          "frame": { "kind": "sheet-carcass", "case": "case" },
          "bays": {}
        }
        """;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task A_design_and_a_request_become_labels()
    {
        var to = scratch["labels.pdf"];
        var run = await ShopPlannerProgram.RunAsync([
            "labels",
            scratch.Write("d.json", Made),
            "-o",
            to,
            "--sheet",
            "a4-65",
            "--start",
            "3",
            "--nudge=1 mm,-0.5 mm",
            "--qr",
        ]);
        Assert.Equal((0, "", ""), (run.Exit, run.Output, run.Error));
        Assert.Equal(
            "%PDF",
            Encoding.ASCII.GetString(await File.ReadAllBytesAsync(to, TestContext.Current.CancellationToken), 0, 4)
        );

        var request = scratch["request.json"];
        await ShopPlannerProgram.RunAsync("parts", scratch["d.json"], "--format", "cut-request", "-o", request);
        run = await ShopPlannerProgram.RunAsync("labels", request, "-o", scratch["more.pdf"]);
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.True(new FileInfo(scratch["more.pdf"]).Length > 1000);
    }

    [Theory]
    [InlineData("--sheet=a5", "--sheet: 'a5' is no sheet")]
    [InlineData("--start=31", "--start: '31' is no label of the sheet")]
    [InlineData("--nudge=1", "--nudge: '1' is not two distances")]
    [InlineData("--nudge=x,1mm", "--nudge right: 'x' is not a distance")]
    [InlineData("--set=width=9", "--set width: '9'")]
    public async Task What_is_wrong_is_said_in_one_line_and_nothing_is_written(string option, string said)
    {
        var to = scratch["labels.pdf"];
        var run = await ShopPlannerProgram.RunAsync("labels", scratch.Write("d.json", Made), "-o", to, option);
        Assert.Equal(2, run.Exit);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.Trim().Split('\n'));
        Assert.False(File.Exists(to));
    }

    [Theory]
    [InlineData("{")]
    [InlineData("{ \"format\": \"shop-planner/cut-request\" }")]
    [InlineData("[]")]
    [InlineData("")]
    public async Task What_is_neither_is_refused(string text)
    {
        var run = await ShopPlannerProgram.RunAsync("labels", scratch.Write("d.json", text), "-o", scratch["labels.pdf"]);
        Assert.Equal(2, run.Exit);
        Assert.NotEmpty(run.Error);
        Assert.False(File.Exists(scratch["labels.pdf"]));
    }
}
