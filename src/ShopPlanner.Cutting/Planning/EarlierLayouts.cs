using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Planning;

/// <summary>What of an earlier plan can still be cut after an edit: a changed material's search begins with it.</summary>
internal static class EarlierLayouts
{
    /// <summary>The earlier layouts on stock that is still there in the same size, each with the pieces whose parts are still wanted in the
    /// same size; a layout left with none is dropped.</summary>
    public static ImmutableArray<KeptLayout> For(Job job, EarlierPlan? earlier)
    {
        if (earlier is null) return [];
        var before = earlier.Request.Stock.ToDictionary(stock => stock.Id);
        var parts = job.Parts.Select((part, i) => (part, i)).ToDictionary(pair => pair.part.Id, pair => pair.i);
        return [.. earlier.Plan.Layouts
            .Select(layout => (layout, Stock: Stock(job, before.GetValueOrDefault(layout.Stock))))
            .Where(pair => pair.Stock >= 0)
            .Select(pair => new KeptLayout(pair.Stock, pair.layout.Copies, [.. pair.layout.Pieces.Select(piece => Piece(job, parts, piece)).OfType<KeptPiece>()]))
            .Where(kept => !kept.Pieces.IsEmpty)];
    }

    private static int Stock(Job job, CutStock? before)
    {
        for (var i = 0; before is not null && i < job.Stock.Length; i++)
            if (job.Stock[i] is var stock && stock.Id == before.Id && stock.Length == before.Length && stock.Width == before.Width) return i;
        return -1;
    }

    private static KeptPiece? Piece(Job job, Dictionary<string, int> parts, PlacedPiece piece)
    {
        if (!parts.TryGetValue(piece.Part, out var index)) return null;
        var part = job.Parts[index];
        var (dx, dy) = piece.Turned ? (part.Width, part.Length) : (part.Length, part.Width);
        if (dx != piece.Dx || (dy != piece.Dy && !job.IsCrosscutOnly) || (piece.Turned && !job.CanTurn(part))) return null;
        return new(index, piece.Turned, piece.X.Ticks, piece.Y.Ticks, piece.Dx.Ticks, piece.Dy.Ticks);
    }
}

/// <summary>A layout that can still be cut, in part or whole.</summary>
/// <param name="Stock">Index into the job's stock.</param>
/// <param name="Times">How many were cut like this.</param>
/// <param name="Pieces">At least one.</param>
internal sealed record KeptLayout(int Stock, int Times, ImmutableArray<KeptPiece> Pieces);

/// <summary>A piece in such a layout, in ticks from a corner of the stock.</summary>
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
