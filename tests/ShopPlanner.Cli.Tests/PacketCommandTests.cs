using System.Text;

namespace ShopPlanner.Cli.Tests;

/// <summary>The packet command of the built program.</summary>
public sealed class PacketCommandTests : IDisposable
{
    private const string Case = """
        {
          "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Case",
          "dimensions": [
            { "name": "width", "value": "20" }, { "name": "depth", "value": "12" }, { "name": "height", "value": "30" }
          ],
          "materials": [ { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4", "species": "plywood" } ],
          "frame": { "kind": "sheet-carcass", "case": "case" },
          "bays": { "fills": [ { "kind": "adjustable-shelves", "material": "case", "count": "2" } ] }
        }
        """;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task A_design_is_printed_without_a_plan()
    {
        var to = Path.Combine(scratch.Folder, "case.pdf");
        var run = await ShopPlannerProgram.RunAsync("packet", scratch.Write("d.json", Case), "-o", to, "--paper", "a4");
        Assert.Equal((0, "", ""), (run.Exit, run.Output, run.Error));
        Assert.Contains("/MediaBox", await TextAsync(to), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_request_is_planned_first_and_takes_a_plan_that_answers_it()
    {
        var design = scratch.Write("d.json", Case);
        var request = Path.Combine(scratch.Folder, "request.json");
        await ShopPlannerProgram.RunAsync("parts", design, "--format", "cut-request", "-o", request);
        var plan = Path.Combine(scratch.Folder, "plan.json");
        await ShopPlannerProgram.RunAsync("cut", request, "--seconds", "1", "-o", plan);
        var to = Path.Combine(scratch.Folder, "packet.pdf");

        var run = await ShopPlannerProgram.RunAsync(
            "packet",
            request,
            "--plan",
            plan,
            "--sections",
            "shopping,layouts",
            "-o",
            to
        );

        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.StartsWith("%PDF-", await TextAsync(to), StringComparison.Ordinal);
        var alone = await ShopPlannerProgram.RunAsync("packet", plan, "-o", to);
        Assert.Equal(2, alone.Exit);
        Assert.Contains("give the request", alone.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--sections", "cover,glue", "'glue' is not a section")]
    [InlineData("--paper", "legal", "'legal' is not a paper")]
    public async Task What_is_not_known_is_refused_with_what_is(string option, string value, string told)
    {
        var to = Path.Combine(scratch.Folder, "case.pdf");
        var run = await ShopPlannerProgram.RunAsync("packet", scratch.Write("d.json", Case), "-o", to, option, value);
        Assert.Equal(2, run.Exit);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(to));
    }

    [Fact]
    public async Task A_design_with_errors_is_refused_and_nothing_is_written()
    {
        var to = Path.Combine(scratch.Folder, "case.pdf");
        var wrong = Case.Replace("\"20\"", "\"wide\"", StringComparison.Ordinal);
        var run = await ShopPlannerProgram.RunAsync("packet", scratch.Write("d.json", wrong), "-o", to);
        Assert.Equal(2, run.Exit);
        Assert.Contains("wide", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(to));
    }

    private static async Task<string> TextAsync(string file) =>
        Encoding.Latin1.GetString(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
}
