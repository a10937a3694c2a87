using System.Collections.Immutable;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Plans.Keeping;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans.Facade;

internal sealed class PlanService(
    ShopWork work,
    PlanJobs jobs,
    PlanDrafts drafts,
    PlanReading reading,
    PlanWithdrawal withdrawal,
    PacketPrinter packets
) : IPlanService
{
    public event Action<Guid>? JobChanged
    {
        add => jobs.Changed += value;
        remove => jobs.Changed -= value;
    }

    public async Task<Outcome<PlanPreview>> PreviewAsync(PlanOrder order, CancellationToken cancel = default)
    {
        var draft = (await work.ReadAsync(db => drafts.MakeAsync(db, order, cancel), cancel)).Draft;
        return draft.Ok
            ? new PlanPreview(draft.Value.Request, draft.Value.LeftOut) { CutAlready = draft.Value.CutAlready }
            : new Outcome<PlanPreview>(draft.Kind, null, draft.Faults);
    }

    public Task<Outcome<PlanJobView>> StartAsync(PlanOrder order, CommandId command, CancellationToken cancel = default) =>
        jobs.AddAsync(order, command, (db, job) => RefuseAsync(db, job, cancel), cancel);

    public PlanJobView? FindJob(Guid jobId) => jobs.Find(jobId);

    public void StopJob(Guid jobId) => jobs.FindLive(jobId)?.Stop();

    public Task<IReadOnlyList<PlanSummary>> ListAsync(bool withWithdrawn = false, CancellationToken cancel = default) =>
        work.ReadAsync(db => PlanHeaders.ListAsync(db, withWithdrawn, cancel), cancel);

    public Task<IReadOnlyList<PlanSummary>> ListOfAsync(Guid projectId, CancellationToken cancel = default) =>
        work.ReadAsync(db => PlanHeaders.ListOfAsync(db, projectId, cancel), cancel);

    public Task<IReadOnlyList<OpenPlanView>> ListOpenAsync(CancellationToken cancel = default) =>
        work.ReadAsync(db => withdrawal.ListOpenAsync(db, cancel), cancel);

    public Task<PlanView?> GetAsync(Guid id, CancellationToken cancel = default) =>
        work.ReadAsync(db => reading.FindAsync(db, id, cancel), cancel);

    public Task<Outcome<PlanSummary>> WithdrawAsync(Guid id, CancellationToken cancel = default) =>
        work.WriteAsync(db => withdrawal.WithdrawAsync(db, id, cancel), cancel);

    public Task<Outcome<PlanSummary>> ReinstateAsync(Guid id, CancellationToken cancel = default) =>
        work.WriteAsync(db => withdrawal.ReinstateAsync(db, id, cancel), cancel);

    public async Task<string?> ExportAsync(Guid id, bool plan, CancellationToken cancel = default) =>
        await GetAsync(id, cancel) is not { } view ? null
        : plan ? PlanDocuments.Plan(view)
        : PlanDocuments.Request(view);

    public Task<byte[]?> PacketAsync(
        Guid id,
        Common.PaperSize paper,
        ImmutableArray<PacketSection>? sections = null,
        CancellationToken cancel = default
    ) => packets.PrintAsync(id, paper, sections, cancel);

    // Null where the order can be planned.
    private async Task<Outcome<PlanJobView>?> RefuseAsync(ShopContext db, LiveJob job, CancellationToken cancel)
    {
        var made = await drafts.MakeAsync(db, job.Order, cancel);
        if (!made.Draft.Ok)
            return new Outcome<PlanJobView>(made.Draft.Kind, null, made.Draft.Faults);
        job.Draft = made;
        foreach (var replaced in job.Order.Replaces)
            if (await withdrawal.RefuseReplacingAsync(db, replaced, job.Order, cancel) is { } fault)
                return Outcome.Faulty<PlanJobView>(fault);
        return null;
    }
}
