using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>
/// The work on single parts, worked out from a piece's joints: what is glued up, cut, bored and eased, with what fences, stops
/// and bits are set to. Like operations are one step over all the parts that they are done to. Sanding belongs to the finish.
/// </summary>
public static class OperationList
{
    private static readonly ImmutableArray<IOperationFamily> Families =
    [
        new PanelFamily(),
        new LayerFamily(),
        new TrimFamily(),
        new BevelFamily(),
        new EdgingFamily(),
        new EdgeBandFamily(),
        new TrenchFamily(),
        new DovetailFamily(),
        new HalfLapFamily(),
        new BridleFamily(),
        new MiterFamily(),
        new GlassRabbetFamily(),
        new MortiseFamily(),
        new TongueFamily(),
        new TenonFamily(),
        new PocketFamily(),
        new DowelFamily(),
        new ScrewFamily(),
        new BoltFamily(),
        new TopFastenerFamily(),
        new PinFamily(),
        new HingeFamily(),
        new SlotFamily(),
        new HoleFamily(),
        new NotchFamily(),
        new SlantFamily(),
        new TaperFamily(),
        new ArcFamily(),
        new CornerFamily(),
        new RoundOverFamily(),
        new EaseFamily(),
    ];

    /// <summary>Returns the operations on a piece's parts in an order that can be followed. Most belong to
    /// <see cref="WorkPhase.Parts"/>; what can only be done to joined parts belongs to <see cref="WorkPhase.Fitting"/>, and comes
    /// after the joining, whose steps are not known here.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="choices">What the builder decides.</param>
    public static ImmutableArray<WorkStep> Of(Piece piece, WorkChoices choices)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(choices);
        var work = new PieceWork(piece, choices);
        return OperationOrder.Of(Families.SelectMany(family => family.Of(work)));
    }

    /// <summary>Returns the operations on parts that belong to no design, so that nothing is known of their joints: cut to size,
    /// ease.</summary>
    /// <param name="parts">The parts.</param>
    public static ImmutableArray<WorkStep> Of(ImmutableArray<PlainPart> parts) => OperationOrder.Of(PlainParts.Of(parts));
}

/// <summary>A part of a project without a design.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Mark">On the wood.</param>
/// <param name="Length">Finished.</param>
/// <param name="Width">Finished.</param>
/// <param name="RoughLength">As cut.</param>
/// <param name="RoughWidth">As cut.</param>
public sealed record PlainPart(string Name, string Mark, Length Length, Length Width, Length RoughLength, Length RoughWidth)
{
    /// <summary>How many of them.</summary>
    public int Quantity { get; init; } = 1;
}
