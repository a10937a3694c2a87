using System.Globalization;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Benchmarks;

/// <summary>Plans one job as the application would, prints its row and has the plan verified.</summary>
public static class JobRun
{
    private const double UsualSeconds = 10;

    /// <summary>False when the verifier finds anything in the plan.</summary>
    public static bool Measure(string name, CutRequest request, Options options, JsonLines lines)
    {
        var heard = new Milestones();
        var plan = CutPlanner.Plan(
            request,
            new SearchControl
            {
                Time = TimeSpan.FromSeconds(options.Number("seconds", UsualSeconds)),
                Workers = options.Whole("workers", Environment.ProcessorCount),
                Progress = heard.Hear,
            }
        );
        var row = JobRow.Of(name, request, plan, heard);
        Console.WriteLine(row.Text());
        lines.Write(row);
        var faults = PlanVerifier.Check(request, plan);
        foreach (var fault in faults)
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {fault}"));
        return faults.IsEmpty;
    }
}
