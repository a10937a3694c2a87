using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Plans;

/// <summary>What to plan.</summary>
/// <param name="Projects">One or more.</param>
/// <param name="Parts">Ids of the rows wanted; null for all rows of those projects.</param>
/// <param name="Stores">Stores to buy from; may be empty when the rack and the bin are to do.</param>
/// <param name="UseRack">Whether boards and sheets in the rack may be cut.</param>
/// <param name="UseBin">Whether offcuts may be cut.</param>
/// <param name="Seconds">How long to keep searching; more than zero.</param>
/// <param name="Replaces">Plans that the new one takes the place of: their promises pass over in the same transaction. What
/// they have
/// cut stays cut. Each may hold no other project that is still worked on.</param>
public sealed record PlanOrder(
    ImmutableArray<Guid> Projects,
    ImmutableArray<Guid>? Parts,
    ImmutableArray<Guid> Stores,
    bool UseRack,
    bool UseBin,
    int Seconds,
    ImmutableArray<Guid> Replaces
)
{
    /// <summary>True to plan pieces that are cut already once more; otherwise they are left out.</summary>
    public bool CutAgain { get; init; }

    /// <summary>Projects that are cut first: their parts come from rack and bin as far as those go, and only what has no room
    /// there is bought.</summary>
    public ImmutableArray<Guid> FromHand { get; init; } = [];

    /// <summary>Rows of the parts lists that are wanted only if they come free, with what one piece is worth in the shop's
    /// currency: so much of an offcut to keep may be given up for it. Nothing is bought for them.</summary>
    public ImmutableSortedDictionary<Guid, decimal> Spares { get; init; } = ImmutableSortedDictionary<Guid, decimal>.Empty;

    /// <summary>Whether the trips to the stores count as a cost, so that a second store has to be worth the drive.</summary>
    public bool CountTrips { get; init; }

    /// <summary>Whether everything is bought at one of the stores.</summary>
    public bool OneStore { get; init; }
}

/// <summary>What an order comes to before it is planned.</summary>
/// <param name="Request">The request that would be planned.</param>
/// <param name="LeftOut">Rows that cannot be planned yet: field is project code and mark.</param>
public sealed record PlanPreview(CutRequest Request, ImmutableArray<Fault> LeftOut)
{
    /// <summary>Pieces of the rows wanted that are cut already, and left out unless the order says otherwise.</summary>
    public int CutAlready { get; init; }
}

/// <summary>A planning run.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="State">Where it stands.</param>
/// <param name="Material">What is searched now.</param>
/// <param name="Cost">Best so far; null before there is one.</param>
/// <param name="Bound">No plan costs less.</param>
/// <param name="Elapsed">Time spent.</param>
/// <param name="Seconds">Time allowed.</param>
/// <param name="PlanId">The plan, once stored.</param>
/// <param name="Faults">Why it has no plan, and whether its end could not be saved yet.</param>
public sealed record PlanJobView(
    Guid Id,
    PlanJobState State,
    string Material,
    Money? Cost,
    Money Bound,
    TimeSpan Elapsed,
    int Seconds,
    Guid? PlanId,
    ImmutableArray<Fault> Faults
);

/// <summary>A plan in a list.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="Name">Its projects' names.</param>
/// <param name="MadeUtc">When.</param>
/// <param name="State">Where it stands.</param>
/// <param name="Status">How good it is known to be.</param>
/// <param name="Cost">Of all stock cut.</param>
/// <param name="Stocks">Boards and sheets to cut.</param>
/// <param name="Projects">Its projects.</param>
public sealed record PlanSummary(
    Guid Id,
    string Name,
    DateTime MadeUtc,
    PlanState State,
    PlanStatus Status,
    Money Cost,
    int Stocks,
    ImmutableArray<Guid> Projects
)
{
    /// <summary>A few characters that tell this plan from all others, on screen and paper.</summary>
    public string ShortId => Id.ToString("N")[^8..];

    /// <summary>How far the cutting is.</summary>
    public CutProgress Progress { get; init; } = CutProgress.None;
}

/// <summary>A plan with something left to cut, as it meets a new order.</summary>
/// <param name="Summary">The plan.</param>
/// <param name="Rows">Ids of the rows of the parts lists that it holds; empty where that is not known.</param>
/// <param name="Refusal">Why another plan cannot take its place now; null where one can.</param>
public sealed record OpenPlanView(PlanSummary Summary, ImmutableArray<Guid> Rows, Fault? Refusal);

/// <summary>What a stock id of a plan's request stands for.</summary>
/// <param name="StockId">In the request.</param>
/// <param name="Name">E.g. <c>Pine 1×3, 8 ft</c>.</param>
/// <param name="Tag">The bin's or rack's tag; null for new stock.</param>
/// <param name="Store">The store's name; null for the rack and the bin.</param>
/// <param name="Tint">CSS colour for drawings.</param>
public sealed record PlanStockName(string StockId, string Name, string? Tag, string? Store, string Tint)
{
    /// <summary>What is noted about a piece of rack or bin: <c>knot near one end</c>; may be empty.</summary>
    public string Note { get; init; } = "";
}

/// <summary>What a part id of a plan's request stands for.</summary>
/// <param name="PartId">In the request.</param>
/// <param name="Mark">As shown: the mark alone for one project, with its project's code for several.</param>
/// <param name="Name">The part's name.</param>
/// <param name="ProjectId">Its project.</param>
/// <param name="Project">Its project's name.</param>
public sealed record PlanPartName(string PartId, string Mark, string Name, Guid ProjectId, string Project);

/// <summary>A stored plan: a snapshot that never changes, and what stands beside it today.</summary>
/// <param name="Summary">Its line in a list.</param>
/// <param name="Order">What was asked for.</param>
/// <param name="Request">What was planned.</param>
/// <param name="Plan">The answer.</param>
/// <param name="Stocks">Names of the stock.</param>
/// <param name="Parts">Names of the parts.</param>
/// <param name="Changes">What changed since, in plain words; empty when up to date.</param>
/// <param name="RequestHash">Of the request, hexadecimal.</param>
public sealed record PlanView(
    PlanSummary Summary,
    PlanOrder Order,
    CutRequest Request,
    CutPlan Plan,
    ImmutableDictionary<string, PlanStockName> Stocks,
    ImmutableDictionary<string, PlanPartName> Parts,
    ImmutableArray<string> Changes,
    string RequestHash
)
{
    /// <summary>A few characters that tell this plan from all others, on screen and paper.</summary>
    public string ShortId => Summary.ShortId;

    /// <summary>Whether anything that it rests on changed.</summary>
    public bool OutOfDate => !Changes.IsEmpty;

    /// <summary>Pieces that were cut before the plan was made, by part id: marks are numbered on from them.</summary>
    public ImmutableDictionary<string, int> CutBefore { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Whether another version of the planner made it than the one that plans now: planned again, it may come out
    /// cheaper.</summary>
    public bool ByOlderPlanner { get; init; }

    /// <summary>The shop's saws; null where only the request tells of them.</summary>
    public ShopSaws? KnownSaws { get; init; }

    /// <summary>The saws that its cuts are made with; the fence opens as wide as it was planned for.</summary>
    public ShopSaws Saws => (KnownSaws ?? ShopSaws.Of(Request.Saw)) with { WidestRip = Request.Saw.WidestRip };

    /// <summary>Ids of parts that were wanted only if they come free; those that the request does not have found no
    /// room.</summary>
    public ImmutableHashSet<string> SpareParts { get; init; } = [];

    /// <summary>Names of the materials, by the request's ids.</summary>
    public ImmutableDictionary<string, string> Materials { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Units of the projects, by project id; the request's unit where one is missing.</summary>
    public ImmutableDictionary<Guid, LengthUnit> Units { get; init; } = ImmutableDictionary<Guid, LengthUnit>.Empty;
}

/// <summary>Plans cuts in the background and keeps the plans. One offcut or rack board is promised to one plan only.</summary>
public interface IPlanService
{
    /// <summary>Raised, on any thread, when a planning run moves on; the argument is its id.</summary>
    event Action<Guid>? JobChanged;

    /// <summary>What an order comes to; faulty when there is nothing to plan.</summary>
    Task<Outcome<PlanPreview>> PreviewAsync(PlanOrder order, CancellationToken cancel = default);

    /// <summary>Queues a planning run; it goes on when the page is closed. The same command again answers with the same run, also
    /// when it has ended or the program restarted.</summary>
    Task<Outcome<PlanJobView>> StartAsync(PlanOrder order, CommandId command, CancellationToken cancel = default);

    /// <summary>Where a run stands, or null.</summary>
    PlanJobView? FindJob(Guid jobId);

    /// <summary>Stops a run; the best plan so far is stored.</summary>
    void StopJob(Guid jobId);

    /// <summary>All plans, newest first; withdrawn ones only when asked.</summary>
    Task<IReadOnlyList<PlanSummary>> ListAsync(bool withWithdrawn = false, CancellationToken cancel = default);

    /// <summary>A project's plans, newest first, without those that were withdrawn.</summary>
    Task<IReadOnlyList<PlanSummary>> ListOfAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>The plans that something is left to cut of, newest first.</summary>
    Task<IReadOnlyList<OpenPlanView>> ListOpenAsync(CancellationToken cancel = default);

    /// <summary>One plan, or null.</summary>
    /// <exception cref="Storage.Documents.StoredDocumentException">A newer program stored it, or it is damaged; it stays as it
    /// is.</exception>
    Task<PlanView?> GetAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Gives a plan up and releases its promises; refused once cutting has begun.</summary>
    Task<Outcome<PlanSummary>> WithdrawAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Takes a withdrawal back, where everything it promised is still free.</summary>
    Task<Outcome<PlanSummary>> ReinstateAsync(Guid id, CancellationToken cancel = default);

    /// <summary>The request, or the plan, as a document of the open format; null when the plan is gone.</summary>
    Task<string?> ExportAsync(Guid id, bool plan, CancellationToken cancel = default);

    /// <summary>The plan's packet as PDF; null when the plan is gone.</summary>
    /// <param name="id">The plan.</param>
    /// <param name="paper">Size of the pages.</param>
    /// <param name="sections">What is printed; null for what the shop chose, or else the usual sections.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<byte[]?> PacketAsync(
        Guid id,
        Common.PaperSize paper,
        ImmutableArray<PacketSection>? sections = null,
        CancellationToken cancel = default
    );
}
