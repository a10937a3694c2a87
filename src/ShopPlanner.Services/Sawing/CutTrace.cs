using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Services.Sawing;

/// <summary>Where a cut runs and what it gives, in places of the stock as bought.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Kerf">The strip turned to sawdust.</param>
/// <param name="First">The piece nearest the origin; without extent where the whole of it is sawdust.</param>
/// <param name="Second">The piece beyond the kerf; null where nothing remains.</param>
internal sealed record TracedCut(Cut Cut, StockArea Kerf, StockArea First, StockArea? Second)
{
    /// <summary>What is cut, in its parts.</summary>
    public IEnumerable<StockArea> InHand => Second is { } second ? [First, Kerf, second] : [First, Kerf];
}

/// <summary>Follows the cuts of a layout through the stock, as the bench does it: each on the piece in hand that an earlier cut
/// gave.</summary>
internal static class CutTrace
{
    public static ImmutableArray<TracedCut> Follow(Layout layout, StockForm form, Length length, Length width, Length kerf)
    {
        var hand = new Dictionary<string, StockArea>
        {
            [form == StockForm.Board ? "board" : "sheet"] = new(Length.Zero, Length.Zero, length, width),
        };
        var traced = ImmutableArray.CreateBuilder<TracedCut>(layout.Cuts.Length);
        foreach (var cut in layout.Cuts)
        {
            if (!hand.Remove(cut.Piece, out var piece))
                continue;
            var step = Make(cut, piece, kerf);
            traced.Add(step);
            hand[cut.First] = step.First;
            if (cut.Second is { } name && step.Second is { } second)
                hand[name] = second;
        }

        return traced.ToImmutable();
    }

    /// <summary>What lies there once some of the cuts are made: all that is no finished part.</summary>
    /// <param name="whole">The stock, by the name that the first cut calls it.</param>
    /// <param name="made">The cuts that are made, in order.</param>
    public static IReadOnlyCollection<StockArea> InHand((string Name, StockArea Area) whole, IEnumerable<TracedCut> made)
    {
        var hand = new Dictionary<string, StockArea> { [whole.Name] = whole.Area };
        foreach (var step in made.Where(step => hand.Remove(step.Cut.Piece)))
        {
            if (step.Cut.FirstPart is null)
                hand[step.Cut.First] = step.First;
            if (step is { Cut: { Second: { } name, SecondPart: null }, Second: { } second })
                hand[name] = second;
        }

        return hand.Values;
    }

    private static TracedCut Make(Cut cut, StockArea piece, Length kerf)
    {
        if (cut.Kind == CutKind.Crosscut)
        {
            var wide = Length.Min(kerf, piece.Dx - cut.At);
            var rest = piece.Dx - cut.At - wide;
            return new(
                cut,
                piece with
                {
                    X = piece.X + cut.At,
                    Dx = wide,
                },
                piece with
                {
                    Dx = cut.At,
                },
                rest.IsPositive ? piece with { X = piece.X + cut.At + wide, Dx = rest } : null
            );
        }

        var deep = Length.Min(kerf, piece.Dy - cut.At);
        var left = piece.Dy - cut.At - deep;
        return new(
            cut,
            piece with
            {
                Y = piece.Y + cut.At,
                Dy = deep,
            },
            piece with
            {
                Dy = cut.At,
            },
            left.IsPositive ? piece with { Y = piece.Y + cut.At + deep, Dy = left } : null
        );
    }
}
