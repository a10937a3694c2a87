using System.Collections.Immutable;
using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Designs.Checking;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Cli.Check;

/// <summary>How a check is asked for.</summary>
internal sealed record CheckWish(int AtRandom, bool Corners, int Seed, bool AsJson);

/// <summary>One run of the command: read, check, write.</summary>
internal static class CheckRun
{
    private static readonly Dictionary<string, LargestStock> UsualStock = [];

    /// <summary>The exit status.</summary>
    public static int Run(string from, IReadOnlyList<string> set, CheckWish wish)
    {
        var changed = DesignChanges.Of(set);
        var (document, faults) = DesignInput.Read(from);
        if (document is null)
            return DesignInput.Refused(faults, changed);
        var order = new CheckOrder(changed.ToImmutableDictionary(), wish.AtRandom, wish.Corners, wish.Seed);
        var report = DesignCheck.Run(document, order, UsualStock);
        TextOutput.At(null, "report", from, "design").Write(wish.AsJson ? CheckJson.Write(report) : Text(report));
        return report.Passes ? ExitStatus.Done : ExitStatus.Refused;
    }

    private static string Text(CheckReport report)
    {
        var lines = report
            .Faults.Select(one => $"Can't be built: {one.Fault}. {Where(one.Times, report.Tried, one.Values)}")
            .Concat(report.Findings.Select(one => Line(one, report.Tried)))
            .ToList();
        lines.Add(
            $"{report.Tried} {(report.Tried == 1 ? "set" : "sets")} of values tried: "
                + (report.Passes ? "each can be built." : "some can't be built as said above.")
        );
        return string.Join('\n', lines) + "\n";
    }

    private static string Line(CheckFinding finding, int tried)
    {
        var part = finding.Part is { } id ? $"Part {id}: " : "";
        return $"{SeverityWords.Of(finding.Severity)}: {part}{finding.Text} {Where(finding.Times, tried, finding.Values)}";
    }

    private static string Where(int times, int tried, ImmutableDictionary<string, string> values)
    {
        var at = values.OrderBy(one => one.Key, StringComparer.Ordinal).Select(one => $"{one.Key}={one.Value}");
        return values.IsEmpty ? $"({times} of {tried}, as it is)" : $"({times} of {tried}, first at {string.Join(", ", at)})";
    }
}
