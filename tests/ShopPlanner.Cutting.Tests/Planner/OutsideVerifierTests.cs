using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using CsCheck;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Random plans, written as documents, checked by a program in another language that was written from the format's
/// description alone.</summary>
public sealed class OutsideVerifierTests : IDisposable
{
    private const int Plans = 60;

    // The program checks one pair of documents; starting it once for all saves most of the time.
    private const string CheckAll = """
        import importlib.util, sys
        spec = importlib.util.spec_from_file_location("verify_plan", sys.argv[1])
        verify = importlib.util.module_from_spec(spec)
        spec.loader.exec_module(verify)
        bad = 0
        for i in range(int(sys.argv[3])):
            bad += verify.main(f"{sys.argv[2]}/{i}.request.json", f"{sys.argv[2]}/{i}.plan.json")
        sys.exit(1 if bad else 0)
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("plans-").FullName;

    [Fact]
    public async Task Every_plan_passes_the_program_beside_the_repository()
    {
        var program = Program();
        Assert.SkipWhen(program is null, "there is no folder 'shared' with tools/verify_plan.py beside the repository");
        var written = 0;
        PlanPropertyTests.Requests.Sample(request => Write(request, written++), iter: Plans, threads: 1);
        var (status, said) = await Run(program!, TestContext.Current.CancellationToken);
        Assert.True(status == 0, said);
        Assert.Equal(Plans, said.Split('\n').Count(line => line.StartsWith("cuttable", StringComparison.Ordinal)));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Write(CutRequest request, int number)
    {
        var plan = Some.Planned(request, new SearchControl { Time = TimeSpan.FromMilliseconds(120), Workers = 1 });
        var name = Path.Combine(folder, number.ToString(CultureInfo.InvariantCulture));
        File.WriteAllText(name + ".request.json", CutRequestJson.Write(request));
        File.WriteAllText(name + ".plan.json", CutPlanJson.Write(plan));
    }

    private static string? Program()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var program = Path.Combine(at.FullName, "shared", "tools", "verify_plan.py");
            if (File.Exists(program))
                return program;
        }

        return null;
    }

    private async Task<(int Status, string Said)> Run(string program, CancellationToken cancel)
    {
        var start = new ProcessStartInfo(
            "python3",
            ["-c", CheckAll, program, folder, Plans.ToString(CultureInfo.InvariantCulture)]
        )
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = new Process { StartInfo = start };
        try
        {
            process.Start();
        }
        catch (Win32Exception)
        {
            Assert.Skip("python3 is not installed: it runs the other verifier");
        }

        var complaints = process.StandardError.ReadToEndAsync(cancel);
        var said = await process.StandardOutput.ReadToEndAsync(cancel) + await complaints;
        await process.WaitForExitAsync(cancel);
        return (process.ExitCode, said);
    }
}
