using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Export;

/// <summary>Words of the steps format; they stay when names in the code change.</summary>
internal static class FormatWords
{
    private static readonly Dictionary<WorkAction, string> Actions = new()
    {
        [WorkAction.GlueUp] = "glue-up",
        [WorkAction.TrimToSize] = "trim-to-size",
        [WorkAction.Tenon] = "tenon",
        [WorkAction.Mortise] = "mortise",
        [WorkAction.Groove] = "groove",
        [WorkAction.Dado] = "dado",
        [WorkAction.Rabbet] = "rabbet",
        [WorkAction.Lap] = "lap",
        [WorkAction.Notch] = "notch",
        [WorkAction.Shape] = "shape",
        [WorkAction.DrillPins] = "drill-pins",
        [WorkAction.BoreHinges] = "bore-hinges",
        [WorkAction.PocketHoles] = "pocket-holes",
        [WorkAction.DowelHoles] = "dowel-holes",
        [WorkAction.ScrewHoles] = "screw-holes",
        [WorkAction.Drill] = "drill",
        [WorkAction.BandEdges] = "band-edges",
        [WorkAction.EaseEdges] = "ease-edges",
        [WorkAction.Sand] = "sand",
        [WorkAction.DryFit] = "dry-fit",
        [WorkAction.Join] = "join",
        [WorkAction.CleanGlue] = "clean-glue",
        [WorkAction.FitDoor] = "fit-door",
        [WorkAction.Hang] = "hang",
        [WorkAction.FitDrawer] = "fit-drawer",
        [WorkAction.FastenTop] = "fasten-top",
        [WorkAction.PutIn] = "put-in",
        [WorkAction.TakeOff] = "take-off",
        [WorkAction.Fill] = "fill",
        [WorkAction.Dust] = "dust",
        [WorkAction.Mask] = "mask",
        [WorkAction.SealKnots] = "seal-knots",
        [WorkAction.Condition] = "condition",
        [WorkAction.Stain] = "stain",
        [WorkAction.Prime] = "prime",
        [WorkAction.Coat] = "coat",
        [WorkAction.Rub] = "rub",
        [WorkAction.Cure] = "cure",
        [WorkAction.FixToWall] = "fix-to-wall",
        [WorkAction.Read] = "read",
    };

    public static string Of(WorkAction action) => Actions[action];

    public static string Of(WorkPhase phase) =>
        phase switch
        {
            WorkPhase.Parts => "parts",
            WorkPhase.FinishBefore => "finish-before",
            WorkPhase.Assembly => "assembly",
            WorkPhase.Fitting => "fitting",
            WorkPhase.Finish => "finish",
            WorkPhase.InPlace => "in-place",
            _ => throw new ArgumentOutOfRangeException(nameof(phase), phase, "is no phase of work"),
        };

    public static string Of(Axis axis) =>
        axis switch
        {
            Axis.X => "x",
            Axis.Y => "y",
            _ => "z",
        };

    /// <summary>As among a design's warnings.</summary>
    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Tip => "tip",
            Severity.Fine => "ok",
            Severity.Watch => "check",
            Severity.Safety => "safety",
            Severity.Anchor => "wall",
            _ => "fix",
        };
}
