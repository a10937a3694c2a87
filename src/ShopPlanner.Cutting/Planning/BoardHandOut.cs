using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Planning;

/// <summary>The lengths wanted, longest first, and which parts get the pieces cut to them: in the parts' order.</summary>
internal sealed class BoardHandOut
{
    private readonly int[] rest;
    private readonly int[][] members;
    private readonly int[] first;
    private readonly int[] sizeOf;

    public BoardHandOut(ImmutableArray<CutPart> parts)
    {
        rest = [.. parts.Select(part => part.Quantity)];
        members =
        [
            .. Enumerable
                .Range(0, parts.Length)
                .GroupBy(i => parts[i].Length)
                .OrderByDescending(size => size.Key)
                .Select(size => size.ToArray()),
        ];
        first = new int[members.Length];
        Sizes = [.. members.Select(alike => (parts[alike[0]].Length, alike.Sum(i => parts[i].Quantity)))];
        sizeOf = new int[parts.Length];
        for (var size = 0; size < members.Length; size++)
            foreach (var part in members[size])
                sizeOf[part] = size;
    }

    /// <summary>Every length with the pieces wanted of it.</summary>
    public ImmutableArray<(Length Length, int Pieces)> Sizes { get; }

    /// <summary>Pieces of each part that were not handed out.</summary>
    public ImmutableArray<int> Rest() => [.. rest];

    /// <summary>The lengths, by index, of pieces of these parts, longest first.</summary>
    public IEnumerable<int> Sorted(IEnumerable<int> pieces) => pieces.Select(part => sizeOf[part]).Order();

    /// <summary>Pieces of each length among pieces of these parts.</summary>
    public ImmutableArray<int> Counts(IEnumerable<int> pieces)
    {
        var counts = new int[Sizes.Length];
        foreach (var part in pieces)
            counts[sizeOf[part]]++;
        return [.. counts];
    }

    /// <summary>
    /// Gives a pattern's pieces to parts, longest first: equal lengths lie together, so one stop setting serves them. It stays
    /// one layout for as many times as the same parts serve.
    /// </summary>
    public IEnumerable<(int Times, List<int> Parts)> Take(BoardPattern pattern)
    {
        for (var open = pattern.Times; open > 0; )
        {
            var share = Shares(pattern.Counts);
            var times = share.Select(one => rest[one.Part] / one.Pieces).Append(open).Min();
            foreach (var (part, pieces) in share)
                rest[part] -= pieces * times;
            open -= times;
            yield return (times, [.. share.SelectMany(one => Enumerable.Repeat(one.Part, one.Pieces))]);
        }
    }

    private List<(int Part, int Pieces)> Shares(ImmutableArray<int> counts)
    {
        var shares = new List<(int, int)>();
        for (var size = 0; size < counts.Length; size++)
            if (counts[size] > 0)
                Share(size, counts[size], shares);
        return shares;
    }

    private void Share(int size, int open, List<(int, int)> to)
    {
        while (rest[members[size][first[size]]] == 0)
            first[size]++;
        for (var at = first[size]; open > 0; at++)
        {
            var part = members[size][at];
            var pieces = Math.Min(open, rest[part]);
            if (pieces > 0)
                to.Add((part, pieces));
            open -= pieces;
        }
    }
}
