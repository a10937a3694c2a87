using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Formats;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Verification;

namespace ShopPlanner.Cli.Weekends;

/// <summary>One run of the command: read, schedule, check, write.</summary>
internal static class WeekendsRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string from, string? to, double? seconds)
    {
        var target = TextOutput.At(to, "schedule", from, "request");
        if (Read(from) is not { } request)
            return ExitStatus.Refused;
        var schedule = Plan(seconds is { } given ? request with { Seconds = given } : request);
        if (!Passes(request, schedule))
            return ExitStatus.Failed;
        target.Write(ScheduleJson.Write(schedule));
        foreach (var reason in schedule.Reasons)
            Complaint.Print(reason);
        return schedule.Status == ScheduleStatus.Impossible ? ExitStatus.Incomplete : ExitStatus.Done;
    }

    private static ScheduleRequest? Read(string from)
    {
        var (request, faults) = DocumentInput.Read(from, "request", ScheduleRequestJson.Read);
        foreach (var fault in faults)
            Complaint.Print(fault.ToString());
        return request;
    }

    private static Schedule Plan(ScheduleRequest request)
    {
        using var interrupt = new Interrupt();
        return SchedulePlanner.Plan(request, new ScheduleControl { Cancel = interrupt.Token });
    }

    // Nobody should give a weekend to a schedule that fails our own check.
    private static bool Passes(ScheduleRequest request, Schedule schedule)
    {
        var faults = ScheduleVerifier.Check(request, schedule);
        if (faults.IsEmpty)
            return true;
        Complaint.Print("the schedule failed its own check, so nothing was written; please report this with the request:");
        foreach (var fault in faults)
            Complaint.Print(fault);
        return false;
    }
}
