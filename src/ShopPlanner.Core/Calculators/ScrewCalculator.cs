using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Screws that join two pieces.</summary>
internal static class ScrewCalculator
{
    private static readonly Length LeastBeyond = Length.FromInches(0.125m);

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Length("thickness", "Thickness of the near piece", most: "6 in"),
        Key.Length("into", "Wood in the far piece, along the screw", most: "24 in"),
        Key.Choice(
            "joint",
            "Joint",
            "face",
            new("pocket", "pocket screw"),
            new("face", "face to face"),
            new("edge", "into an edge or end")
        ),
        Key.Choice(
            "wood",
            "Far piece",
            "softwood",
            new("softwood", "softwood or plywood"),
            new("hardwood", "hardwood"),
            new("mdf", "MDF or particleboard")
        ),
        Key.Length("width", "Width of the joint", "2 1/2 in", most: "8 ft"),
    ];

    private static readonly ImmutableArray<Remark<ScrewMade>> Verdicts =
    [
        new(
            Watch,
            made => made.Asked.Joint == ScrewJoint.Edge,
            "End grain holds screws poorly and plywood edges split. Drill a pilot, and add glue, a dowel or a cleat if it "
                + "carries a load."
        ),
        new(
            Tip,
            made => made.Asked.Joint == ScrewJoint.Pocket,
            made =>
                made.Asked.Wood == PilotWood.Hardwood
                    ? "Fine thread for hardwood."
                    : "Coarse thread for softwood, plywood and MDF."
        ),
        new(
            Watch,
            made => made.Asked.Joint == ScrewJoint.Pocket,
            "The screw pulls the joint tight, the glue holds it: glue it where it carries a load (common practice)."
        ),
        new(
            Watch,
            made => made.Asked is { Wood: PilotWood.Mdf, Joint: not ScrewJoint.Pocket },
            "MDF swells and splits around a screw. Use straight screws, not tapered ones, drill the pilot a little "
                + "deeper than the screw, and countersink lightly."
        ),
        new(
            Watch,
            made => made.IsCramped,
            "The joint is too narrow for the distance a screw needs from its edges. Use a thinner screw, or dowels or a cleat."
        ),
        new(
            Watch,
            made => made.Asked.Into.Value - made.Choice.Penetration.Value < LeastBeyond,
            "Less than 1/8 in of the far piece is left beyond the point. Try the joint on scrap of the same thickness first, "
                + "with the jig set to its own mark."
        ),
        new(
            Watch,
            made => made.IsShallow(6),
            "Less than six screw diameters of thread hold in the far piece, too little to count (unverified; from the design "
                + "specification). Add glue, and put no load on it."
        ),
        new(
            Watch,
            made => made.IsShallow(10) && !made.IsShallow(6),
            "Less than ten screw diameters of thread hold in the far piece, so the screw carries less than its full value "
                + "sideways (unverified; from the design specification)."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<ScrewAsked, ScrewMade>(
        "screws",
        "Screws",
        "The screw that joins two pieces without breaking through, and its drill bits."
    )
    {
        Keys = Keys,
        Read = ScrewAsked.Read,
        Make = ScrewMade.Of,
        Failures =
        [
            new(
                made => made.Refusal!.OfNearPiece ? "thickness" : "into",
                made => made.Refusal is not null,
                made => made.Refusal!.Reason
            )
            {
                Quote = made => (made.Refusal!.OfNearPiece ? made.Asked.Near : made.Asked.Into).Figure.Text(made.Asked.Unit),
            },
        ],
        Results = made => made.Sizes,
        Verdicts = Verdicts,
        Cautions = [Cautions.Drilling, Cautions.Dust],
    }.Form;
}
