using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Model;

/// <summary>One thing to do between the last cut and the finished piece. Immutable.</summary>
/// <param name="Id">Says what is done to what, never a figure or a count (<c>groove:E:case</c>), so that it stays while sizes
/// change: what a builder has done or written is kept by it.</param>
/// <param name="Phase">Where in the order of work it belongs.</param>
/// <param name="Action">What is done.</param>
/// <param name="Title">A few words: <c>Groove the rails</c>.</param>
/// <param name="Says">What to do, one plain sentence each, in order.</param>
/// <param name="Handles">Marks of the copies that are worked on or put in place by it.</param>
/// <param name="After">Ids of the steps that must be done before it.</param>
/// <param name="Minutes">Time at work, an estimate (common practice); waiting is no part of it.</param>
public sealed record WorkStep(
    string Id,
    WorkPhase Phase,
    WorkAction Action,
    string Title,
    ImmutableArray<string> Says,
    ImmutableArray<string> Handles,
    ImmutableArray<string> After,
    int Minutes
)
{
    /// <summary>Marks of what stands already and takes what is handled: drawn, but not highlighted.</summary>
    public ImmutableArray<string> Present { get; init; } = [];

    /// <summary>Id of the subassembly that it is part of; null for the whole piece, or where there is none.</summary>
    public string? Subassembly { get; init; }

    /// <summary>Machine or tool by its trade name: <c>router table with a 1/4 in straight bit</c>; null for bare hands.</summary>
    public string? Tool { get; init; }

    /// <summary>What fence, stop or bit is set to.</summary>
    public ImmutableArray<WorkFigure> Settings { get; init; } = [];

    /// <summary>Side of the part that is worked: <c>inside face</c>, <c>front edge</c>; null where it does not matter.</summary>
    public string? Face { get; init; }

    /// <summary>Screws, dowels, brads that are driven.</summary>
    public ImmutableArray<WorkItem> Fasteners { get; init; } = [];

    /// <summary>Indexes of the piece's joints that it makes or closes.</summary>
    public ImmutableArray<int> Joints { get; init; } = [];

    /// <summary>How what is handled goes in, one after the other; empty where nothing is put in place.</summary>
    public ImmutableArray<WorkMove> Moves { get; init; } = [];

    /// <summary>What has to pass before the next step that needs it: glue, paint; null where nothing has.</summary>
    public WorkWait? Wait { get; init; }

    /// <summary>What to measure before going on; null where nothing is.</summary>
    public WorkCheck? Check { get; init; }

    /// <summary>Where it can hurt.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>Where the order or the method rests on; null where it follows from the piece alone.</summary>
    public SourceNote? Source { get; init; }
}

/// <summary>Where in the order of work a step belongs.</summary>
public enum WorkPhase
{
    /// <summary>On single parts, before any are joined.</summary>
    Parts,

    /// <summary>Finish that cannot be reached after the parts are joined.</summary>
    FinishBefore,

    /// <summary>Parts are put together.</summary>
    Assembly,

    /// <summary>Doors, drawers, shelves and hardware are fitted.</summary>
    Fitting,

    /// <summary>Finish on what is put together.</summary>
    Finish,

    /// <summary>Where the piece is to stand.</summary>
    InPlace,
}

/// <summary>Copies that go into their place together, in one straight move.</summary>
/// <param name="Marks">The copies.</param>
/// <param name="Along">Direction of the move; null for what the others are put onto, and for what no straight move brings
/// in.</param>
/// <param name="Forward">Whether they move to the right, to the back or up.</param>
public sealed record WorkMove(ImmutableArray<string> Marks, Axis? Along, bool Forward);

/// <summary>A figure that a step works with.</summary>
/// <param name="Name">What it is: <c>Fence to bit</c>.</param>
/// <param name="Value">How long.</param>
public sealed record WorkFigure(string Name, Length Value);

/// <summary>Something that a step uses up.</summary>
/// <param name="Name">As asked for in a store, the same words as in the piece's hardware.</param>
/// <param name="Quantity">How many.</param>
public sealed record WorkItem(string Name, int Quantity);

/// <summary>A wait after a step.</summary>
/// <param name="What">What has to pass: <c>glue in clamps</c>, <c>paint dries</c>.</param>
/// <param name="Minutes">How long at least.</param>
/// <param name="Source">Where that comes from; the label in hand comes before it.</param>
public sealed record WorkWait(string What, int Minutes, SourceNote Source)
{
    /// <summary>How many clamps are held by it.</summary>
    public int Clamps { get; init; }

    /// <summary>How long they are held: never longer than the wait.</summary>
    public int ClampMinutes { get; init; }
}

/// <summary>What is measured at the end of a step.</summary>
/// <param name="What">What to measure: <c>Both diagonals</c>.</param>
/// <param name="Reads">What it should be.</param>
/// <param name="Off">How far off is still good.</param>
/// <param name="Remedy">What to do when it is further off.</param>
/// <param name="Source">Where the allowance comes from.</param>
public sealed record WorkCheck(string What, Working<Length> Reads, Length Off, string Remedy, SourceNote Source);
