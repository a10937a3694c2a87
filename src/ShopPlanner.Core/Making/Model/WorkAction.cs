namespace ShopPlanner.Core.Making.Model;

/// <summary>What is done in a step.</summary>
public enum WorkAction
{
    /// <summary>Strips are glued edge to edge into a wide panel, or boards face to face into a thick one.</summary>
    GlueUp,

    /// <summary>What was cut long or wide is cut to its finished size.</summary>
    TrimToSize,

    /// <summary>A tongue or tenon is cut.</summary>
    Tenon,

    /// <summary>A mortise is cut.</summary>
    Mortise,

    /// <summary>A groove along the grain.</summary>
    Groove,

    /// <summary>A dado across the grain.</summary>
    Dado,

    /// <summary>A rabbet along an edge.</summary>
    Rabbet,

    /// <summary>A lap, a bridle or a notch that takes another part.</summary>
    Lap,

    /// <summary>A corner or an edge is cut out: toe space, notch.</summary>
    Notch,

    /// <summary>A taper, a bevel, an arc, a round.</summary>
    Shape,

    /// <summary>Rows of holes for shelf pins.</summary>
    DrillPins,

    /// <summary>Cups or gains for hinges.</summary>
    BoreHinges,

    /// <summary>Pocket holes.</summary>
    PocketHoles,

    /// <summary>Holes for dowels.</summary>
    DowelHoles,

    /// <summary>Clearance and pilot holes for screws and bolts; slots for a top that moves.</summary>
    ScrewHoles,

    /// <summary>Any other hole.</summary>
    Drill,

    /// <summary>Edges are banded or lipped.</summary>
    BandEdges,

    /// <summary>Edges are eased or rounded over.</summary>
    EaseEdges,

    /// <summary>Faces are sanded.</summary>
    Sand,

    /// <summary>Everything is put together without glue, and taken apart again.</summary>
    DryFit,

    /// <summary>Parts are put together: with glue, screws, dowels, or just slid in.</summary>
    Join,

    /// <summary>Squeezed-out glue is taken off.</summary>
    CleanGlue,

    /// <summary>A door is trimmed to its measured opening.</summary>
    FitDoor,

    /// <summary>A door or lid is hung on its hinges.</summary>
    Hang,

    /// <summary>A drawer is fitted on its slides or runners.</summary>
    FitDrawer,

    /// <summary>A top is fastened so that it can move.</summary>
    FastenTop,

    /// <summary>Shelves, pulls, feet and other loose things are put in.</summary>
    PutIn,

    /// <summary>What was fitted is taken off again for the finish.</summary>
    TakeOff,

    /// <summary>Holes and grain are filled.</summary>
    Fill,

    /// <summary>Dust is taken off.</summary>
    Dust,

    /// <summary>Surfaces are masked: glue must hold there.</summary>
    Mask,

    /// <summary>Knots are sealed.</summary>
    SealKnots,

    /// <summary>Conditioner or washcoat against blotches.</summary>
    Condition,

    /// <summary>Stain.</summary>
    Stain,

    /// <summary>Primer or sealer.</summary>
    Prime,

    /// <summary>A coat of the finish.</summary>
    Coat,

    /// <summary>Wax or rubbing out.</summary>
    Rub,

    /// <summary>The finish hardens before use.</summary>
    Cure,

    /// <summary>The piece is fixed to the wall.</summary>
    FixToWall,

    /// <summary>What the design says beside the order of work is read.</summary>
    Read,
}
