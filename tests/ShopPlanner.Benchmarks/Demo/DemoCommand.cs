namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>demo [--seconds S] [--json FILE] [--workers N]</c>: plans three invented jobs and prints a row for each. A run is faulty,
/// exit code 1, when the verifier finds anything in a plan.
/// </summary>
public static class DemoCommand
{
    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.ParseWithoutPath(words, ["seconds", "json", "workers"], []);
        using var lines = new JsonLines(options.Text("json"));
        var faulty = false;
        Console.WriteLine(JobRow.Heading);
        foreach (var (name, request) in DemoJobs.All())
            faulty |= !JobRun.Measure(name, request, options, lines);
        return faulty ? 1 : 0;
    }
}
