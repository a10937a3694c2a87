using ShopPlanner.Core.Measures;
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

    /// <summary>The leftovers.</summary>
    public List<LeftoverEntry> Leftovers { get; set; } = [];

    /// <summary>To begin with: the leftovers as planned, and room for one more.</summary>
    public static FinishEntries Planned(BenchView view, BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        var (unit, layout) = (view.Plan.UnitOfLayout(stock.Layout), view.Plan.Plan.Layouts[stock.Layout]);
        var whole = view.Plan.Request.Stock.First(one => one.Id == layout.Stock).Width;
        var planned = layout.Leftovers.Select(
            (left, index) =>
                new LeftoverEntry
                {
                    Index = index,
                    Length = BenchWords.Offered(left.Dx, unit),
                    // A board that was not ripped is as wide as it was bought, to the last tick.
                    Width = left.Dy == whole ? LengthFormat.Exact(whole, unit) : BenchWords.Offered(left.Dy, unit),
                    Keep = left.Keep,
                }
        );
        return new()
        {
            Command = Guid.NewGuid(),
            Number = stock.Number,
            Leftovers = [.. planned.OrderByDescending(left => left.Keep), new() { Index = -1, Keep = true }],
        };
    }

    /// <summary>As the services take it; rows for one more that were left empty are nothing. Beside each stands its place in this form.</summary>
    public IEnumerable<(MeasuredLeftover Measured, int Place)> Measured() =>
        Leftovers
            .Select((left, place) => (left, place))
            .Where(pair => pair.left.Index >= 0 || !string.IsNullOrWhiteSpace(pair.left.Length + pair.left.Width))
            .Select(pair =>
                (new MeasuredLeftover(pair.left.Index, pair.left.Length ?? "", pair.left.Width ?? "", pair.left.Keep), pair.place)
            );
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

    /// <summary>False when it goes to the broom.</summary>
    public bool Keep { get; set; }
}
