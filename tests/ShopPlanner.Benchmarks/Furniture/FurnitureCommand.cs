using System.Globalization;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>furniture [--jobs N] [--seconds S] [--workers N]</c>: plans invented cabinets and prints what their plans ask of whoever cuts
/// them, and the sums. A run is faulty, exit code 1, when the verifier finds anything in a plan.
/// </summary>
public static class FurnitureCommand
{
    private const int UsualJobs = 40;
    private const double UsualSeconds = 2;

    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.ParseWithoutPath(words, ["jobs", "seconds", "workers"], []);
        Console.WriteLine("job       cost  settings  changes  turns  short rips  slivers");
        var (sum, cost, faulty) = (new PlanMeasures(0, 0, 0, 0, 0, 0), 0m, false);
        for (var job = 1; job <= options.Whole("jobs", UsualJobs); job++)
        {
            var request = FurnitureJobs.Of(job);
            var plan = CutPlanner.Plan(request, Control(options));
            var measures = PlanMeasures.Of(request, plan);
            Console.WriteLine(Row($"{job}", plan.Cost.Amount, measures));
            (sum, cost) = (Add(sum, measures), cost + plan.Cost.Amount);
            faulty |= !PlanVerifier.Check(request, plan).IsEmpty;
        }

        Console.WriteLine(Row("sum", cost, sum));
        return faulty ? 1 : 0;
    }

    private static SearchControl Control(Options options) =>
        new()
        {
            Time = TimeSpan.FromSeconds(options.Number("seconds", UsualSeconds)),
            Workers = options.Whole("workers", Environment.ProcessorCount),
        };

    private static PlanMeasures Add(PlanMeasures one, PlanMeasures other) =>
        new(0, 0, 0, one.Settings + other.Settings, one.Cuts + other.Cuts, 0)
        {
            SettingChanges = one.SettingChanges + other.SettingChanges,
            Turns = one.Turns + other.Turns,
            ShortRips = one.ShortRips + other.ShortRips,
            Slivers = one.Slivers + other.Slivers,
        };

    private static string Row(string name, decimal cost, PlanMeasures of) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{name, -4}{cost, 10:0.00}{of.Settings, 10}{of.SettingChanges, 9}{of.Turns, 7}{of.ShortRips, 12}{of.Slivers, 9}"
        );
}
