namespace ShopPlanner.Scheduling.Formats;

/// <summary>The words of both formats and what they stand for.</summary>
internal static class Words
{
    public const int Version = 1;

    public const string Request = "shop-planner/weekends-request";
    public const string Plan = "shop-planner/weekends-plan";

    public static readonly Dictionary<string, ScheduleStatus> Statuses = new()
    {
        ["proven"] = ScheduleStatus.Proven,
        ["best-found"] = ScheduleStatus.BestFound,
        ["impossible"] = ScheduleStatus.Impossible,
    };
}
