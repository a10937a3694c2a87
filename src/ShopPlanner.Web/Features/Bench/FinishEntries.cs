using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>What was typed about a finished board or sheet.</summary>
public sealed class FinishEntries
{
    /// <summary>Made when the page was shown, so that a form sent twice does no harm.</summary>
    public Guid Command { get; set; }

    /// <summary>The board or sheet.</summary>
    public int Number { get; set; }

    /// <summary>Whether every cut was made; false where those not ticked stay uncut.</summary>
    public bool AllCutsMade { get; set; }

    /// <summary>The board or sheet to show next; null for this one.</summary>
    public int? Next { get; set; }

    /// <summary>The leftovers.</summary>
    public List<LeftoverEntry> Leftovers { get; set; } = [];

    /// <summary>To begin with: the leftovers as they should be, and room for one more.</summary>
    public static FinishEntries Expected(
        BenchView view,
        BenchStock stock,
        bool allCutsMade,
        IEnumerable<ProposedLeftover> proposed
    )
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        var (unit, layout) = (view.Plan.UnitOfLayout(stock.Layout), view.Plan.Plan.Layouts[stock.Layout]);
        var whole = view.Plan.Request.Stock.First(one => one.Id == layout.Stock).Width;
        var expected = proposed.Select(one => new LeftoverEntry
        {
            Index = one.Left.Index,
            Length = BenchWords.Offered(one.Left.Length, unit),
            // A board that was not ripped is as wide as it was bought, to the last tick.
            Width = one.Left.Width == whole ? LengthFormat.Exact(whole, unit) : BenchWords.Offered(one.Left.Width, unit),
            Keep = one.Left.Keep,
            IsScrap = !one.Left.Keep,
            From = one.Left.From,
            Tag = one.Tag,
        });
        return new()
        {
            Command = Guid.NewGuid(),
            Number = stock.Number,
            AllCutsMade = allCutsMade || stock.Cuts.All(cut => cut.Made),
            Leftovers = [.. expected, new() { Index = -1, Keep = true }],
        };
    }

    /// <summary>Reads what was sent; what is wrong with it is noted in the form.</summary>
    internal static FinishEntries Read(BenchForm form)
    {
        var entries = new FinishEntries
        {
            Command = form.Id(nameof(Command)),
            Number = form.Number(nameof(Number)),
            AllCutsMade = form.Flag(nameof(AllCutsMade)),
            Next = form.Has(nameof(Next)) ? form.Number(nameof(Next)) : null,
        };
        var rows = form.Names.ToLookup(RowOf, StringComparer.OrdinalIgnoreCase);
        while (rows.Contains(Row(entries.Leftovers.Count)))
            entries.Leftovers.Add(LeftoverEntry.Read(form, Row(entries.Leftovers.Count)));
        var read = entries.Leftovers.Select((_, place) => Row(place)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var row in rows.Where(row => IsLeftover(row.Key) && !read.Contains(row.Key)))
            form.Refuse(row.Key, "doesn't match the rows before it: open the page again and repeat");
        return entries;
    }

    /// <summary>The same as the services take it.</summary>
    public FinishedStock Finished(BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        return new(stock.Layout, stock.Copy, AllCutsMade, [.. Measured().Select(pair => pair.Measured)]);
    }

    /// <summary>
    /// Returns the entries as the services take them, without rows for one more that were left empty. Beside each stands its
    /// place in this form.
    /// </summary>
    public IEnumerable<(MeasuredLeftover Measured, int Place)> Measured() =>
        Leftovers
            .Select((left, place) => (left, place))
            .Where(pair => pair.left.Index >= 0 || !string.IsNullOrWhiteSpace(pair.left.Length + pair.left.Width))
            .Select(pair =>
                (
                    new MeasuredLeftover(pair.left.Index, pair.left.Length ?? "", pair.left.Width ?? "", pair.left.Keep)
                    {
                        From = pair.left.From,
                        Tag = pair.left.Tag,
                        Bad = pair.left.Bad?.Typed,
                    },
                    pair.place
                )
            );

    private static string Row(int place) => string.Create(CultureInfo.InvariantCulture, $"{nameof(Leftovers)}[{place}]");

    private static string RowOf(string field) =>
        field.IndexOf('.', StringComparison.Ordinal) is var dot and >= 0 && IsLeftover(field) ? field[..dot] : field;

    private static bool IsLeftover(string field) => field.StartsWith(nameof(Leftovers), StringComparison.OrdinalIgnoreCase);
}

/// <summary>One leftover as typed.</summary>
public sealed class LeftoverEntry
{
    /// <summary>Into the layout's leftovers; −1 for one that was not planned.</summary>
    public int Index { get; set; }

    /// <summary>As typed.</summary>
    public string? Length { get; set; }

    /// <summary>As typed; empty for a board of full width.</summary>
    public string? Width { get; set; }

    /// <summary>Whether it goes in the bin; otherwise it is scrap.</summary>
    public bool Keep { get; set; }

    /// <summary>Whether the plan counts it as scrap.</summary>
    public bool IsScrap { get; set; }

    /// <summary>Of one that was not planned: the part of the board or sheet that it is; null where nobody knows.</summary>
    public StockArea? From { get; set; }

    /// <summary>The tag proposed for it; null for none.</summary>
    public string? Tag { get; set; }

    /// <summary>What is bad of it; null where nobody said.</summary>
    public BadEntry? Bad { get; set; }

    /// <summary>Reads a row of the form.</summary>
    internal static LeftoverEntry Read(BenchForm form, string row) =>
        new()
        {
            Index = form.Number($"{row}.{nameof(Index)}"),
            Length = form.Text($"{row}.{nameof(Length)}"),
            Width = form.Text($"{row}.{nameof(Width)}"),
            Keep = form.Box($"{row}.{nameof(Keep)}"),
            IsScrap = form.Box($"{row}.{nameof(IsScrap)}"),
            From = form.Area($"{row}.{nameof(From)}"),
            Tag = form.Text($"{row}.{nameof(Tag)}"),
            Bad = BadEntry.Read(form, row),
        };
}
