using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sequence;

/// <summary>
/// The order of cuts for a layout: the edges that are not square first, then always the largest piece in hand, except that a cut
/// at the fence or stop setting just used is made before the setting is changed. Cuts by the store come before all others.
/// </summary>
internal sealed class CutSequencer
{
    private readonly long kerf;
    private readonly Func<int, string> partOf;
    private readonly WithinReach? reach;
    private readonly List<PieceInHand> waiting = [];
    private readonly List<Cut> cuts = [];

    private CutSequencer(long kerf, Func<int, string> partOf, SawReach? reach) =>
        (this.kerf, this.partOf, this.reach) = (kerf, partOf, reach is null ? null : new(reach, kerf));

    /// <summary>The cuts that free every part of a stock of the given size.</summary>
    /// <param name="form">Names the first piece in hand: board or sheet.</param>
    /// <param name="root">What becomes of the usable wood.</param>
    /// <param name="dx">Length of the stock as bought, in ticks.</param>
    /// <param name="dy">Width of the stock as bought, in ticks.</param>
    /// <param name="kerf">In ticks.</param>
    /// <param name="partOf">The id of the part that an item is.</param>
    /// <param name="reach">How far fence and blade reach; null where nothing bounds them.</param>
    public static ImmutableArray<Cut> Order(
        StockForm form,
        LayoutNode root,
        long dx,
        long dy,
        long kerf,
        Func<int, string> partOf,
        SawReach? reach = null
    )
    {
        var sequencer = new CutSequencer(kerf, partOf, reach);
        sequencer.Take(new(form == StockForm.Board ? "board" : "sheet", root, 0, 0, dx, dy));
        sequencer.Run();
        return [.. sequencer.cuts];
    }

    private void Run()
    {
        Step? last = null;
        while (waiting.Count > 0)
        {
            var piece = Choose(last);
            waiting.Remove(piece);
            last =
                Next(piece) ?? throw new InvalidOperationException($"Piece {piece.Name} needs a cut that the saw cannot make.");
            Make(piece, last);
            if (piece.Node.ByStore)
                last = null;
        }
    }

    private Step? Next(PieceInHand piece) => reach is null ? piece.Next(kerf) : reach.Next(piece);

    private PieceInHand Choose(Step? last) =>
        waiting.Find(piece => piece.Node.ByStore)
        ?? waiting.FirstOrDefault(piece => Next(piece) is { } next && next.Kind == last?.Kind && next.At == last.At)
        ?? waiting.MaxBy(piece => piece.Area)!;

    private void Make(PieceInHand piece, Step step)
    {
        var n = cuts.Count + 1;
        var number = n.ToString(CultureInfo.InvariantCulture);
        var first = step.First is null ? null : step.First with { Name = number + "a" };
        var second = step.Second is null ? null : step.Second with { Name = number + "b" };
        cuts.Add(
            new(
                n,
                piece.Name,
                step.Kind,
                Length.FromTicks(step.At),
                number + "a",
                Remains(piece, step) ? number + "b" : null,
                Take(first),
                Take(second)
            )
            {
                ByStore = piece.Node.ByStore,
            }
        );
    }

    // What is wanted of it always does: a squaring cut takes less than a kerf where the trim is less.
    private bool Remains(PieceInHand piece, Step step) =>
        step.Second is not null
        || (step.Kind == CutKind.Crosscut ? piece.X + step.At + kerf < piece.EndX : piece.Y + step.At + kerf < piece.EndY);

    // A piece that needs no more cuts is a finished part, whose id is returned, or a remnant.
    private string? Take(PieceInHand? piece)
    {
        if (piece is null)
            return null;
        var bare = piece.Unwrap();
        if (bare.IsFinished)
            return bare.Node.Item is { } item ? partOf(item) : null;
        if (bare.IsWanted)
            waiting.Add(bare);
        return null;
    }
}
