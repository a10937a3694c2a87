using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Running;

/// <summary>How a planning run ended.</summary>
/// <param name="Job">The run's id.</param>
/// <param name="State">Done, stopped or failed.</param>
/// <param name="PlanId">The stored plan, if any.</param>
/// <param name="Faults">Why there is no plan.</param>
internal sealed record PlanJobEnd(Guid Job, PlanJobState State, Guid? PlanId, ImmutableArray<Fault> Faults);

/// <summary>Writes down how planning runs ended, and keeps what the disk refused until it can be written.</summary>
internal sealed class PlanJobEnds(ShopWork work, ILogger<PlanJobEnds> log)
{
    private readonly ConcurrentDictionary<Guid, PlanJobEnd> unwritten = [];

    /// <summary>Whether a run's end is still to be written.</summary>
    public bool IsUnwritten(Guid job) => unwritten.ContainsKey(job);

    /// <summary>Writes an end; returns what to tell where that failed, and nothing where it is written.</summary>
    public async Task<ImmutableArray<Fault>> WriteAsync(PlanJobEnd end)
    {
        var faults = await TryAsync(end);
        if (faults.IsEmpty)
        {
            unwritten.TryRemove(end.Job, out _);
            return [];
        }

        unwritten[end.Job] = end;
        log.LogError(
            "The end of planning run {Job} ({State}) could not be saved and is tried again every minute: {Faults}",
            end.Job,
            end.State,
            string.Join("; ", faults)
        );
        return [new Fault("planner", "how this run ended", "is not saved yet and is tried again every minute"), .. faults];
    }

    /// <summary>Tries what is unwritten again; returns what is written now.</summary>
    public async Task<IReadOnlyList<PlanJobEnd>> WriteAgainAsync()
    {
        var written = new List<PlanJobEnd>();
        foreach (var end in unwritten.Values)
            if ((await WriteAsync(end)).IsEmpty)
                written.Add(end);
        return written;
    }

    private async Task<ImmutableArray<Fault>> TryAsync(PlanJobEnd end)
    {
        try
        {
            return (await work.WriteAsync(db => NoteAsync(db, end), CancellationToken.None)).Faults;
        }
        catch (Exception problem) when (problem is DbException or DbUpdateException or IOException)
        {
            return [Fault.Of("storage", "the disk", "could not be written: " + problem.GetBaseException().Message)];
        }
    }

    private static async Task<Outcome<Done>> NoteAsync(ShopContext db, PlanJobEnd end)
    {
        var stored = await db.Jobs.SingleAsync(job => job.Id == end.Job);
        (stored.State, stored.PlanId, stored.FaultsJson) = (end.State, end.PlanId, FaultsDocument.Write(end.Faults));
        return Done.Value;
    }
}
