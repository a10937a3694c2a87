using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Which joints get glue.</summary>
internal static class Gluing
{
    /// <summary>Whether it is glued. A rail's own tongue is glued into its groove; a panel is left free to move.</summary>
    public static bool IsGlued(Solids solids, Link link) =>
        Fastenings.IsGlued(link.Kind) || (link.Kind == JointKind.Groove && !IsPanel(solids, link.From));

    /// <summary>Whether it is a panel's joint to its groove, in which it stays free to move and which holds nothing
    /// together.</summary>
    public static bool IsFree(Solids solids, Link link) => link.Kind == JointKind.Groove && IsPanel(solids, link.From);

    /// <summary>Whether a copy lies in grooves along its edges: a rail has tongues at its ends alone.</summary>
    public static bool IsPanel(Solids solids, int copy)
    {
        var along = solids.All[copy].Copy.Along;
        return solids.Of(copy).Any(link => link.From == copy && link.Kind == JointKind.Groove && link.Along != along);
    }
}
