using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Making;

/// <summary>Work as it is worked out.</summary>
/// <param name="basis">From what.</param>
/// <param name="unit">Of its lengths.</param>
/// <param name="piece">To draw it; null where there is no design.</param>
/// <param name="plan">Null where there is nothing to work it out from.</param>
internal sealed class PlannedWork(WorkBasis basis, LengthUnit unit, Piece? piece, WorkPlan? plan)
{
    // Asked for at every reading, and the same while the design is.
    private readonly Lazy<ImmutableArray<DoorOpening>> openings = new(() => piece is null ? [] : DoorFitting.Openings(piece));

    /// <summary>From what it was worked out.</summary>
    public WorkBasis Basis => basis;

    /// <summary>Unit of its lengths.</summary>
    public LengthUnit Unit => unit;

    /// <summary>The piece, to draw it; null where there is no design.</summary>
    public Piece? Piece => piece;

    /// <summary>The plan; null where there is nothing to work it out from.</summary>
    public WorkPlan? Plan => plan;

    /// <summary>Names of its parts, by letter.</summary>
    public ImmutableDictionary<string, string> Names { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Openings that doors are fitted to.</summary>
    public ImmutableArray<DoorOpening> Openings => openings.Value;
}
