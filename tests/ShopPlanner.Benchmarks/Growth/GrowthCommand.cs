namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>growth [--seconds S] [--only boards|sheets] [--most PIECES] [--json FILE] [--workers N]</c>: plans ever larger invented
/// jobs, smallest first, and prints a row for each. A run is faulty, exit code 1, when the verifier finds anything in a plan.
/// </summary>
public static class GrowthCommand
{
    private static readonly int[] BoardPieces = [10, 30, 100, 300, 1_000, 3_000, 10_000];
    private static readonly int[] SheetPieces = [10, 30, 100, 300, 1_000, 2_000, 10_000];

    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.ParseWithoutPath(words, ["seconds", "only", "most", "json", "workers"], []);
        using var lines = new JsonLines(options.Text("json"));
        var (boards, sheets) = Wanted(options.Text("only"));
        var most = options.Whole("most", int.MaxValue);
        Console.WriteLine("Invented jobs, for growth only. Peak MB is the whole program's, earlier rows included.");
        Console.WriteLine(JobRow.Heading);
        var faulty = false;
        foreach (var pieces in BoardPieces.Where(pieces => boards && pieces <= most))
            faulty |= !JobRun.Measure("boards", GrowthJobs.Boards(pieces), options, lines);
        foreach (var pieces in SheetPieces.Where(pieces => sheets && pieces <= most))
            faulty |= !JobRun.Measure("sheets", GrowthJobs.Sheets(pieces), options, lines);
        return faulty ? 1 : 0;
    }

    private static (bool Boards, bool Sheets) Wanted(string? only) =>
        only switch
        {
            null => (true, true),
            "boards" => (true, false),
            "sheets" => (false, true),
            _ => throw new UsageException($"--only wants boards or sheets, not '{only}'."),
        };
}
