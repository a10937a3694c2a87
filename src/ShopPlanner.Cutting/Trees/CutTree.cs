using System.Runtime.CompilerServices;

namespace ShopPlanner.Cutting.Trees;

/// <summary>
/// One sheet as a slicing tree in preorder. Depth gives the structure, and since cuts alternate, depth and the root's
/// direction give each cut's direction. Nodes keep least sizes only: where the slack goes is left open until the layout is
/// written, so an item may be put beside any node as long as all slack above leaves room for it.
/// </summary>
internal sealed partial class CutTree
{
    // Stages of cutting a tree may have; far beyond any use, it bounds the stacks of the passes.
    private const int MostDepth = 64;

    private CutNode[] nodes = new CutNode[32];
    private ulong[] misfits = [];
    private int deepest;

    /// <summary>Number of nodes; none for an empty sheet.</summary>
    public int Count { get; private set; }

    public int Stock { get; private set; }

    public int W { get; private set; }

    public int H { get; private set; }

    /// <summary>True when the root's children lie side by side along x.</summary>
    public bool RootAlongX { get; private set; }

    /// <summary>False when one more level would pass the limit.</summary>
    public bool CanDeepen => deepest + 2 < MostDepth;

    /// <summary>Area of the parts.</summary>
    public long Used { get; private set; }

    public long Area { get; private set; }

    /// <summary>Worth of what is left of the sheet, once somebody has worked it out.</summary>
    public double? LeftoverValue { get; set; }

    /// <summary>Fence settings it takes, once somebody has counted them.</summary>
    public int? Settings { get; set; }

    /// <summary>Rips of pieces that are short for a fence, once somebody has counted them.</summary>
    public int? ShortRips { get; set; }

    /// <summary>True when it can be cut within the limits of the shop, once somebody has tried.</summary>
    public bool? CanBeCut { get; set; }

    public long Free => Area - Used;

    public bool IsEmpty => Count == 0;

    /// <summary>Mark of the search: the round in which a copy was put by.</summary>
    public long SavedIn { get; set; }

    public ReadOnlySpan<CutNode> Nodes => nodes.AsSpan(0, Count);

    public void Reset(int stock, int w, int h, int types)
    {
        (Stock, W, H) = (stock, w, h);
        Area = (long)w * h;
        Count = 0;
        Used = 0;
        if (misfits.Length * 64 < types)
            misfits = new ulong[(types + 63) / 64];
        ForgetMisfits();
    }

    /// <summary>Gives more of the sheet free to be used.</summary>
    public void Widen(int w, int h)
    {
        (W, H) = (w, h);
        Area = (long)w * h;
        ForgetMisfits();
        Refresh();
    }

    public void CopyFrom(CutTree other)
    {
        (Stock, W, H, RootAlongX) = (other.Stock, other.W, other.H, other.RootAlongX);
        (Used, Area, Count, deepest) = (other.Used, other.Area, other.Count, other.deepest);
        (LeftoverValue, Settings, ShortRips, CanBeCut) = (other.LeftoverValue, other.Settings, other.ShortRips, other.CanBeCut);
        EnsureRoom(Count);
        other.Nodes.CopyTo(nodes);
        if (misfits.Length < other.misfits.Length)
            misfits = new ulong[other.misfits.Length];
        other.misfits.CopyTo(misfits, 0);
    }

    /// <summary>True when it is known that the type has no place here; putting items in does not make room.</summary>
    public bool IsMisfit(int type) => (misfits[type >> 6] >> type & 1) != 0;

    public void NoteMisfit(int type) => misfits[type >> 6] |= 1UL << type;

    /// <summary>True when the children of a node of this depth lie side by side along x.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool CutsAlongX(int depth) => RootAlongX ^ ((depth & 1) != 0);

    public void Insert(in Place place)
    {
        EnsureRoom(Count + 2);
        if (Count == 0)
            InsertAt(0, 0, place);
        else if (nodes[place.Node].IsLeaf)
            WrapLeaf(place);
        else if (place.Node == 0 && place.AlongX != RootAlongX)
            WrapRoot(place);
        else
            InsertAt(place.Node + 1, nodes[place.Node].Depth + 1, place);
        Used += (long)place.W * place.H;
        Refresh();
    }

    private void WrapLeaf(in Place place)
    {
        var leaf = nodes[place.Node];
        if (place.Node == 0)
            RootAlongX = place.AlongX;
        nodes[place.Node].Item = CutNode.Cut;
        MakeGap(place.Node + 1);
        leaf.Depth++;
        nodes[place.Node + 1] = leaf;
        InsertAt(place.Node + 2, leaf.Depth, place);
    }

    private void WrapRoot(in Place place)
    {
        for (var i = 0; i < Count; i++)
            nodes[i].Depth++;
        MakeGap(0);
        nodes[0] = new CutNode { Item = CutNode.Cut };
        RootAlongX = place.AlongX;
        InsertAt(1, 1, place);
    }

    private void InsertAt(int index, int depth, in Place place)
    {
        MakeGap(index);
        nodes[index] = new CutNode
        {
            Depth = depth,
            Item = place.Item,
            W = place.W,
            H = place.H,
        };
    }

    private void MakeGap(int index)
    {
        Array.Copy(nodes, index, nodes, index + 1, Count - index);
        Count++;
    }

    private void EnsureRoom(int count)
    {
        if (nodes.Length < count)
            Array.Resize(ref nodes, Math.Max(count, nodes.Length * 2));
    }

    private void ForgetMisfits() => Array.Clear(misfits);
}
