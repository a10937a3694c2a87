using System.Text.Json;
using NodaTime.Text;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Scheduling.Formats;

/// <summary>Writes a schedule request.</summary>
internal static class ScheduleRequestWriter
{
    public static string Write(ScheduleRequest request) =>
        JsonOutput.Object(writer =>
        {
            writer.WriteString("format", Words.Request);
            writer.WriteNumber("version", Words.Version);
            if (request.Start is { } start)
                writer.WriteString("start", LocalDateTimePattern.DateHourMinuteIso.Format(start));
            if (request.Zone is { } zone)
                writer.WriteString("zone", zone);
            Windows(writer, request);
            Amounts(writer, "resources", request.Resources);
            writer.List("tasks", request.Tasks, Task);
            writer.List("precedences", request.Precedences, Order);
            writer.Member("limits", limits => limits.WriteNumber("seconds", request.Seconds));
        });

    private static void Windows(Utf8JsonWriter writer, ScheduleRequest request)
    {
        writer.WriteStartArray("windows");
        foreach (var window in request.Windows)
        {
            writer.WriteStartArray();
            writer.WriteNumberValue(window.Opens);
            writer.WriteNumberValue(window.Closes);
            writer.WriteEndArray();
        }

        writer.WriteEndArray();
    }

    private static void Amounts(Utf8JsonWriter writer, string name, IEnumerable<KeyValuePair<string, int>> amounts) =>
        writer.Member(
            name,
            inner =>
            {
                foreach (var (resource, amount) in amounts)
                    inner.WriteNumber(resource, amount);
            }
        );

    private static void Task(Utf8JsonWriter writer, ScheduleTask task)
    {
        writer.WriteString("id", task.Id);
        if (task.Project.Length > 0)
            writer.WriteString("project", task.Project);
        writer.WriteNumber("labour", task.Labor);
        writer.WriteNumber("hold", task.Hold);
        if (task.IsSplittable)
            writer.WriteBoolean("splittable", true);
        Amounts(writer, "labourUses", task.LaborUses);
        Amounts(writer, "holdUses", task.HoldUses);
    }

    private static void Order(Utf8JsonWriter writer, Precedence one)
    {
        writer.WriteString("before", one.Before);
        writer.WriteString("after", one.After);
        writer.WriteNumber("wait", one.Wait);
    }
}
