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

    /// <summary>True where every cut was made; false where those not ticked stay uncut.</summary>
    public bool AllCutsMade { get; set; }

    /// <summary>The leftovers.</summary>
    public List<LeftoverEntry> Leftovers { get; set; } = [];

    /// <summary>To begin with: the leftovers as they should be, and room for one more.</summary>
    public static FinishEntries Expected(BenchView view, BenchStock stock, bool allCutsMade)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        var (unit, layout) = (view.Plan.UnitOfLayout(stock.Layout), view.Plan.Plan.Layouts[stock.Layout]);
        var whole = view.Plan.Request.Stock.First(one => one.Id == layout.Stock).Width;
        var expected = Remaining
            .Of(view, stock, allCutsMade)
            .Select(left => new LeftoverEntry
            {
                Index = left.Index,
                Length = BenchWords.Offered(left.Length, unit),
                // A board that was not ripped is as wide as it was bought, to the last tick.
                Width = left.Width == whole ? LengthFormat.Exact(whole, unit) : BenchWords.Offered(left.Width, unit),
                Keep = left.Keep,
                IsForTheBroom = !left.Keep,
            });
        return new()
        {
            Command = Guid.NewGuid(),
            Number = stock.Number,
            AllCutsMade = allCutsMade || stock.Cuts.All(cut => cut.Made),
            Leftovers = [.. expected, new() { Index = -1, Keep = true }],
        };
    }

    /// <summary>The same as the services take it.</summary>
    public FinishedStock Finished(BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        return new(stock.Layout, stock.Copy, AllCutsMade, [.. Measured().Select(pair => pair.Measured)]);
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

    /// <summary>True where it would be swept up, unless somebody thinks better of it.</summary>
    public bool IsForTheBroom { get; set; }
}
