using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Web.Features.Plans;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>The bench in plain words.</summary>
public static class BenchWords
{
    /// <summary>The board or sheet to go on with: the first that is not finished, else the last.</summary>
    public static BenchStock Next(BenchView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.Stocks.FirstOrDefault(stock => !stock.Finished) ?? view.Stocks[^1];
    }

    /// <summary>The board or sheet to take when this one is finished: the next in order, else one that was left out; null when it
    /// is the last.</summary>
    public static BenchStock? After(BenchView view, BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        return view
            .Stocks.Where(one => !one.Finished && one.Number != stock.Number)
            .OrderBy(one => one.Number < stock.Number)
            .FirstOrDefault();
    }

    /// <summary>The next cut of a board or sheet; null when all are made.</summary>
    public static BenchCut? NextCut(BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        return stock.Cuts.FirstOrDefault(cut => !cut.Made);
    }

    /// <summary><c>Board</c> or <c>Sheet</c>.</summary>
    public static string Noun(BenchView view, BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        return PlanWords.FormOf(view.Plan, view.Plan.Plan.Layouts[stock.Layout]) == Cutting.StockForm.Board ? "Board" : "Sheet";
    }

    /// <summary>The cuts of this very board or sheet in words, in order.</summary>
    public static ImmutableArray<CutStep> Steps(BenchView view, BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        return CutTexts.Steps(view.Plan, stock.Layout, stock.Copy);
    }

    /// <summary>The cuts in order, those that the store makes apart from those at home.</summary>
    public static IEnumerable<(string Title, IReadOnlyList<BenchCut> Cuts)> Places(BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        List<BenchCut> store = [.. stock.Cuts.Where(cut => cut.Cut.ByStore)],
            home = [.. stock.Cuts.Where(cut => !cut.Cut.ByStore)];
        if (store.Count > 0)
            yield return ("Cuts at the store", store);
        if (home.Count > 0)
            yield return (store.Count > 0 ? "Cuts at home" : "Cuts in order", home);
    }

    /// <summary>Pieces of a board or sheet that no cut has freed yet, each with mark and name.</summary>
    public static IReadOnlyList<string> NotCut(BenchView view, BenchStock stock)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        var pieces = PlanPictures.ForBench(view, stock.Number).Pieces;
        return [.. pieces.Where(piece => !piece.Done).Select(piece => $"{piece.Mark} {piece.Name}".TrimEnd())];
    }

    /// <summary>A planned size as it is offered for correction: down to the last mark of a rule that is not beyond it, so that no
    /// leftover is entered larger than it is.</summary>
    public static string Offered(Length size, LengthUnit unit) => LengthFormat.Exact(Marked(size, unit), unit);

    /// <summary>Returns a size down to the last mark of a rule that is not beyond it.</summary>
    internal static Length Marked(Length size, LengthUnit unit)
    {
        var mark =
            unit == LengthUnit.Inch ? Length.TicksPerInch / LengthFormat.FinestDenominator : Length.FromMillimetres(0.1m).Ticks;
        return Length.FromTicks(size.Ticks / mark * mark);
    }

    /// <summary>
    /// The command's id for one button of one showing of the page. Pressed twice, or sent again by the browser, it is the same
    /// command; when the page is shown again, the same button is a new one.
    /// </summary>
    /// <param name="page">A number made when the page was shown.</param>
    /// <param name="button">What the button does.</param>
    public static Guid CommandId(Guid page, string button) =>
        new(SHA256.HashData(Encoding.UTF8.GetBytes($"{page}/{button}")).AsSpan(0, 16));
}
