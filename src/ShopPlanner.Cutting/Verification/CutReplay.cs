namespace ShopPlanner.Cutting.Verification;

/// <summary>
/// Makes the cuts of one layout in their order and looks at what lies on the bench afterwards: every part with its exact size,
/// named when it is finished; every leftover to keep; no cut through a part.
/// </summary>
internal sealed class CutReplay(Layout layout, string at, StockArea area, Findings findings)
{
    private readonly Dictionary<string, InHand> _bench = new(StringComparer.Ordinal);
    private readonly Rect[] _parts = [.. layout.Pieces.Select(Rect.Of)];
    private bool _stopped;

    public void Run()
    {
        var whole = new InHand(area.Whole, [.. Enumerable.Range(0, _parts.Length)], null);
        _bench[area.IsSheet ? "sheet" : "board"] = whole;
        for (var i = 0; i < layout.Cuts.Length && !_stopped; i++)
            Make(layout.Cuts[i], i + 1, Findings.At(at + ".cuts", i));
        if (_stopped) return;
        foreach (var (name, piece) in _bench) CheckFinished(name, piece);
        foreach (var leftover in layout.Leftovers.Where(leftover => leftover.Keep)) CheckKept(Rect.Of(leftover));
    }

    private void Make(Cut cut, int number, string where)
    {
        if (cut.N != number) Stop(where + ".n", cut.N.ToString(Invariant), $"is out of order: {number} is next");
        else if (!_bench.Remove(cut.Piece, out var piece)) Stop(where + ".piece", cut.Piece, "is not there to be cut");
        else Make(cut, piece, where);
    }

    private void Make(Cut cut, InHand piece, string where)
    {
        var alongX = cut.Kind == CutKind.Crosscut;
        var (start, end) = (piece.Rect.Start(alongX), piece.Rect.End(alongX));
        var blade = start + cut.At.Ticks;
        if (cut.At.Ticks == 0)
        {
            Shave(cut, piece, alongX, where);
            return;
        }

        if (blade >= end) Stop(where + ".at", cut.At.ToString(), "lies beyond the piece in hand");
        else Part(cut, piece, alongX, blade, Math.Min(blade + area.Kerf, end), where);
    }

    // The blade overlaps the edge only by the trim, or it runs on the edge itself: one piece remains.
    private void Shave(Cut cut, InHand piece, bool alongX, string where)
    {
        var trim = area.IsSheet ? area.EdgeTrim : alongX ? area.EndTrim : 0;
        var start = piece.Rect.Start(alongX);
        if (trim == 0 || trim > area.Kerf || start != 0) Stop(where + ".at", cut.At.ToString(), "shaves an edge that needs no trimming");
        else if (cut.Second is not null) Stop(where + ".second", cut.Second, "is a second piece where the blade leaves one");
        else
        {
            var end = piece.Rect.End(alongX);
            CheckBlade(piece.Rect.Between(start, start + trim, alongX), piece, where);
            Lay(cut.First, cut.FirstPart, piece.Rect.Between(start + trim, end, alongX), piece.Parts, where);
        }
    }

    private void Part(Cut cut, InHand piece, bool alongX, long blade, long beyond, string where)
    {
        var (start, end) = (piece.Rect.Start(alongX), piece.Rect.End(alongX));
        var kerf = piece.Rect.Between(blade, beyond, alongX);
        CheckBlade(kerf, piece, where);
        if (cut.Second is null != beyond >= end)
            Stop(where + ".second", cut.Second ?? "", "is wrong: a second piece is there when wood remains beyond the kerf");
        if (_stopped) return;
        var (before, after) = Divide(piece.Parts, blade, alongX);
        Lay(cut.First, cut.FirstPart, piece.Rect.Between(start, blade, alongX), before, where);
        if (cut.Second is not null) Lay(cut.Second, cut.SecondPart, piece.Rect.Between(beyond, end, alongX), after, where);
    }

    private (int[] Before, int[] After) Divide(int[] parts, long blade, bool alongX) =>
        (Array.FindAll(parts, i => _parts[i].Start(alongX) < blade), Array.FindAll(parts, i => _parts[i].Start(alongX) >= blade));

    private void CheckBlade(Rect kerf, InHand piece, string where)
    {
        foreach (var part in piece.Parts)
            if (_parts[part].Overlaps(kerf) || Straddles(_parts[part], kerf))
                Stop(where, layout.Pieces[part].Part, "is cut through");
    }

    // With no kerf the blade is a line.
    private bool Straddles(Rect part, Rect kerf) =>
        area.Kerf == 0
        && ((kerf.Left == kerf.Right && part.Left < kerf.Left && kerf.Left < part.Right)
            || (kerf.Bottom == kerf.Top && part.Bottom < kerf.Bottom && kerf.Bottom < part.Top));

    private void Lay(string name, string? part, Rect rect, int[] parts, string where)
    {
        if (!_bench.TryAdd(name, new InHand(rect, parts, part))) Stop(where + ".gives", name, "is a name that is taken");
    }

    private void CheckFinished(string name, InHand piece)
    {
        var finished = piece.Parts is [var only] && _parts[only] == piece.Rect ? layout.Pieces[only].Part : null;
        if (piece.Parts.Length > 0 && finished is null)
            findings.Add(at + ".cuts", name, "still holds parts that are not cut to size: "
                + string.Join(", ", piece.Parts.Take(5).Select(i => layout.Pieces[i].Part)));
        else if (finished != piece.Named && layout.Cuts.Length > 0)
            findings.Add(at + ".cuts", name, $"is called '{piece.Named}': it is {(finished is null ? "no part" : $"part '{finished}'")}");
    }

    private void CheckKept(Rect leftover)
    {
        if (!_bench.Values.Any(piece => piece.Parts.Length == 0 && piece.Rect.Contains(leftover)))
            findings.Add(at + ".leftovers", leftover.ToString(), "is to be kept, but no piece on the bench holds it after the last cut");
    }

    private void Stop(string field, string value, string message)
    {
        findings.Add(field, value, message);
        _stopped = true;
    }

    private static readonly IFormatProvider Invariant = System.Globalization.CultureInfo.InvariantCulture;

    /// <summary>A piece on the bench, the parts that are still in it, and the part it was called.</summary>
    private sealed record InHand(Rect Rect, int[] Parts, string? Named);
}
