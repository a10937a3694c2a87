using ShopPlanner.Core.Documents;

namespace ShopPlanner.Scheduling.Formats;

/// <summary>The open schedule format, version 1 (<c>shop-planner/weekends-plan</c>).</summary>
public static class ScheduleJson
{
    /// <summary>Returns a schedule as an indented document.</summary>
    public static string Write(Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        return JsonOutput.Object(writer =>
        {
            writer.WriteString("format", Words.Plan);
            writer.WriteNumber("version", Words.Version);
            writer.WriteString("status", DocumentWords.Of(Words.Statuses, schedule.Status));
            Number("finish", schedule.Finish);
            Number("finishLowerBound", schedule.Bound);
            writer.WriteNumber("seconds", Math.Round(schedule.Seconds, 3));
            writer.Member(
                "starts",
                inner =>
                {
                    foreach (var (task, start) in schedule.Starts)
                        inner.WriteNumber(task, start);
                }
            );
            writer.Texts("reasons", schedule.Reasons);

            void Number(string name, int? value)
            {
                if (value is { } given)
                    writer.WriteNumber(name, given);
                else
                    writer.WriteNull(name);
            }
        });
    }
}
