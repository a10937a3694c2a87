using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Layouts for a search to begin with: what of an earlier plan still serves after an edit, or what an earlier look found. Pieces
/// of parts that are gone are left out, those of parts of another size now stand where they stood, and stock that is gone is
/// replaced by the smallest as large; the solvers leave out what does not fit.
/// </summary>
internal sealed class EarlierLayouts
{
    private readonly Job job;
    private readonly Dictionary<string, int> byId;
    private readonly Dictionary<(long Length, long Width), int> bySize = [];

    private EarlierLayouts(Job job)
    {
        this.job = job;
        byId = job.Parts.Select((part, i) => (part.Id, i)).ToDictionary(pair => pair.Id, pair => pair.i);
        for (var i = 0; i < job.Parts.Length; i++)
            bySize.TryAdd((job.Parts[i].Length.Ticks, job.Parts[i].Width.Ticks), i);
    }

    /// <summary>Those of an earlier plan; none without one.</summary>
    public static ImmutableArray<KeptLayout> For(Job job, EarlierPlan? earlier)
    {
        if (earlier is null)
            return [];
        var layouts = new EarlierLayouts(job);
        var before = earlier.Request.Stock.Where(stock => stock.Material == job.Material.Id).ToDictionary(stock => stock.Id);
        return
        [
            .. earlier
                .Plan.Layouts.Where(layout => before.ContainsKey(layout.Stock))
                .Select(layout => layouts.Keep(layout, before[layout.Stock]))
                .OfType<KeptLayout>(),
        ];
    }

    /// <summary>Those of an answer to the same job.</summary>
    public static ImmutableArray<KeptLayout> Of(Job job, JobResult found)
    {
        return [.. found.Stocks.Select(cut => new KeptLayout(job.Stock.IndexOf(cut.Stock), cut.Times, Pieces(cut)))];
    }

    private static ImmutableArray<KeptPiece> Pieces(CutUpStock cut) =>
        [
            .. cut
                .Root.Whole()
                .Where(node => node.Item is not null)
                .Select(node => new KeptPiece(node.Item!.Value, node.Turned, node.X, node.Y, node.Dx, node.Dy)),
        ];

    private KeptLayout? Keep(Layout layout, CutStock before)
    {
        var stock = Stock(before);
        ImmutableArray<KeptPiece> pieces = [.. layout.Pieces.Select(Piece).OfType<KeptPiece>()];
        return stock < 0 || pieces.IsEmpty ? null : new(stock, layout.Copies, pieces);
    }

    private int Stock(CutStock before)
    {
        var same = Enumerable.Range(0, job.Stock.Length).Where(i => job.Stock[i].Id == before.Id);
        var large = Enumerable
            .Range(0, job.Stock.Length)
            .Where(i => job.Stock[i].Length >= before.Length && job.Stock[i].Width >= before.Width)
            .OrderBy(i => (double)job.Stock[i].Length.Ticks * job.Stock[i].Width.Ticks)
            .ThenBy(i => job.Stock[i].Offcut != before.Offcut);
        return same.Concat(large).Append(-1).First();
    }

    // The size counts for more than the name: equal pieces are interchangeable until they are handed out.
    private KeptPiece? Piece(PlacedPiece piece)
    {
        var (length, width) = piece.Turned ? (piece.Dy, piece.Dx) : (piece.Dx, piece.Dy);
        var own = byId.TryGetValue(piece.Part, out var named) ? named : -1;
        var part =
            own >= 0 && (job.Parts[own].Length, job.Parts[own].Width) == (length, width)
                ? own
                : bySize.GetValueOrDefault((length.Ticks, width.Ticks), own);
        return part < 0 || (piece.Turned && !job.CanTurn(job.Parts[part]))
            ? null
            : new(part, piece.Turned, piece.X.Ticks, piece.Y.Ticks, piece.Dx.Ticks, piece.Dy.Ticks);
    }
}

/// <summary>A layout to begin with.</summary>
/// <param name="Stock">Index into the job's stock.</param>
/// <param name="Times">How many were cut like this.</param>
/// <param name="Pieces">At least one.</param>
internal sealed record KeptLayout(int Stock, int Times, ImmutableArray<KeptPiece> Pieces);

/// <summary>A piece in such a layout, where it stood, in ticks from a corner of the stock; its part may have another size by
/// now.</summary>
/// <param name="Part">Index into the job's parts.</param>
/// <param name="Turned">True when the part's length lies along y.</param>
/// <param name="X">Of the corner nearest the origin.</param>
/// <param name="Y">Of the corner nearest the origin.</param>
/// <param name="Dx">Along the stock's length.</param>
/// <param name="Dy">Across.</param>
internal sealed record KeptPiece(int Part, bool Turned, long X, long Y, long Dx, long Dy)
{
    public long EndX => X + Dx;

    public long EndY => Y + Dy;
}
