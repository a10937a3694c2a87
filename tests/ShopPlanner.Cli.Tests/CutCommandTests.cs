using System.Diagnostics;
using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cli.Tests;

/// <summary>The command as a person or a script meets it: exit status, what is written, what is said.</summary>
public sealed class CutCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task A_plan_is_written_to_the_file_alone()
    {
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", Requests.Small), "-o", scratch["p.json"]);
        Assert.Equal(new Run(0, "", ""), run);
        Assert.Equal(["p.json", "r.json"], scratch.Files);
        var plan = Plan(Requests.Small, await File.ReadAllTextAsync(scratch["p.json"], TestContext.Current.CancellationToken));
        Assert.Equal((PlanStatus.Proven, Money.From(8)), (plan.Status, plan.Cost));
    }

    [Fact]
    public async Task An_earlier_plan_is_replaced()
    {
        scratch.Write("p.json", "an earlier plan");
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", Requests.Small), "-o", scratch["p.json"]);
        Assert.Equal(0, run.Exit);
        Assert.Equal(
            PlanStatus.Proven,
            Plan(Requests.Small, await File.ReadAllTextAsync(scratch["p.json"], TestContext.Current.CancellationToken)).Status
        );
    }

    [Fact]
    public async Task Without_a_file_the_plan_goes_to_standard_output()
    {
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", Requests.Small));
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Equal(PlanStatus.Proven, Plan(Requests.Small, run.Output).Status);
    }

    [Fact]
    public async Task A_dash_reads_standard_input()
    {
        var run = await ShopPlannerProgram.RunWithInputAsync(Requests.Small, "cut", "-");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Equal(Money.From(8), Plan(Requests.Small, run.Output).Cost);
    }

    [Fact]
    public async Task A_part_without_a_place_gives_3_and_a_plan_of_the_rest()
    {
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", Requests.TooLong), "-o", scratch["p.json"]);
        Assert.Equal((3, ""), (run.Exit, run.Error));
        var plan = Plan(Requests.TooLong, await File.ReadAllTextAsync(scratch["p.json"], TestContext.Current.CancellationToken));
        Assert.Equal(PlanStatus.Incomplete, plan.Status);
        Assert.Equal(("Z", 1), (plan.Unplaced.Single().Part, plan.Unplaced.Single().Quantity));
        Assert.Equal(2, plan.Layouts.Sum(layout => layout.Pieces.Length * layout.Copies));
    }

    [Fact]
    public async Task Each_fault_is_one_line_and_nothing_is_written()
    {
        var wrong = Requests
            .TooLong.Replace("34 1/2", "12 1/0", StringComparison.Ordinal)
            .Replace("\"1/8\"", "-1", StringComparison.Ordinal);
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", wrong), "-o", scratch["p.json"]);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Equal(["r.json"], scratch.Files);
        var lines = run.Error.TrimEnd().Split(Environment.NewLine);
        Assert.Equal(2, lines.Length);
        Assert.StartsWith("saw.kerf: '-1' is less than zero", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("parts[0].length: '12 1/0' is not a length", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_document_cannot_steer_the_terminal()
    {
        var wrong = Requests.Small.Replace(
            "\"pine\", \"length\"",
            "\"\\u001b[2J\\nall is well\", \"length\"",
            StringComparison.Ordinal
        );
        var run = await ShopPlannerProgram.RunWithInputAsync(wrong, "cut", "-");
        Assert.Equal(2, run.Exit);
        Assert.DoesNotContain('\u001b', run.Error);
        Assert.All(run.Error.TrimEnd().Split('\n'), line => Assert.Contains(".material: ", line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("there is no such file", "cut", "absent.json")]
    [InlineData("there is no such file", "cut", "absent/request.json")]
    [InlineData("is a folder", "cut", ".")]
    [InlineData("there is no folder", "cut", "r.json", "-o", "absent/p.json")]
    [InlineData("is a folder", "cut", "r.json", "-o", ".")]
    [InlineData("has no name", "cut", "r.json", "-o", "")]
    [InlineData("is the request itself", "cut", "r.json", "-o", "./r.json")]
    [InlineData("--seconds: 'ten' is not a number of seconds", "cut", "r.json", "--seconds", "ten")]
    [InlineData("--seconds: '0' is not a number of seconds", "cut", "r.json", "--seconds", "0")]
    [InlineData("--seconds: '-1' is not a number of seconds", "cut", "r.json", "--seconds", "-1")]
    [InlineData("--seconds: '86401' is not a number of seconds", "cut", "r.json", "--seconds", "86401")]
    [InlineData("--seconds: 'NaN' is not a number of seconds", "cut", "r.json", "--seconds", "NaN")]
    [InlineData("'--fast'", "cut", "r.json", "--fast")]
    [InlineData("argument missing", "cut")]
    [InlineData("command was not provided")]
    [InlineData("'saw'", "saw")]
    public async Task What_cannot_be_done_is_said_in_one_line(string said, params string[] arguments)
    {
        scratch.Write("r.json", Requests.Small);
        var run = await ShopPlannerProgram.StartAsync(
            "sh",
            "",
            ["-c", "cd \"$1\" && shift && exec dotnet \"$@\"", "sh", scratch.Folder, ShopPlannerProgram.Dll, .. arguments]
        );
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains(said, Assert.Single(run.Error.TrimEnd().Split(Environment.NewLine)), StringComparison.Ordinal);
        Assert.Equal(["r.json"], scratch.Files);
        Assert.Equal(Requests.Small, await File.ReadAllTextAsync(scratch["r.json"], TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Help_names_the_options_and_the_exit_status()
    {
        var run = await ShopPlannerProgram.RunAsync("cut", "--help");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.All(
            ["REQUEST.json", "PLAN.json", "--seconds", "standard input", "Exit status"],
            word => Assert.Contains(word, run.Output, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task The_seconds_given_end_the_search()
    {
        var watch = Stopwatch.StartNew();
        var run = await ShopPlannerProgram.RunWithInputAsync(
            Requests
                .Hard()
                .Replace("\"version\": 1", "\"version\": 1, \"limits\": { \"seconds\": 3600 }", StringComparison.Ordinal),
            "cut",
            "-",
            "--seconds",
            "1.5"
        );
        Assert.Equal(0, run.Exit);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(60));
        var plan = Plan(Requests.Hard(), run.Output);
        Assert.True(plan.CostLowerBound <= plan.Cost);
    }

    private static CutPlan Plan(string request, string json)
    {
        var plan = CutPlanJson.Read(Encoding.UTF8.GetBytes(json)).Plan!;
        Assert.Empty(PlanVerifier.Check(CutRequestJson.Read(Encoding.UTF8.GetBytes(request)).Request!, plan));
        return plan;
    }
}
