using System.Runtime.CompilerServices;

namespace ShopPlanner.Cutting.Trees;

/// <summary>
/// A node of a <see cref="CutTree"/>: a part, or a cut whose children lie side by side. Sizes are the least the node needs;
/// Avail is what it could grow to if it took all the slack of the nodes above.
/// </summary>
internal struct CutNode
{
    /// <summary>Value of <see cref="Item"/> for a cut.</summary>
    public const int Cut = -1;

    /// <summary>Value of <see cref="Item"/> for a part that has been taken out and waits for <see cref="CutTree.Compact"/>.
    /// </summary>
    public const int Gone = -2;

    public int Depth;
    public int Item;
    public int Parent;
    public int W;
    public int H;
    public int AvailW;
    public int AvailH;

    /// <summary>Children that stay; only meant while a tree is made compact.</summary>
    public int Kids;

    public readonly bool IsLeaf => Item >= 0;
}

/// <summary>Takes the places that are found for an item.</summary>
internal interface IPlaceSink
{
    void Offer(in Place place);
}

/// <summary>Keeps all of them.</summary>
internal readonly struct PlaceList(List<Place> places) : IPlaceSink
{
    public void Offer(in Place place) => places.Add(place);
}

/// <summary>Where an item would go: beside a node, along an axis. As a sink it keeps the best.</summary>
internal struct Place : IPlaceSink
{
    public CutTree? Tree;
    public int Node;
    public bool AlongX;
    public int Item;
    public int W;
    public int H;
    public double Score;

    public static Place None => new() { Score = double.MaxValue };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Offer(in Place place)
    {
        if (place.Score < Score)
            this = place;
    }
}
