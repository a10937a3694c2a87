using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Times;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Making;

/// <summary>Work that is done, with how long it took.</summary>
/// <param name="ProjectId">The project.</param>
/// <param name="StepId">The step; null for a session at the saw.</param>
/// <param name="Title">What was done.</param>
/// <param name="WhenUtc">When it was done.</param>
/// <param name="Time">How long it took, beside the usual estimate of then.</param>
public sealed record WorkLog(Guid ProjectId, string? StepId, string Title, DateTime WhenUtc, LoggedTime Time);

/// <summary>Time at the saw as it is logged.</summary>
internal sealed record WorkSession(string Id, string Took, int CutSoFar, DateTime WhenUtc);

/// <summary>Reads and checks how long work took. Only what is done counts: a step that is open again keeps its time until it is
/// done once more.</summary>
internal static class WorkLogs
{
    private const int MostSessions = 500;

    /// <summary>Returns all logs, oldest first.</summary>
    public static async Task<ImmutableArray<WorkLog>> ReadAsync(ShopContext db, CancellationToken cancel)
    {
        var rows = await db.Works.AsNoTracking().ToListAsync(cancel);
        return
        [
            .. rows.SelectMany(row => Of(row.ProjectId, WorkDocument.Read(row.Document)))
                .OrderBy(log => log.WhenUtc)
                .ThenBy(log => log.ProjectId)
                .ThenBy(log => log.StepId, StringComparer.Ordinal),
        ];
    }

    /// <summary>Returns what is wrong with a time; null for nothing, and for an empty text.</summary>
    public static Fault? Refuse(string took) =>
        string.IsNullOrWhiteSpace(took) ? null
        : TextRules.Line("took", took, TextRules.CellCharacters) is { } wrong ? wrong
        : WorkTimeText.Parse(took).Fault?.At("took");

    /// <summary>Returns what is wrong with a session at the saw; null for nothing.</summary>
    public static Fault? RefuseSession(string took, int there) =>
        string.IsNullOrWhiteSpace(took) ? WorkTimeText.Parse(took).Fault!.At("took")
        : there >= MostSessions
            ? Fault.Of("took", took, $"is one too many: a project has at most {MostSessions} times at the saw")
        : Refuse(took);

    /// <summary>Returns a step's time as it is kept; null for an empty text.</summary>
    /// <param name="step">As planned.</param>
    /// <param name="took">As typed, without a fault.</param>
    /// <param name="before">What was kept before: it stays beside the estimate of then.</param>
    public static StoredTime? Time(WorkStep step, string took, StoredTime? before) =>
        string.IsNullOrWhiteSpace(took) ? null
        : before is not null && before.Text == took.Trim() ? before
        : new StoredTime(took.Trim(), StepWords.Kind(step.Action), step.Minutes);

    private static IEnumerable<WorkLog> Of(Guid project, WorkDocument document)
    {
        foreach (var step in document.Steps)
            if (step is { DoneUtc: { } done, Took: { } time } && Read(time) is { } logged)
                yield return new WorkLog(project, step.Id, step.Title, done, logged);
        foreach (var session in document.Cutting)
            if (Read(session.Time) is { } logged)
                yield return new WorkLog(project, null, "Cut the parts", session.WhenUtc, logged);
    }

    private static LoggedTime? Read(StoredTime time) =>
        WorkTimeText.Parse(time.Text) is { Ok: true } read ? new LoggedTime(time.Kind, time.Usual, read.Value) : null;
}
