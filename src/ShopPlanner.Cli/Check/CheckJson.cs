using System.Collections.Immutable;
using System.Text.Json;
using ShopPlanner.Core.Designs.Checking;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Cli.Check;

/// <summary>A report as JSON: <c>tried</c>, <c>passes</c>, <c>faults[]</c> and <c>findings[]</c>, each with <c>times</c> and the
/// first <c>values</c>.</summary>
internal static class CheckJson
{
    /// <summary>The document, ended by a line feed.</summary>
    public static string Write(CheckReport report) =>
        JsonOutput.Object(writer =>
        {
            writer.WriteNumber("tried", report.Tried);
            writer.WriteBoolean("passes", report.Passes);
            writer.List("faults", report.Faults, Fault);
            writer.List("findings", report.Findings, Finding);
        });

    private static void Fault(Utf8JsonWriter writer, CheckFault fault)
    {
        writer.WriteString("place", fault.Fault.Field);
        writer.WriteString("value", fault.Fault.Value);
        writer.WriteString("says", fault.Fault.Message);
        Where(writer, fault.Times, fault.Values);
    }

    private static void Finding(Utf8JsonWriter writer, CheckFinding finding)
    {
        writer.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
        writer.WriteString("says", finding.Text);
        if (finding.Part is { } part)
            writer.WriteString("part", part);
        Where(writer, finding.Times, finding.Values);
    }

    private static void Where(Utf8JsonWriter writer, int times, ImmutableDictionary<string, string> values)
    {
        writer.WriteNumber("times", times);
        writer.Member(
            "values",
            inner =>
            {
                foreach (var (name, value) in values.OrderBy(one => one.Key, StringComparer.Ordinal))
                    inner.WriteString(name, value);
            }
        );
    }
}
