using System.ComponentModel;
using System.Diagnostics;
using CsCheck;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Tests.Verification;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Plans, written as documents, are checked by a program in another language that was written from the description of the
/// formats alone (<c>Independent/check_plans.py</c>).</summary>
public sealed class OutsideVerifierTests : IDisposable
{
    private const int Plans = 60;

    private static readonly SearchControl Brief = new() { Time = TimeSpan.FromMilliseconds(120), Workers = 1 };

    private readonly string folder = Directory.CreateTempSubdirectory("plans-").FullName;

    [Fact]
    public async Task Every_plan_passes()
    {
        var written = 0;
        PlanPropertyTests.Requests.Sample(
            request => Write(request, Some.Planned(request, Brief), $"{written++}"),
            iter: Plans,
            threads: 1
        );
        var said = await Run(TestContext.Current.CancellationToken);
        Assert.True(said[^1] == $"{Plans} pairs read, {Plans} hold", string.Join('\n', said));
    }

    [Fact]
    public async Task Every_plan_within_limits_of_saw_store_and_car_passes()
    {
        var written = 0;
        SmallRequests.Limited.Sample(
            request => Write(request, Some.Planned(request, Brief), $"{written++}"),
            iter: Plans,
            threads: 1
        );
        var said = await Run(TestContext.Current.CancellationToken);
        Assert.True(said[^1] == $"{Plans} pairs read, {Plans} hold", string.Join('\n', said));
    }

    [Fact]
    public async Task Every_broken_plan_that_a_document_can_hold_is_found_out()
    {
        var names = BrokenPlanTests.Names.Select(row => row.Data).ToList();
        foreach (var name in names)
            Write(Damage.Request, BrokenPlanTests.Broken(name), name);
        var said = await Run(TestContext.Current.CancellationToken);
        Assert.Equal($"{names.Count} pairs read, 0 hold", said[^1]);
        Assert.DoesNotContain(names, name => !said.Any(line => line.StartsWith(name + ": ", StringComparison.Ordinal)));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Write(CutRequest request, CutPlan plan, string name)
    {
        File.WriteAllText(Path.Combine(folder, name + ".request.json"), CutRequestJson.Write(request));
        File.WriteAllText(Path.Combine(folder, name + ".plan.json"), CutPlanJson.Write(plan));
    }

    private async Task<string[]> Run(CancellationToken cancel)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "Independent", "check_plans.py");
        var start = new ProcessStartInfo("python3", [program, folder])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["PYTHONDONTWRITEBYTECODE"] = "1";
        using var process = new Process { StartInfo = start };
        try
        {
            process.Start();
        }
        catch (Win32Exception)
        {
            Assert.Skip("python3 is not installed: it runs the independent verifier");
        }

        var complaints = process.StandardError.ReadToEndAsync(cancel);
        var said = await process.StandardOutput.ReadToEndAsync(cancel) + await complaints;
        await process.WaitForExitAsync(cancel);
        return said.TrimEnd().Split('\n');
    }
}
