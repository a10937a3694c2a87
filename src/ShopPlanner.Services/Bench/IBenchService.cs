using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Bench;

/// <summary>One physical board or sheet of a plan at the bench.</summary>
/// <param name="Number">From 1, in the order to cut.</param>
/// <param name="Layout">Index into the plan's layouts.</param>
/// <param name="Copy">Which of that layout's copies, from 1.</param>
/// <param name="Stock">What to take.</param>
/// <param name="Cuts">The layout's cuts with their ticks.</param>
/// <param name="Finished">Whether nothing more is cut from it and its leftovers are in the bin.</param>
/// <param name="Binned">The leftovers put in the bin when it was finished.</param>
public sealed record BenchStock(
    int Number,
    int Layout,
    int Copy,
    PlanStockName Stock,
    ImmutableArray<BenchCut> Cuts,
    bool Finished,
    ImmutableArray<BinnedPiece> Binned
);

/// <summary>A leftover that went into the bin.</summary>
/// <param name="Tag">To write on it.</param>
/// <param name="Length">As measured.</param>
/// <param name="Width">As measured.</param>
public sealed record BinnedPiece(string Tag, Length Length, Length Width);

/// <summary>A cut and whether it is made.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Made">Ticked.</param>
public sealed record BenchCut(Cut Cut, bool Made);

/// <summary>A plan at the bench.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Stocks">Every physical board and sheet.</param>
public sealed record BenchView(PlanView Plan, ImmutableArray<BenchStock> Stocks);

/// <summary>Which layout of a plan a physical board or sheet is cut by.</summary>
/// <param name="Layout">Index into the plan's layouts.</param>
/// <param name="Copy">Which of that layout's copies, from 1.</param>
public sealed record BenchPlace(int Layout, int Copy);

/// <summary>A board or sheet that nothing more is cut from.</summary>
/// <param name="Layout">Index into the plan's layouts.</param>
/// <param name="Copy">Which of that layout's copies, from 1.</param>
/// <param name="AllCutsMade">Whether every cut was made, ticked or not; false where those not ticked stay uncut.</param>
/// <param name="Leftovers">What is left.</param>
public sealed record FinishedStock(int Layout, int Copy, bool AllCutsMade, IReadOnlyList<MeasuredLeftover> Leftovers);

/// <summary>A leftover as measured at the bench, as typed.</summary>
/// <param name="Index">Into the layout's leftovers; −1 for one that was not planned.</param>
/// <param name="Length">As typed.</param>
/// <param name="Width">As typed; empty for a board of full width.</param>
/// <param name="Keep">Whether it goes in the bin; otherwise it is scrap.</param>
public sealed record MeasuredLeftover(int Index, string Length, string Width, bool Keep)
{
    /// <summary>Of one that was not planned: the part of the stock that the cuts made left as it is; null where nobody knows. Its
    /// edges as bought and its bad places go with it.</summary>
    public StockArea? From { get; init; }

    /// <summary>The tag that was proposed for it and may be on the wood already; null for the next free one. Where another piece
    /// has it meanwhile, this one gets the next.</summary>
    public string? Tag { get; init; }

    /// <summary>A bad end, edge, corner or spot found on it, measured on the leftover itself; null for none.</summary>
    public BadPlaceTyped? Bad { get; init; }
}

/// <summary>
/// Keeps what was cut. Every command carries an id made by the device; the same id again changes nothing and gives the same
/// answer, so a form sent twice does no harm.
/// </summary>
public interface IBenchService
{
    /// <summary>A plan at the bench, or null.</summary>
    Task<BenchView?> GetAsync(Guid planId, CancellationToken cancel = default);

    /// <summary>Returns where the board or sheet of a number from 1 stands among the plan's layouts; null where there is
    /// none.</summary>
    Task<BenchPlace?> FindAsync(Guid planId, int number, CancellationToken cancel = default);

    /// <summary>Sets whether a cut is made; never a toggle.</summary>
    Task<Outcome<Done>> SetCutAsync(
        Guid planId,
        int layout,
        int copy,
        int cut,
        bool made,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Notes that a cut is made, or is not, as it was marked at the saw, perhaps hours ago: what is cut stays cut, so
    /// it is kept for a plan that was canceled or replaced meanwhile, which stays canceled. Of one sender's commands about a cut
    /// the latest holds (<see cref="CommandId.Turn"/>); of several senders' the one that came last.</summary>
    /// <param name="planId">The plan.</param>
    /// <param name="number">The board or sheet, from 1.</param>
    /// <param name="cut">The cut's number.</param>
    /// <param name="made">Whether it is made.</param>
    /// <param name="device">Where it was marked.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops it before it is done.</param>
    Task<Outcome<Done>> NoteCutAsync(
        Guid planId,
        int number,
        int cut,
        bool made,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Finishes a board or sheet: its stock leaves the rack or bin (new stock that was not bought yet is entered as
    /// bought at the plan's price), the leftovers kept enter the bin with tags. Cuts that are not made stay so, and their parts
    /// are still to be cut. One transaction.</summary>
    Task<Outcome<BenchView>> FinishAsync(
        Guid planId,
        FinishedStock finished,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Takes a finish back, where none of its leftovers has been used or promised since. What it bought is taken back
    /// with it; a board ticked on the shopping list stays bought.</summary>
    Task<Outcome<BenchView>> ReopenAsync(
        Guid planId,
        int layout,
        int copy,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );
}
