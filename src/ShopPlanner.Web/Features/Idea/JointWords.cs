using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Joints between two marks, in words.</summary>
internal static class JointWords
{
    /// <summary>Reads between the marks: <c>A1</c> sits in a dado in <c>B1</c>.</summary>
    public static string Of(JointKind kind) =>
        kind switch
        {
            JointKind.Glued => "is glued to",
            JointKind.Screwed => "is screwed to",
            JointKind.PocketScrew => "is fastened with pocket screws to",
            JointKind.Dado => "sits in a dado in",
            JointKind.Rabbet => "sits in a rabbet in",
            JointKind.Groove => "sits in a groove in",
            JointKind.MortiseAndTenon => "has a tenon in a mortise in",
            JointKind.Dovetail => "is dovetailed to",
            JointKind.Dowel => "is doweled to",
            JointKind.Slotted => "is fastened with room to move to",
            JointKind.Hinged => "hangs on hinges from",
            JointKind.Sliding => "runs on slides in",
            JointKind.Bolted => "is bolted to",
            JointKind.Beveled => "hangs by its bevel on",
            JointKind.HalfLap => "is half-lapped with",
            JointKind.Bridle => "has a tenon in an open slot in",
            JointKind.Miter => "is mitered to",
            JointKind.Breadboard => "has a tongue with room to move in",
            JointKind.SlidingGroove => "slides in a groove in",
            JointKind.Pinned => "is held with brads in a rabbet of",
            _ => "rests on",
        };
}
