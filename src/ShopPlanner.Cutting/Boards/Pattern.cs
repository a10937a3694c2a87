namespace ShopPlanner.Cutting.Boards;

/// <summary>Pieces of one item in a pattern.</summary>
internal readonly record struct Piece(int Item, int Count);

/// <summary>How one stock is cut; the pieces in the model's order of items, each item once.</summary>
internal sealed class Pattern : IEquatable<Pattern>
{
    private readonly int hash;

    public Pattern(int kind, Piece[] pieces)
    {
        Kind = kind;
        Pieces = pieces;
        var hash = default(HashCode);
        hash.Add(kind);
        foreach (var piece in pieces)
            hash.Add(piece);
        this.hash = hash.ToHashCode();
    }

    /// <summary>Index of the kind of stock.</summary>
    public int Kind { get; }

    public Piece[] Pieces { get; }

    /// <summary>A pattern from a count of each item.</summary>
    public static Pattern FromCounts(int kind, int[] counts) =>
        new(kind, [.. counts.Select((count, item) => new Piece(item, count)).Where(piece => piece.Count > 0)]);

    /// <summary>Size taken by the pieces.</summary>
    public long Used(CuttingModel model) => Pieces.Sum(piece => piece.Count * model.Sizes[piece.Item]);

    /// <summary>The same pieces on another kind of stock.</summary>
    public Pattern On(int kind) => kind == Kind ? this : new(kind, Pieces);

    /// <summary>How often the pattern can be cut without exceeding what is wanted.</summary>
    public int TimesWithin(int[] wanted)
    {
        var times = int.MaxValue;
        foreach (var piece in Pieces)
            times = Math.Min(times, wanted[piece.Item] / piece.Count);
        return Pieces.Length == 0 ? 0 : times;
    }

    public bool Equals(Pattern? other) => other is not null && Kind == other.Kind && Pieces.AsSpan().SequenceEqual(other.Pieces);

    public override bool Equals(object? obj) => Equals(obj as Pattern);

    public override int GetHashCode() => hash;
}
