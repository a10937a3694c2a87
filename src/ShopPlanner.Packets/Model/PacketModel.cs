using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Packets.Model;

/// <summary>Everything that a packet prints; filled by the services, free of any other part of the program.</summary>
/// <param name="Projects">Names of the pieces of furniture, one or more.</param>
/// <param name="Date">Printed on every page; also the file's own date.</param>
/// <param name="Paper">Size of the pages.</param>
/// <param name="Unit">Of every length that names no other.</param>
/// <param name="Currency">The sign before an amount, <c>$</c>; may be empty.</param>
/// <param name="Plan">Which plan this is; null where there is none yet.</param>
/// <param name="Stores">What to buy and where.</param>
/// <param name="OnHand">What to take from the rack and the bin.</param>
/// <param name="Layouts">Every board and sheet that is cut.</param>
/// <param name="Parts">The cut list.</param>
/// <param name="Unplaced">Parts the plan has no stock for, each with its reason in a plain phrase.</param>
public sealed record PacketModel(
    ImmutableArray<string> Projects,
    DateOnly Date,
    PaperSize Paper,
    LengthUnit Unit,
    string Currency,
    PacketPlan? Plan,
    ImmutableArray<PacketStore> Stores,
    ImmutableArray<PacketOnHand> OnHand,
    ImmutableArray<PacketLayout> Layouts,
    ImmutableArray<PacketPart> Parts,
    ImmutableArray<PacketUnplaced> Unplaced
)
{
    /// <summary>How far a store's cut may be off; null where no store cuts.</summary>
    public Length? StoreTolerance { get; init; }

    /// <summary>Like cuts at one setting, for each material.</summary>
    public ImmutableArray<PacketSettings> Settings { get; init; } = [];

    /// <summary>Whether some lengths stand in another unit than the packet's, named beside each.</summary>
    public bool IsMixed =>
        Layouts.Any(layout => layout.Picture.Unit != Unit) || Parts.Any(part => part.Unit is { } unit && unit != Unit);

    /// <summary>Pieces that were designed here: their drawings, parts and joints come before the cut list.</summary>
    public ImmutableArray<PacketPiece> Pieces { get; init; } = [];

    /// <summary>How each project's piece is built and finished.</summary>
    public ImmutableArray<PacketWork> Work { get; init; } = [];

    /// <summary>What is printed.</summary>
    public ImmutableArray<PacketSection> Sections { get; init; } = PacketSections.Usual(Projects.Length);

    /// <summary>What each piece takes.</summary>
    public ImmutableArray<PacketTakes> Takes { get; init; } = [];

    /// <summary>What to buy besides boards and sheets.</summary>
    public ImmutableArray<PacketSupply> Supplies { get; init; } = [];
}

/// <summary>Cuts of all boards and sheets of a material, by setting.</summary>
/// <param name="Material">Its name.</param>
/// <param name="Runs">In the order to make them.</param>
public sealed record PacketSettings(string Material, ImmutableArray<PacketRun> Runs);

/// <summary>Cuts made one after another at one setting.</summary>
/// <param name="Way">What they have in common: <c>Rip, table saw</c>.</param>
/// <param name="Setting">Of the fence or the stop.</param>
/// <param name="Cuts">Which: <c>sheet 1: 2, 3; sheet 4: 1</c>.</param>
/// <param name="Shared">Whether it is more than one cut.</param>
public sealed record PacketRun(string Way, Length Setting, string Cuts, bool Shared)
{
    /// <summary>Of the setting; null for the packet's.</summary>
    public LengthUnit? Unit { get; init; }

    /// <summary>Whether the setting measures what is taken off a part.</summary>
    public bool TakesOff { get; init; }

    /// <summary>How to set a figure between two marks of a rule; empty for one on a mark.</summary>
    public string Shimmed { get; init; } = "";

    /// <summary>Whether an end or an edge loses no more than the blade's own width.</summary>
    public bool IsKerfOnly { get; init; }
}

/// <summary>Which plan was printed, so that a print can be told from a later one.</summary>
/// <param name="Version">Counted by the project: 3.</param>
/// <param name="Id">A few characters that the screen shows too: <c>8f3a12bc</c>.</param>
/// <param name="OutOfDate">What has changed since, in a plain sentence; null while the plan is up to date.</param>
public sealed record PacketPlan(int Version, string Id, string? OutOfDate);

/// <summary>A store's part of the shopping list.</summary>
/// <param name="Name">The store.</param>
/// <param name="PricesSeen">The day of the oldest price used; null where it is not known.</param>
/// <param name="Purchases">What to buy there.</param>
public sealed record PacketStore(string Name, DateOnly? PricesSeen, ImmutableArray<PacketPurchase> Purchases)
{
    /// <summary>What the list costs, as far as prices are known.</summary>
    public Money Total => Purchases.Aggregate(Money.Zero, (sum, p) => p.Cost is { } cost ? sum + cost : sum);
}

/// <summary>One line of a shopping list.</summary>
/// <param name="Item">What: <c>Pine 1x3</c>.</param>
/// <param name="Size">As sold: <c>8 ft</c>, <c>4 × 8 ft</c>.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Price">Of one; null where it is not known.</param>
public sealed record PacketPurchase(string Item, string Size, int Quantity, Money? Price)
{
    /// <summary>Whether it is a board; false for a sheet.</summary>
    public bool IsBoard { get; init; }

    /// <summary>How many of them are bought already.</summary>
    public int Bought { get; init; }

    /// <summary>Of all of them.</summary>
    public Money? Cost => Price is { } price ? price * Quantity : null;
}

/// <summary>A piece of the rack or the bin that the plan uses.</summary>
/// <param name="Tag">What it is marked with.</param>
/// <param name="Material">What it is.</param>
/// <param name="Size">As it lies there: <c>41 3/8 in</c>, <c>340 × 330 mm</c>.</param>
public sealed record PacketOnHand(string Tag, string Material, string Size)
{
    /// <summary>What is noted about it; may be empty.</summary>
    public string Note { get; init; } = "";
}

/// <summary>How one board or sheet is cut.</summary>
/// <param name="Picture">What is drawn.</param>
/// <param name="IsBoard">True for a board, false for a sheet.</param>
/// <param name="Copies">How many are cut alike, one or more.</param>
/// <param name="Cuts">In order.</param>
public sealed record PacketLayout(LayoutPicture Picture, bool IsBoard, int Copies, ImmutableArray<PacketCut> Cuts)
{
    /// <summary>Where it is bought; null for what is on hand.</summary>
    public string? Store { get; init; }
}

/// <summary>Which way a cut runs.</summary>
public enum CutWay
{
    /// <summary>Across the stock's length.</summary>
    Crosscut,

    /// <summary>Along the stock's length.</summary>
    Rip,
}

/// <summary>One cut to tick off.</summary>
/// <param name="N">Its number, as on the drawing.</param>
/// <param name="Piece">The piece in hand: <c>sheet</c>, <c>2b</c>.</param>
/// <param name="Way">Crosscut or rip.</param>
/// <param name="Setting">Of the fence or the stop; where an edge is trimmed along the fence, the width of what remains.</param>
/// <param name="Doing">What to do, with the tool: <c>Rip piece 2b on the table saw</c>.</param>
/// <param name="Gives">What comes off: <c>C1 Rail, keep 3b</c>.</param>
/// <param name="ByStore">Whether the store makes it.</param>
public sealed record PacketCut(int N, string Piece, CutWay Way, Length Setting, string Doing, string Gives, bool ByStore)
{
    /// <summary>Whether an end or an edge loses no more than the blade's own width.</summary>
    public bool IsKerfOnly { get; init; }

    /// <summary>Whether the setting measures what is taken off a part.</summary>
    public bool TakesOff { get; init; }

    /// <summary>How to set a figure between two marks of a rule; empty for one on a mark.</summary>
    public string Shimmed { get; init; } = "";

    /// <summary>What to look out for; empty for nothing beyond the usual care.</summary>
    public string Caution { get; init; } = "";

    /// <summary>What it has in common with the cuts before and after it: <c>Crosscut, miter saw</c>. Where that is the same as of
    /// the cut before, the packet names the piece alone; empty to say all of every cut.</summary>
    public string Alike { get; init; } = "";

    /// <summary>What a store's cut gives, by size: <c>1a 48 ⅛″ × 48″, 1b 47 ¾″ × 48″</c>; empty for a cut at home.</summary>
    public string Sizes { get; init; } = "";
}

/// <summary>One kind of part of the cut list.</summary>
/// <param name="Marks">Of each copy.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Length">Along the grain, as cut.</param>
/// <param name="Width">Across it, as cut.</param>
/// <param name="Thickness">Null where it is not known.</param>
/// <param name="Ripped">Whether a saw makes its long edges, false where the board's own are kept.</param>
public sealed record PacketPart(
    ImmutableArray<string> Marks,
    string Name,
    string Material,
    Length Length,
    Length Width,
    Length? Thickness,
    bool Ripped
)
{
    /// <summary>Of its sizes; null for the packet's.</summary>
    public LengthUnit? Unit { get; init; }

    /// <summary>E.g. <c>cut 35″ long, trim to 34 ½″ later</c>; null where it is cut to size.</summary>
    public string? Trim { get; init; }

    /// <summary>Finished, along the grain; null where it is cut to size.</summary>
    public Length? FinishedLength { get; init; }

    /// <summary>Finished, across the grain; null where it is cut to size.</summary>
    public Length? FinishedWidth { get; init; }

    /// <summary>True for practice pieces, which are no part of the furniture.</summary>
    public bool IsPractice { get; init; }
}

/// <summary>Parts that could not be placed.</summary>
/// <param name="Marks">Of each copy.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Reason">Why, in a plain phrase.</param>
public sealed record PacketUnplaced(ImmutableArray<string> Marks, string Name, string Reason);
