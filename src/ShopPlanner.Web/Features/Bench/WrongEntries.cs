using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>What was typed about a cut that went wrong.</summary>
public sealed class WrongEntries
{
    /// <summary>Made when the page was shown, so that a form sent twice does no harm.</summary>
    public Guid Command { get; set; }

    /// <summary>The board or sheet.</summary>
    public int Number { get; set; }

    /// <summary>The cut.</summary>
    public int Cut { get; set; }

    /// <summary>Why.</summary>
    public WrongReason Reason { get; set; }

    /// <summary>The pieces that may be wrong.</summary>
    public List<WrongPieceEntry> Pieces { get; set; } = [];

    /// <summary>What the cut gave that is to be cut further.</summary>
    public List<WrongRestEntry> Rests { get; set; } = [];

    /// <summary>To begin with: the only piece of a cut is the wrong one.</summary>
    public static WrongEntries Of(WrongCutStart start)
    {
        ArgumentNullException.ThrowIfNull(start);
        var (plan, layout) = (start.View.Plan, start.Stock.Layout);
        var unit = plan.UnitOfLayout(layout);
        var isOne = start.Given.Count(piece => piece.IsOfCut) == 1;
        var stock = plan.Request.Stock.First(one => one.Id == plan.Plan.Layouts[layout].Stock);
        var material = plan.Request.Materials.Single(one => one.Id == stock.Material);
        string Width(StockArea area) =>
            area.Dy == stock.Width ? LengthFormat.Exact(area.Dy, unit) : BenchWords.Offered(area.Dy, unit);
        return new()
        {
            Command = Guid.NewGuid(),
            Number = start.Stock.Number,
            Cut = start.Cut.N,
            Pieces =
            [
                .. start.Given.Select(piece => new WrongPieceEntry
                {
                    Piece = piece.Piece,
                    IsWrong = isOne && piece.IsOfCut,
                    Length = BenchWords.Offered(piece.Area.Dx, unit),
                    Width = Width(piece.Area),
                    Keep = plan.Request.Keep.Keeps(material, piece.Area.Dx, piece.Area.Dy),
                }),
            ],
            Rests =
            [
                .. start.Rests.Select(area => new WrongRestEntry
                {
                    From = area,
                    Length = BenchWords.Offered(area.Dx, unit),
                    Width = Width(area),
                }),
            ],
        };
    }

    /// <summary>Reads what was sent; what is wrong with it is noted in the form.</summary>
    internal static WrongEntries Read(BenchForm form)
    {
        var entries = new WrongEntries
        {
            Command = form.Id(nameof(Command)),
            Number = form.Number(nameof(Number)),
            Cut = form.Number(nameof(Cut)),
        };
        if (Enum.TryParse<WrongReason>(form.Text(nameof(Reason)), out var reason) && Enum.IsDefined(reason))
            entries.Reason = reason;
        else
            form.Refuse(nameof(Reason), "is none of the list: choose one");
        for (var i = 0; form.Has($"{Row(nameof(Pieces), i)}.Piece"); i++)
            entries.Pieces.Add(WrongPieceEntry.Read(form, Row(nameof(Pieces), i)));
        for (var i = 0; form.Has($"{Row(nameof(Rests), i)}.From"); i++)
            entries.Rests.Add(WrongRestEntry.Read(form, Row(nameof(Rests), i)));
        return entries;
    }

    /// <summary>The same as the services take it.</summary>
    public WrongCut Wrong(Guid plan) =>
        new(
            plan,
            Number,
            Cut,
            Reason,
            [.. Wrongs.Select(one => new WrongPiece(one.Entry.Piece, one.Entry.Length, one.Entry.Width, one.Entry.Keep))],
            [.. Rests.Select(rest => new MeasuredRest(rest.From, rest.Length, rest.Width))]
        );

    /// <summary>Returns faults of the services under the names that this form has.</summary>
    public ImmutableArray<Fault> InForm(ImmutableArray<Fault> faults)
    {
        var places = Wrongs.Select(one => one.Place).ToArray();
        return
        [
            .. faults.Select(fault =>
                Enumerable
                    .Range(0, places.Length)
                    .Where(i => fault.Field.StartsWith($"pieces[{i}].", StringComparison.Ordinal))
                    .Select(i => fault.At(fault.Field.Replace($"pieces[{i}]", $"Pieces[{places[i]}]", StringComparison.Ordinal)))
                    .FirstOrDefault(fault)
            ),
        ];
    }

    /// <summary>The pieces said to be wrong, each with its place in the form.</summary>
    private IEnumerable<(WrongPieceEntry Entry, int Place)> Wrongs =>
        Pieces.Select((entry, place) => (entry, place)).Where(one => one.entry.IsWrong);

    private static string Row(string list, int place) => string.Create(CultureInfo.InvariantCulture, $"{list}[{place}]");
}

/// <summary>A piece that may be wrong, as typed.</summary>
public sealed class WrongPieceEntry
{
    /// <summary>Index into the layout's pieces.</summary>
    public int Piece { get; set; }

    /// <summary>Whether it is of no use as its part.</summary>
    public bool IsWrong { get; set; }

    /// <summary>What is left of it, as typed.</summary>
    public string Length { get; set; } = "";

    /// <summary>What is left of it, as typed.</summary>
    public string Width { get; set; } = "";

    /// <summary>Whether what is left is kept.</summary>
    public bool Keep { get; set; }

    internal static WrongPieceEntry Read(BenchForm form, string row) =>
        new()
        {
            Piece = form.Number($"{row}.Piece"),
            IsWrong = form.Box($"{row}.IsWrong"),
            Length = form.Text($"{row}.Length") ?? "",
            Width = form.Text($"{row}.Width") ?? "",
            Keep = form.Box($"{row}.Keep"),
        };
}

/// <summary>What a cut gave to be cut further, as measured.</summary>
public sealed class WrongRestEntry
{
    /// <summary>Where it lies, as planned.</summary>
    public StockArea From { get; set; }

    /// <summary>As typed.</summary>
    public string Length { get; set; } = "";

    /// <summary>As typed.</summary>
    public string Width { get; set; } = "";

    internal static WrongRestEntry Read(BenchForm form, string row) =>
        new()
        {
            From = form.Area($"{row}.From") ?? default,
            Length = form.Text($"{row}.Length") ?? "",
            Width = form.Text($"{row}.Width") ?? "",
        };
}
