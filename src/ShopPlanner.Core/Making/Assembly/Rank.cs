namespace ShopPlanner.Core.Making.Assembly;

/// <summary>How good it is that something leaves next, so goes in last of what stands: the least is the best.</summary>
/// <param name="Tier">What is fitted to the standing piece leaves before the piece itself.</param>
/// <param name="Unreachable">Joints whose screws could not be driven in that order.</param>
/// <param name="Split">Parts that what remains would fall into.</param>
/// <param name="Covered">Covers, such as a back or a top, that still lie on it.</param>
/// <param name="Structural">Whether it belongs to what glue holds together; strips and covers that are only screwed go on when
/// that is dry.</param>
/// <param name="Lateral">Joints that it leaves sideways: glue is wiped off, and what is caught between two sides is forced
/// in.</param>
/// <param name="Dangling">Parts that are held at one place only once it is gone.</param>
/// <param name="Order">Among equals.</param>
internal readonly record struct Rank(
    int Tier,
    int Unreachable,
    int Split,
    int Covered,
    int Structural,
    int Lateral,
    int Dangling,
    (int Way, int Name, long Place, int Copy) Order
) : IComparable<Rank>
{
    /// <summary>Whether nothing speaks against it but the order of the trade.</summary>
    public bool IsPlain => Unreachable == 0 && Split == 0;

    public int CompareTo(Rank other) => (Reasons, Order).CompareTo((other.Reasons, other.Order));

    /// <summary>The same if all screws could be driven.</summary>
    public Rank Eased() => this with { Unreachable = 0 };

    /// <summary>Whether it is better than another one, whatever their place.</summary>
    public bool IsBetter(Rank other) => Reasons.CompareTo(other.Reasons) < 0;

    /// <summary>Whether it is as good as one of its like, whatever their place and what hangs on the last of them.</summary>
    public bool IsNoWorse(Rank other) =>
        (this with { Dangling = 0 }).Reasons.CompareTo((other with { Dangling = 0 }).Reasons) <= 0;

    private (int, int, int, int, int, int, int) Reasons => (Tier, Unreachable, Split, Covered, Structural, Lateral, Dangling);
}
