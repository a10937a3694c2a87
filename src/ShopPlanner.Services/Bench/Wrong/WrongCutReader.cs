using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>Reads what is said about a wrong cut.</summary>
internal sealed class WrongCutReader(BenchPlan plan, WrongCutStart start, StoredMaterial material, List<Fault> faults)
{
    /// <summary>Returns what can be said about a cut; null where there is no such board or cut.</summary>
    /// <param name="view">The plan at the bench.</param>
    /// <param name="number">The board or sheet.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="wrong">Pieces of the board that are known to be wrong already.</param>
    public static WrongCutStart? Start(BenchView view, int number, int cut, IReadOnlySet<int> wrong)
    {
        if (view.Stocks.FirstOrDefault(one => one.Number == number) is not { } stock)
            return null;
        if (stock.Cuts.FirstOrDefault(one => one.Cut.N == cut)?.Cut is not { } own)
            return null;
        var (layout, marks) = (view.Plan.Plan.Layouts[stock.Layout], new PlanMarks(view.Plan));
        var made = Made(stock, cut);
        var trace = PlanLayouts.Trace(view.Plan, stock.Layout);
        var traced = trace.FirstOrDefault(one => one.Cut.N == cut);
        var ofCut = traced is null ? [] : PlanLayouts.PartsOf(traced).ToHashSet();
        var given = PlanLayouts
            .Given(view.Plan.Request, layout, made, stock.Finished)
            .Where(i => !wrong.Contains(i))
            .Select(i => (Index: i, Piece: layout.Pieces[i]))
            .Select(one => new GivenPiece(
                one.Index,
                marks.Of(stock.Layout, one.Index, stock.Copy),
                view.Plan.Parts[one.Piece.Part].Name,
                new(one.Piece.X, one.Piece.Y, one.Piece.Dx, one.Piece.Dy),
                ofCut.Contains((one.Piece.Part, one.Piece.X, one.Piece.Y))
            ));
        return new(
            view,
            stock,
            own,
            [.. given.OrderByDescending(piece => piece.IsOfCut)],
            stock.Finished || traced is null ? [] : [.. RestsOf(view, stock, made, traced)]
        );
    }

    /// <summary>Returns the cuts of a board that are made, the wrong one among them.</summary>
    public static HashSet<int> Made(BenchStock stock, int cut) =>
        [.. stock.Cuts.Where(one => one.Made || one.Cut.N == cut).Select(one => one.Cut.N)];

    /// <summary>Returns the wrong cut; what is wrong with it is noted.</summary>
    public ReadWrongCut Read(WrongCut wrong)
    {
        var pieces = new List<(GivenPiece, KeptLeftover?)>();
        foreach (var (i, piece) in wrong.Pieces.Index())
            if (start.Given.FirstOrDefault(one => one.Piece == piece.Piece) is { } given)
                pieces.Add((given, piece.Keep ? Left(piece, given, $"pieces[{i}]") : null));
            else
                faults.Add(new Fault($"pieces[{i}]", $"{piece.Piece}", "is not cut, or was marked as wrong already"));
        if (wrong.Pieces.Select(piece => piece.Piece).Distinct().Count() < wrong.Pieces.Count)
            faults.Add(new Fault("pieces", "", "name the same piece twice"));
        var rests = Rests(wrong.Rests);
        if (faults.Count == 0 && pieces.Count == 0 && rests.All(rest => IsAsPlanned(rest.Key, rest.Value)))
            faults.Add(new Fault("pieces", "", "are missing: check each piece that can't be used, or correct a size"));
        var at = new BenchPlace(start.Stock.Layout, start.Stock.Copy);
        return new(at, start.Cut, wrong.Reason, start, pieces, rests);
    }

    private static IEnumerable<StockArea> RestsOf(BenchView view, BenchStock stock, HashSet<int> made, TracedCut cut)
    {
        var inHand = Remaining.InHand(view.Plan, stock.Layout, made).ToHashSet();
        return new[] { cut.First, cut.Second }.OfType<StockArea>().Where(inHand.Contains);
    }

    private static bool IsAsPlanned(StockArea area, (Length Length, Length Width) size) =>
        (area.Dx, area.Dy) == (size.Length, size.Width);

    private KeptLeftover Left(WrongPiece piece, GivenPiece given, string field)
    {
        var (length, width) = Size(piece.Length, piece.Width, given.Area, field);
        return new(length, width, new(given.Area, IsTrimmed: false))
        {
            Reason = $"left of {given.Mark}, cut wrong: {plan.Record.Stored.Name}",
        };
    }

    private Dictionary<StockArea, (Length Length, Length Width)> Rests(IReadOnlyList<MeasuredRest> measured)
    {
        var rests = new Dictionary<StockArea, (Length, Length)>();
        foreach (var (i, rest) in measured.Index())
            if (!start.Rests.Contains(rest.From) || !rests.TryAdd(rest.From, Size(rest, $"rests[{i}]")))
                faults.Add(new Fault($"rests[{i}]", "", "is no piece that this cut gave: open the page again and repeat"));
        return rests;
    }

    // What was offered and left as it stood is the planned size, to the last tick.
    private (Length Length, Length Width) Size(MeasuredRest rest, string field)
    {
        var (length, width) = Size(rest.Length, rest.Width, rest.From, field);
        return (Planned(length, rest.From.Dx), Planned(width, rest.From.Dy));
    }

    private static Length Planned(Length measured, Length planned) =>
        planned - measured is var less && less >= Length.Zero && less < OfferedMark ? planned : measured;

    // A size is offered at the mark of a rule below it: a sixty-fourth of an inch, or a tenth of a millimeter.
    private static Length OfferedMark => Length.FromTicks(Length.TicksPerInch / LengthFormat.FinestDenominator);

    private (Length Length, Length Width) Size(string length, string width, StockArea expected, string field)
    {
        var found = new List<Fault>();
        var (layout, unit) = (start.Stock.Layout, start.View.Plan.UnitOfLayout(start.Stock.Layout));
        var size = new LeftoverSize(plan.StockOf(layout), material, unit).Read(
            new(-1, length, width, Keep: true),
            expected,
            found
        );
        faults.AddRange(found.Select(fault => fault.At($"{field}.{fault.Field}")));
        return size;
    }
}
