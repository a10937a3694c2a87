using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>A cut that went wrong, as typed.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Number">The board or sheet, from 1.</param>
/// <param name="Cut">The cut's number. It is made, whether it was marked as done or not.</param>
/// <param name="Reason">Why.</param>
/// <param name="Pieces">The pieces that are of no use as their part; may be empty where only a rest has another size.</param>
/// <param name="Rests">What the cut gave that is to be cut further, as measured; those left out have the planned size.</param>
public sealed record WrongCut(
    Guid Plan,
    int Number,
    int Cut,
    WrongReason Reason,
    IReadOnlyList<WrongPiece> Pieces,
    IReadOnlyList<MeasuredRest> Rests
);

/// <summary>A piece of no use as its part.</summary>
/// <param name="Piece">Index into the layout's pieces.</param>
/// <param name="Length">What is left of it along the board or sheet, as typed.</param>
/// <param name="Width">What is left of it across, as typed; empty for a board's full width.</param>
/// <param name="Keep">Whether what is left is kept; otherwise it is scrap.</param>
public sealed record WrongPiece(int Piece, string Length, string Width, bool Keep);

/// <summary>What a cut gave that is to be cut further, as measured.</summary>
/// <param name="From">Where it lies, as planned.</param>
/// <param name="Length">As typed.</param>
/// <param name="Width">As typed.</param>
public sealed record MeasuredRest(StockArea From, string Length, string Width);

/// <summary>A piece that a board or sheet has given.</summary>
/// <param name="Piece">Index into the layout's pieces.</param>
/// <param name="Mark">Its mark.</param>
/// <param name="Name">The part's name.</param>
/// <param name="Area">Where it lay.</param>
/// <param name="IsOfCut">Whether the cut that is asked about gave it.</param>
public sealed record GivenPiece(int Piece, string Mark, string Name, StockArea Area, bool IsOfCut);

/// <summary>What can be said about a cut that went wrong.</summary>
/// <param name="View">The plan at the bench.</param>
/// <param name="Stock">The board or sheet.</param>
/// <param name="Cut">The cut.</param>
/// <param name="Given">The pieces that it and the cuts made so far gave, those of the cut first.</param>
/// <param name="Rests">What the cut gave that is to be cut further.</param>
public sealed record WrongCutStart(
    BenchView View,
    BenchStock Stock,
    Cut Cut,
    ImmutableArray<GivenPiece> Given,
    ImmutableArray<StockArea> Rests
);

/// <summary>A board or sheet that is stopped where it is, and what of it goes into the bin.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Pieces">The pieces with their tags.</param>
public sealed record StoppedStock(int Number, ImmutableArray<BinnedPiece> Pieces);

/// <summary>What is left of a piece that was cut wrong.</summary>
/// <param name="Mark">The piece's mark.</param>
/// <param name="Name">The part's name.</param>
/// <param name="Left">What is left, with its tag; null where it is scrap.</param>
/// <param name="CouldBe">Parts still needed that it is large enough for: <c>D1 Rail</c>.</param>
public sealed record WrongLeft(string Mark, string Name, BinnedPiece? Left, ImmutableArray<string> CouldBe);

/// <summary>The rest of a plan, planned again, before anybody agreed to it. Nothing is changed by it.</summary>
/// <param name="Key">Names exactly this proposal, to accept it.</param>
/// <param name="Plan">The new plan, not stored.</param>
/// <param name="AsBefore">By layout: whether a board or sheet not begun was to be cut just so before.</param>
/// <param name="Stopped">Boards and sheets that are stopped where they are.</param>
/// <param name="Left">What is left of the wrong pieces.</param>
/// <param name="ToBuy">What is still to be bought by it.</param>
/// <param name="Extra">What the project costs more by it; less than zero where it saves something.</param>
public sealed record RestProposal(
    string Key,
    PlanView Plan,
    ImmutableArray<bool> AsBefore,
    ImmutableArray<StoppedStock> Stopped,
    ImmutableArray<WrongLeft> Left,
    Money ToBuy,
    Money Extra
);

/// <summary>A wrong cut that was written down.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="Plan">The plan it happened in.</param>
/// <param name="Name">The plan's name.</param>
/// <param name="Unit">Of the plan.</param>
/// <param name="Number">The board or sheet.</param>
/// <param name="Cut">The cut's number.</param>
/// <param name="Reason">Why.</param>
/// <param name="Marks">The pieces that are needed again.</param>
/// <param name="Stopped">Boards and sheets that were stopped for it.</param>
/// <param name="Left">What was left of the pieces, in the bin, where no board was stopped for it.</param>
/// <param name="RestPlan">The plan of the rest; null where nothing was planned again.</param>
/// <param name="Standing">False once it is taken back.</param>
/// <param name="WhenUtc">When it was written down.</param>
public sealed record WrongCutView(
    Guid Id,
    Guid Plan,
    string Name,
    LengthUnit Unit,
    int Number,
    int Cut,
    WrongReason Reason,
    ImmutableArray<string> Marks,
    ImmutableArray<StoppedStock> Stopped,
    ImmutableArray<BinnedPiece> Left,
    Guid? RestPlan,
    bool Standing,
    DateTime WhenUtc
);

/// <summary>Deals with cuts that go wrong: what was cut stays a fact, the piece is needed again, and what is left is planned
/// again from what is there. Commands with one id are done once.</summary>
public interface IWrongCutService
{
    /// <summary>Returns what can be said about a cut; null where there is no such plan, board or cut.</summary>
    Task<WrongCutStart?> OfCutAsync(Guid plan, int number, int cut, CancellationToken cancel = default);

    /// <summary>Plans the rest again within about a second and changes nothing: from what is left of the boards in hand, the
    /// rack, the bin, then the store.</summary>
    Task<Outcome<RestProposal>> ProposeAsync(WrongCut wrong, CancellationToken cancel = default);

    /// <summary>Writes the wrong cut down and puts a proposal in the place of the plan; refused where the shop changed since it
    /// was made. One transaction.</summary>
    /// <param name="wrong">As it was proposed for.</param>
    /// <param name="proposal">See <see cref="RestProposal.Key"/>.</param>
    /// <param name="device">The device that says so.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops it before it is saved.</param>
    Task<Outcome<WrongCutView>> AcceptAsync(
        WrongCut wrong,
        string proposal,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Writes the wrong cut down and goes on cutting: its pieces are needed again and can be planned later.</summary>
    Task<Outcome<WrongCutView>> NoteAsync(WrongCut wrong, string device, CommandId command, CancellationToken cancel = default);

    /// <summary>Takes a wrong cut back with all that was done for it: the plan of the rest, the boards stopped, the pieces put in
    /// the bin. Refused where any of that was used since.</summary>
    Task<Outcome<WrongCutView>> UndoAsync(Guid id, string device, CommandId command, CancellationToken cancel = default);

    /// <summary>Returns a wrong cut that was written down, or null.</summary>
    Task<WrongCutView?> FindAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Returns the wrong cuts of a plan that stand, the latest first; those that led to it are among them.</summary>
    Task<IReadOnlyList<WrongCutView>> ListAsync(Guid plan, CancellationToken cancel = default);
}
