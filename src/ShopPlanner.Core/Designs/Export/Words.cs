using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>Words of what is exported.</summary>
internal static class Words
{
    public static string Grain(PiecePart part) => part.GrainMatters ? "length" : "any";

    /// <summary>Null for a part of the piece itself.</summary>
    public static string? Purpose(PiecePart part) =>
        part.Purpose switch
        {
            PartPurpose.Spacer => "spacer",
            PartPurpose.Practice => "practice",
            _ => null,
        };

    public static string Axis(Axis axis) =>
        axis switch
        {
            Model.Axis.X => "x",
            Model.Axis.Y => "y",
            _ => "z",
        };

    public static string Side(BoxSide side) =>
        side switch
        {
            BoxSide.Left => "left",
            BoxSide.Right => "right",
            BoxSide.Front => "front",
            BoxSide.Back => "back",
            BoxSide.Bottom => "bottom",
            _ => "top",
        };

    public static string Feature(PartFeature feature) =>
        feature switch
        {
            Hole => "hole",
            Slot => "groove",
            Notch => "notch",
            Bevel => "bevel",
            Taper => "taper",
            Arc => "arc",
            Corner => "corner",
            _ => throw new ArgumentOutOfRangeException(nameof(feature), feature, "is no kind of shape"),
        };

    public static string Edge(EdgeWork work) =>
        work switch
        {
            EdgeWork.Band => "band",
            EdgeWork.Lipping => "lipping",
            EdgeWork.Strip => "strip",
            _ => "round",
        };

    /// <summary>As in the parts file: <c>ok</c>, <c>check</c>, <c>safety</c>, <c>wall</c>, <c>fix</c>.</summary>
    public static string Severity(Severity severity) =>
        severity switch
        {
            Workings.Severity.Tip => "tip",
            Workings.Severity.Fine => "ok",
            Workings.Severity.Watch => "check",
            Workings.Severity.Safety => "safety",
            Workings.Severity.Anchor => "wall",
            _ => "fix",
        };

    public static string Joint(JointKind kind) =>
        kind switch
        {
            JointKind.Glued => "glued",
            JointKind.Screwed => "screwed",
            JointKind.PocketScrew => "pocket-screw",
            JointKind.Dado => "dado",
            JointKind.Rabbet => "rabbet",
            JointKind.Groove => "groove",
            JointKind.MortiseAndTenon => "mortise-and-tenon",
            JointKind.Dovetail => "dovetail",
            JointKind.Dowel => "dowel",
            JointKind.Slotted => "slotted",
            JointKind.Hinged => "hinged",
            JointKind.Sliding => "sliding",
            JointKind.Resting => "resting",
            JointKind.Bolted => "bolted",
            JointKind.Beveled => "beveled",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is no kind of joint"),
        };
}
