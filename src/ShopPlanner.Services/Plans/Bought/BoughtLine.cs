using System.Collections.Immutable;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Bought;

/// <summary>Where a board or sheet is that was bought for a plan.</summary>
public enum BoughtState
{
    /// <summary>In the rack, for this plan.</summary>
    InRack,

    /// <summary>Cut up at the bench.</summary>
    Cut,

    /// <summary>In the rack, promised to another plan.</summary>
    Promised,

    /// <summary>In the rack, but measured again and too small for this plan.</summary>
    TooSmall,

    /// <summary>In the rack, but with a bad place or an untrimmed edge that this plan doesn't know of.</summary>
    Flawed,

    /// <summary>Thrown or given away: paid for, and no longer there.</summary>
    Gone,
}

/// <summary>A piece bought for a plan and still paid for.</summary>
/// <param name="Purchase">What was paid.</param>
/// <param name="Now">The piece as its lines of the ledger make it.</param>
/// <param name="State">Where it is.</param>
internal sealed record BoughtPiece(StoredPurchase Purchase, PieceNow Now, BoughtState State);

/// <summary>New stock of one kind that a plan cuts, and what was bought of it.</summary>
/// <param name="Stock">As planned.</param>
/// <param name="Asked">How many the plan cuts.</param>
/// <param name="Finished">How many of those are cut up.</param>
/// <param name="IsOpen">Whether the plan is still to be cut; what is canceled or all cut needs nothing.</param>
/// <param name="Pieces">What was bought and not taken back, by place.</param>
internal sealed record BoughtLine(CutStock Stock, int Asked, int Finished, bool IsOpen, ImmutableArray<BoughtPiece> Pieces)
{
    /// <summary>How many pieces the bench still needs.</summary>
    public int Needed => IsOpen ? Math.Max(0, Asked - Finished) : 0;

    /// <summary>Pieces that the bench can take.</summary>
    public IEnumerable<BoughtPiece> Ready => Pieces.Where(piece => piece.State == BoughtState.InRack);

    /// <summary>How many are still to be bought.</summary>
    public int Left => Math.Max(0, Needed - Ready.Count());

    /// <summary>The first place that no piece has.</summary>
    public int FreePlace
    {
        get
        {
            var taken = Pieces.Select(piece => piece.Purchase.Place).ToHashSet();
            return Enumerable.Range(1, taken.Count + 1).First(place => !taken.Contains(place));
        }
    }
}
