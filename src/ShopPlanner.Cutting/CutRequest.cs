using System.Collections.Immutable;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>What parts are wanted and what stock can be had. Immutable; whoever makes one or reads one from a document asks
/// <see cref="Check"/> whether it keeps to the rules noted on its members.</summary>
/// <param name="Unit">The unit the request was written in; plans are written in the same.</param>
/// <param name="Saw">What the saw takes away.</param>
/// <param name="Keep">The least leftover worth keeping.</param>
/// <param name="Materials">At least one; ids differ.</param>
/// <param name="Stock">Ids differ; each names a material of this request.</param>
/// <param name="Parts">Ids differ; each names a material of this request.</param>
/// <param name="Limits">How long to look.</param>
public sealed record CutRequest(
    LengthUnit Unit,
    SawSettings Saw,
    KeepRule Keep,
    ImmutableArray<CutMaterial> Materials,
    ImmutableArray<CutStock> Stock,
    ImmutableArray<CutPart> Parts,
    CutLimits Limits
)
{
    /// <summary>What the store cuts before the wood goes home; null for nothing.</summary>
    public StoreCuts? Store { get; init; }

    /// <summary>What can be carried home; null for anything.</summary>
    public CarryLimit? Carry { get; init; }

    /// <summary>Returns every breach of a rule: the member's path as in the document format, its value and what would be right.
    /// The first hundred are listed and the rest counted in one more; empty where the request can be planned.</summary>
    public ImmutableArray<Fault> Check()
    {
        var faults = new FaultList();
        CutRequestRules.Check(CutRequestDraft.Of(this), faults.AddOnce);
        return faults.ToImmutable();
    }
}

/// <summary>First cuts that the store makes on its own saw.</summary>
/// <param name="Most">Straight cuts across the whole of one sheet or board, all parallel, one or more.</param>
/// <param name="Tolerance">How far such a cut may be off, zero or more: so much is left on both sides of it, to be trimmed at
/// home.</param>
public sealed record StoreCuts(int Most, Length Tolerance);

/// <summary>The largest piece that can be carried home, either way round.</summary>
/// <param name="Longest">Its longer side, more than zero.</param>
/// <param name="Widest">Its shorter side, more than zero; boards are not held to it.</param>
public sealed record CarryLimit(Length Longest, Length Widest);

/// <summary>What the saw takes away.</summary>
/// <param name="Kerf">Width that every cut turns to sawdust, zero or more. The last cut may run off the end.</param>
/// <param name="BoardEndTrim">Taken off one end of a new board to square it, that cut's kerf included.</param>
/// <param name="SheetEdgeTrim">Unusable margin along all four edges of a new sheet.</param>
public sealed record SawSettings(Length Kerf, Length BoardEndTrim, Length SheetEdgeTrim)
{
    /// <summary>The usual saw. Common practice: a full-kerf table-saw blade cuts 1/8 in; half an inch squares a board's end;
    /// a quarter
    /// takes a sheet's bruised edge.</summary>
    public static readonly SawSettings Usual = new(Length.FromInches(0.125m), Length.FromInches(0.5m), Length.FromInches(0.25m));

    /// <summary>The widest strip that fits between blade and fence, on one side of a rip or the other; null for no
    /// limit.</summary>
    public Length? WidestRip { get; init; }

    /// <summary>The longest crosscut, measured along the blade's way; null for no limit.</summary>
    public Length? LongestCrosscut { get; init; }
}

/// <summary>How a material comes.</summary>
public enum StockForm
{
    /// <summary>A fixed section, cut to length, and ripped where a part is narrower.</summary>
    Board,

    /// <summary>Cut both ways.</summary>
    Sheet,
}

/// <summary>A material.</summary>
/// <param name="Id">Its name in this request.</param>
/// <param name="Form">Board or sheet.</param>
/// <param name="Thickness">For the reader's information.</param>
/// <param name="Width">A board's full width, more than zero; null for a sheet.</param>
public sealed record CutMaterial(string Id, StockForm Form, Length? Thickness, Length? Width);

/// <summary>One size of stock.</summary>
/// <param name="Id">Its name in this request.</param>
/// <param name="Material">The material's id.</param>
/// <param name="Length">Along the grain, more than zero.</param>
/// <param name="Width">Across the grain, more than zero; for a board the material's width (an offcut that was ripped may be
/// narrower).</param>
/// <param name="Price">What one costs; an offcut's is its keeping value, usually zero.</param>
/// <param name="Quantity">How many there are; null for as many as wanted.</param>
/// <param name="Offcut">True for what is in the rack or the bin already: no trims are taken from it, unless
/// <see cref="Untrimmed"/> says so.</param>
public sealed record CutStock(string Id, string Material, Length Length, Length Width, Money Price, int? Quantity, bool Offcut)
{
    /// <summary>Whether its seller makes no first cuts, whatever <see cref="CutRequest.Store"/> says of others.</summary>
    public bool SoldUncut { get; init; }

    /// <summary>The edges that are still to be trimmed; null for what is usual: one end of a new board, all round a new sheet, no
    /// edge of an offcut. A board has ends only.</summary>
    public StockEdges? Untrimmed { get; init; }

    /// <summary>Where nothing may be cut from; none beyond the stock. Only a stock of one piece has any, at most
    /// <see cref="MostBadPlaces"/>. The store makes no first cuts in it.</summary>
    public BadPlaces BadPlaces { get; init; } = BadPlaces.None;

    /// <summary>The most bad places of one board or sheet.</summary>
    public const int MostBadPlaces = 20;

    /// <summary>Returns the edges that the trim comes off.</summary>
    /// <param name="form">Of the material.</param>
    public StockEdges EdgesToTrim(StockForm form) => Untrimmed ?? (Offcut ? StockEdges.None : EdgesAsBought(form));

    /// <summary>Returns the edges that the trim comes off a new board or sheet.</summary>
    public static StockEdges EdgesAsBought(StockForm form) => form == StockForm.Board ? StockEdges.Near : StockEdges.All;
}

/// <summary>Which way a part may lie.</summary>
public enum Grain
{
    /// <summary>The part's length runs along the stock's length.</summary>
    Length,

    /// <summary>The part may be turned (sheets only).</summary>
    Any,
}

/// <summary>One kind of part.</summary>
/// <param name="Id">Its mark in this request.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Material">The material's id.</param>
/// <param name="Length">Along the part's grain, more than zero.</param>
/// <param name="Width">Across the part's grain, more than zero; for a board part of full width the material's width.</param>
/// <param name="Grain">Which way it may lie; board parts are never turned.</param>
/// <param name="Quantity">Pieces wanted, one or more.</param>
public sealed record CutPart(string Id, string Name, string Material, Length Length, Length Width, Grain Grain, int Quantity)
{
    /// <summary>Its length once trimmed, at most <see cref="Length"/>, which is what is cut; null where it is cut to
    /// size.</summary>
    public Length? FinishedLength { get; init; }

    /// <summary>Its width once trimmed, at most <see cref="Width"/>; null where it is cut to size.</summary>
    public Length? FinishedWidth { get; init; }

    /// <summary>Id of the part for which this one is a practice piece; null for a part proper.</summary>
    public string? PracticeFor { get; init; }
}

/// <summary>How long to keep searching after the first plan.</summary>
/// <param name="Seconds">More than zero.</param>
public sealed record CutLimits(double Seconds);
