using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Where a leftover was in what it was cut from.</summary>
/// <param name="Area">As planned, or as the cuts that were made left it.</param>
/// <param name="IsTrimmed">Whether edges as bought are left out of it.</param>
internal sealed record LeftoverArea(StockArea Area, bool IsTrimmed);

/// <summary>A leftover that goes into the bin.</summary>
/// <param name="Length">As measured.</param>
/// <param name="Width">As measured.</param>
/// <param name="Area">Where it was; null where nobody knows.</param>
internal sealed record KeptLeftover(Length Length, Length Width, LeftoverArea? Area)
{
    /// <summary>The tag that was proposed for it; null for any.</summary>
    public string? Tag { get; init; }

    /// <summary>A bad place that was found on it; null for none.</summary>
    public BadPlace? Bad { get; init; }

    /// <summary>Why it is there, where it is no leftover of the plan.</summary>
    public string? Reason { get; init; }
}

/// <summary>Reads leftovers as measured. What the saw really left is believed, short of what no saw can leave.</summary>
/// <param name="layout">What was cut.</param>
/// <param name="stock">What it was cut from.</param>
/// <param name="material">Its material.</param>
/// <param name="unit">Of figures without one.</param>
/// <param name="faults">Where what is wrong is noted.</param>
internal sealed class LeftoverReader(Layout layout, CutStock stock, StoredMaterial material, LengthUnit unit, List<Fault> faults)
{
    private const int MostLeftovers = 50;

    // A board is often a little longer than it is sold as (common practice): as much is believed.
    private const decimal Slack = 1.01m;

    /// <summary>Returns those that are kept.</summary>
    /// <param name="leftovers">As typed.</param>
    /// <param name="given">The parts that the board or sheet has given.</param>
    public List<KeptLeftover> Read(IReadOnlyList<MeasuredLeftover> leftovers, IEnumerable<PlacedPiece> given)
    {
        if (leftovers.Count > MostLeftovers)
            faults.Add(new Fault("leftovers", $"{leftovers.Count}", $"are more than {MostLeftovers}"));
        var planned = leftovers.Where(leftover => leftover.Index >= 0).Select(leftover => leftover.Index).ToList();
        if (planned.Any(index => index >= layout.Leftovers.Length) || planned.Distinct().Count() < planned.Count)
            faults.Add(new Fault("leftovers", "", "name a leftover that this layout does not have, or the same one twice"));
        var kept = new List<KeptLeftover>();
        for (var i = 0; i < leftovers.Count; i++)
            if (leftovers[i].Keep)
                kept.Add(Read(leftovers[i], $"leftovers[{i}]"));
        if (faults.Count == 0)
            CheckTogether(kept, given);
        return kept;
    }

    private KeptLeftover Read(MeasuredLeftover leftover, string field)
    {
        var area = Area(leftover);
        var found = new List<Fault>();
        var (length, width) = new LeftoverSize(stock, material, unit).Read(leftover, area?.Area, found);
        var bad = found.Count == 0 && leftover.Bad is { } typed ? Bad(typed, length, width, found) : null;
        faults.AddRange(found.Select(fault => fault.At($"{field}.{fault.Field}")));
        return new(length, width, area) { Tag = leftover.Tag, Bad = bad };
    }

    private BadPlace? Bad(BadPlaceTyped typed, Length length, Length width, List<Fault> found)
    {
        var piece = new StoredPiece
        {
            Id = Guid.Empty,
            Tag = "the leftover",
            MaterialId = material.Id,
        };
        var now = new PieceNow(piece, OnHand: true, length, width, StockCondition.Sound, "", null, null);
        return new BadPlaceReader(now, unit, found).Read(typed);
    }

    private LeftoverArea? Area(MeasuredLeftover leftover)
    {
        if (leftover.Index >= 0 && leftover.Index < layout.Leftovers.Length)
        {
            var planned = layout.Leftovers[leftover.Index];
            return new(new(planned.X, planned.Y, planned.Dx, planned.Dy), IsTrimmed: true);
        }

        if (leftover.From is not { } area)
            return null;
        if (IsWithin(area))
            return new(area, IsTrimmed: false);
        faults.Add(new Fault("leftovers", "", "name a part that the stock does not have: open the page again and repeat"));
        return null;
    }

    private bool IsWithin(StockArea area) =>
        area.X >= Length.Zero
        && area.Y >= Length.Zero
        && area.Dx.IsPositive
        && area.Dy.IsPositive
        && area.X <= stock.Length - area.Dx
        && area.Y <= stock.Width - area.Dy;

    // Each may be right alone, and all of them more than there was.
    private void CheckTogether(List<KeptLeftover> kept, IEnumerable<PlacedPiece> given)
    {
        var whole = Size(stock.Length, stock.Width) * Slack;
        var parts = given.Sum(piece => Size(piece.Dx, piece.Dy));
        var left = kept.Sum(one => Size(one.Length, one.Width));
        if (left > 0 && parts + left > whole)
            faults.Add(
                Fault.Of(
                    "leftovers",
                    string.Join(" and ", kept.Select(one => $"{Say(one.Length)} × {Say(one.Width)}")),
                    $"and the parts cut so far are more than the {Say(stock.Length)} × {Say(stock.Width)} they come from: "
                        + "measure again, or leave one out"
                )
            );
    }

    private static decimal Size(Length length, Length width) => (decimal)length.Ticks * width.Ticks;

    private string Say(Length length) => LengthFormat.WithUnit(length, unit);
}
