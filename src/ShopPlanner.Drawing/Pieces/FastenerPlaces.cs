using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Where screws or dowels stand along a joint.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Diameter">How thick they are.</param>
/// <param name="Places">Their middles from one end of the joint's longer side.</param>
internal sealed record FastenerPlaces(BoreKind Kind, Length Diameter, ImmutableArray<Length> Places)
{
    /// <summary>Whether joints of a kind are held by what is bored straight through their face.</summary>
    public static bool Has(JointKind kind) => kind is JointKind.Screwed or JointKind.Dowel;

    /// <summary>The places; null where nothing that is sold fits.</summary>
    /// <param name="kind">Screwed or doweled.</param>
    /// <param name="one">How thick one part is in the joint's direction.</param>
    /// <param name="other">How thick the other is.</param>
    /// <param name="narrow">The shorter side of the face in which they meet.</param>
    /// <param name="wide">The longer side.</param>
    public static FastenerPlaces? Of(JointKind kind, Length one, Length other, Length narrow, Length wide) =>
        kind == JointKind.Dowel ? OfDowels(narrow, wide) : OfScrews(Length.Min(one, other), Length.Max(one, other), wide);

    private static FastenerPlaces? OfScrews(Length near, Length far, Length wide) =>
        ScrewChoice.Of(Working.Given("near", near), Working.Given("into", far), ScrewJoint.Face).Choice is not { } screw
            ? null
            : new(
                BoreKind.Screw,
                screw.Gauge.Diameter,
                new ScrewPlaces(screw.Gauge, PilotWood.Softwood, ScrewJoint.Edge).Along(Working.Given("joint", wide)).Value
            );

    private static FastenerPlaces? OfDowels(Length narrow, Length wide)
    {
        if (Dowels.Rod(narrow) is not { } rod || wide < Dowels.Narrowest(rod))
            return null;
        var dowels = Dowels.Of(Working.Given("thickness", narrow), Working.Given("width", wide), null);
        return new(BoreKind.Dowel, dowels.Diameter.Value, dowels.Places.Value);
    }
}
