using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>A piece's copies by number, with the joints between them.</summary>
internal sealed class Solids
{
    private static readonly IReadOnlyList<Link> None = [];

    private readonly Dictionary<(int, int), List<Link>> between = [];
    private readonly Dictionary<int, JointItem?> items = [];
    private readonly List<Link>[] of;

    public Solids(Piece piece)
    {
        Piece = piece;
        All = [.. piece.Parts.SelectMany(part => part.Copies.Select(copy => new Solid(part, copy)))];
        var numbers = Enumerable.Range(0, All.Length).ToDictionary(i => All[i].Copy.Mark, StringComparer.Ordinal);
        Links = [.. piece.Joints.Select((joint, i) => Make(i, joint, numbers))];
        of = [.. All.Select(_ => new List<Link>())];
        foreach (var link in Links)
        {
            of[link.From].Add(link);
            of[link.Into].Add(link);
            var pair = Pair(link.From, link.Into);
            if (!between.TryGetValue(pair, out var same))
                between[pair] = same = [];
            same.Add(link);
        }
    }

    public Piece Piece { get; }

    public Solid[] All { get; }

    public Link[] Links { get; }

    /// <summary>The joints of a copy.</summary>
    public IReadOnlyList<Link> Of(int copy) => of[copy];

    /// <summary>The joints between two copies.</summary>
    public IReadOnlyList<Link> Between(int one, int other) => between.GetValueOrDefault(Pair(one, other)) ?? None;

    /// <summary>What a joint takes beside glue; null for nothing.</summary>
    public JointItem? Item(Link link)
    {
        if (!items.TryGetValue(link.Index, out var item))
            items[link.Index] = item = link.Fit.Meeting is null ? null : Fastenings.Of(link.Fit, Piece.Unit);
        return item;
    }

    public Box Box(int copy) => All[copy].Copy.Box;

    /// <summary>The least box around copies.</summary>
    public Box Around(IEnumerable<int> copies) => copies.Select(Box).Aggregate((one, other) => one.Around(other));

    private Link Make(int index, Joint joint, Dictionary<string, int> numbers)
    {
        var (from, into) = (numbers[joint.From], numbers[joint.Into]);
        return new(index, from, into, new JointFit(joint, All[from].Copy, All[into].Copy));
    }

    private static (int, int) Pair(int one, int other) => one < other ? (one, other) : (other, one);
}

/// <summary>A copy with its part.</summary>
internal sealed record Solid(PiecePart Part, PartCopy Copy)
{
    public string Mark => Copy.Mark;

    public string Name => Part.Name;

    /// <summary>How much wood its box holds, in cubic ticks: for comparing only.</summary>
    public double Wood { get; } = (double)Copy.Box.Dx.Ticks * Copy.Box.Dy.Ticks * Copy.Box.Dz.Ticks;
}

/// <summary>A joint by number.</summary>
/// <param name="Index">Place among the piece's joints.</param>
/// <param name="From">Number of what is let in, screwed or hung.</param>
/// <param name="Into">Number of what takes it.</param>
/// <param name="Fit">The joint itself, and where the two meet.</param>
internal sealed record Link(int Index, int From, int Into, JointFit Fit)
{
    public JointKind Kind => Fit.Joint.Kind;

    public Axis Along => Fit.Joint.Along;

    /// <summary>Whether one reaches into the other.</summary>
    public bool IsLet => Fit.Joint.Depth.IsPositive;

    public int Other(int copy) => copy == From ? Into : From;
}
