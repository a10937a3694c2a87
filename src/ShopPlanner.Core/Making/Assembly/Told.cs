namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Units alike, told once.</summary>
/// <param name="Id">Stays while sizes change.</param>
/// <param name="Name">What people call one.</param>
/// <param name="Units">Each of them.</param>
/// <param name="Within">What they become part of; null for the piece.</param>
internal sealed record Made(string Id, string Name, IReadOnlyList<Unit> Units, Made? Within)
{
    public UnitKind Kind => Units[0].Kind;

    public bool IsPiece => Kind == UnitKind.Piece;

    public IEnumerable<int> Copies => Units.SelectMany(unit => unit.Copies).Order();
}

/// <summary>A stage of units alike.</summary>
/// <param name="Of">The units.</param>
/// <param name="Kind">How it is put together.</param>
/// <param name="Number">Place among the stages of the unit.</param>
internal sealed record Told(Made Of, StageKind Kind, int Number)
{
    /// <summary>What goes in, in order, unit by unit.</summary>
    public List<Insertion> Insertions { get; } = [];

    /// <summary>Joints that are closed.</summary>
    public List<Link> Links { get; } = [];

    /// <summary>Copies that stand already.</summary>
    public List<int> Present { get; } = [];

    /// <summary>Units that go in and were put together before.</summary>
    public List<Made> Parts { get; } = [];

    /// <summary>Joints of parts that are there already and are closed only now: a joint had to be reached behind them.</summary>
    public bool IsLate { get; init; }

    /// <summary>Whether it is the last one that makes the unit rigid: it is checked then.</summary>
    public bool IsChecked { get; set; }

    /// <summary>Copies that take what goes in: the other ends of the joints that are closed.</summary>
    public IEnumerable<int> Taking => Links.SelectMany(link => new[] { link.From, link.Into }).Except(Handled);

    public IEnumerable<int> Handled =>
        IsLate ? Links.Select(link => link.From).Distinct().Order() : Insertions.SelectMany(one => one.What.Copies).Order();
}
