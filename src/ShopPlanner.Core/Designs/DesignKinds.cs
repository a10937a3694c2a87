using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;

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

    /// <summary>The kind with this name, wherever it stands; null for a name that is not known.</summary>
    public static KindInfo? Find(string name) =>
        Frames.Concat(Splits).Concat(Fills).Concat(Tops).FirstOrDefault(one => one.Name == name);
}
