using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Shaping;

namespace ShopPlanner.Core.Designs;

/// <summary>All that a design can name, with what each takes: what a person chooses from.</summary>
public static class DesignKinds
{
    /// <summary>What holds a piece up.</summary>
    public static ImmutableArray<KindInfo> Frames { get; } = [.. Kinds.Frames.Select(one => one.Info)];

    /// <summary>What splits a bay.</summary>
    public static ImmutableArray<KindInfo> Splits { get; } = [.. Kinds.Splits.Select(one => one.Info)];

    /// <summary>What fills or closes a bay.</summary>
    public static ImmutableArray<KindInfo> Fills { get; } = [.. Kinds.Fills.Select(one => one.Info)];

    /// <summary>What lies on top.</summary>
    public static ImmutableArray<KindInfo> Tops { get; } = [.. Kinds.Tops.Select(one => one.Info)];

    /// <summary>What is cut out of parts.</summary>
    public static ImmutableArray<KindInfo> Shapes { get; } = [.. ShapeList.All.Select(one => one.Info)];

    /// <summary>What is done to edges of free parts.</summary>
    public static ImmutableArray<KindInfo> Edges => FreeEdges.Kinds;

    /// <summary>The kind of frame, split, fill or top with this name; null for a name that is not known.</summary>
    public static KindInfo? Find(string name) =>
        Frames.Concat(Splits).Concat(Fills).Concat(Tops).FirstOrDefault(one => one.Name == name);
}
