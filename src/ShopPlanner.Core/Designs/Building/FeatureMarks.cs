using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>What is cut out of a copy, and what is done to its edges, as places in its box: copies are alike where a turn brings
/// all places of one onto those of the other. A slant has a second place, which says which way it runs.</summary>
internal static class FeatureMarks
{
    public static IEnumerable<(string Word, Box Place)> Of(Draft draft) =>
        draft.Features.SelectMany(one => Of(one, draft.Box)).Concat(draft.Edges.Select(one => Of(one, draft.Box)));

    private static IEnumerable<(string Word, Box Place)> Of(PartFeature feature, Box whole)
    {
        yield return (Word(feature), feature.Room(whole));
        if (Slant(feature, whole) is { } place)
            yield return (Word(feature) + "-", place);
    }

    private static (string Word, Box Place) Of(EdgeTreatment edge, Box whole) =>
        (FormattableString.Invariant($"e{(int)edge.Work}:{edge.Size.Ticks}"), whole.Slice(edge.Side, Length.Zero));

    private static string Word(PartFeature feature) =>
        feature switch
        {
            Hole hole => hole.Depth is null ? "ho" : "hd",
            Slot => "s",
            Notch => "n",
            Bevel => "b",
            Taper => "t",
            Arc arc => arc.IsHollow ? "ah" : "ac",
            _ => "c",
        };

    // The edge that a slant leaves whole, the line that most is taken off, the side that is curved.
    private static Box? Slant(PartFeature feature, Box whole) =>
        feature switch
        {
            Bevel bevel => bevel.Room(whole).Slice(bevel.Edge, Length.Zero).Slice(bevel.Keeps, Length.Zero),
            Taper taper => taper.Room(whole).Slice(taper.Face, Length.Zero).Slice(taper.End, Length.Zero),
            Arc arc => arc.Room(whole).Slice(arc.Edge, Length.Zero),
            Hole { Depth: not null } hole => hole.Room(whole).Slice(hole.Face, Length.Zero),
            _ => null,
        };
}
