namespace ShopPlanner.Core.Making.Assembly;

/// <summary>What a unit is to those who build it.</summary>
internal enum UnitKind
{
    /// <summary>A single copy.</summary>
    Part,

    /// <summary>Strips or layers that are glued into one board.</summary>
    Panel,

    /// <summary>Two parts lapped over each other.</summary>
    Cross,

    /// <summary>A part with cleats, runners or edging that it alone holds.</summary>
    Fitted,

    /// <summary>Uprights with rails in one plane: an end, a face frame.</summary>
    Frame,

    /// <summary>It hangs on hinges and closes an opening.</summary>
    Door,

    /// <summary>It lies on hinges.</summary>
    Lid,

    /// <summary>It hangs on hinges at the edge of a top.</summary>
    Leaf,

    /// <summary>It runs on slides.</summary>
    Drawer,

    /// <summary>It rests on what holds it and can be taken out.</summary>
    Loose,

    /// <summary>A strip that a door closes against.</summary>
    Stop,

    /// <summary>The front that is set on a drawer's box.</summary>
    Front,

    /// <summary>It stays on the wall, and the piece hangs on it.</summary>
    Wall,

    /// <summary>Parts that only go in together.</summary>
    Group,

    /// <summary>The piece itself.</summary>
    Piece,
}

/// <summary>Copies that are put together by themselves and then move as one.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Copies">Their numbers, in order.</param>
internal sealed record Unit(UnitKind Kind, int[] Copies)
{
    /// <summary>How it is put together; empty for a single copy.</summary>
    public List<Insertion> Insertions { get; } = [];

    /// <summary>Whether its insertions are those of another unit.</summary>
    public bool IsComposite => Copies.Length > 1;

    /// <summary>Whether it is made by itself and put in or on when the rest stands.</summary>
    public bool IsFitted =>
        Swings || Kind is UnitKind.Drawer or UnitKind.Loose or UnitKind.Stop or UnitKind.Front or UnitKind.Wall;

    /// <summary>Whether it swings out of the way.</summary>
    public bool Swings => Kind is UnitKind.Door or UnitKind.Lid or UnitKind.Leaf;

    /// <summary>The unit of each copy.</summary>
    public static Dictionary<int, Unit> Owners(IEnumerable<Unit> units) =>
        units.SelectMany(unit => unit.Copies.Select(copy => (copy, unit))).ToDictionary();

    public bool Equals(Unit? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}

/// <summary>A unit that goes to those that stand already.</summary>
/// <param name="What">The unit.</param>
/// <param name="Out">The way in which it leaves again, the opposite of how it goes in; null for the first one.</param>
/// <param name="Links">The joints that it closes.</param>
internal sealed record Insertion(Unit What, Way? Out, Link[] Links)
{
    /// <summary>Whether it lies on others and covers them: a back, a top.</summary>
    public bool IsCover { get; init; }

    /// <summary>Whether no straight move brings it in.</summary>
    public bool IsShutIn { get; init; }
}
