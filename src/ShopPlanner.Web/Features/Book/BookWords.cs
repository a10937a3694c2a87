using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Plots;
using ShopPlanner.Scheduling.Checks;
using ShopPlanner.Services.Book;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Book;

/// <summary>The words and figures of the shop's book.</summary>
internal static class BookWords
{
    /// <summary>The figures by the name that an address has for them.</summary>
    public static IReadOnlyList<(BookFigure Figure, string Key, string Name)> Figures { get; } =
    [
        (BookFigure.Spent, "spent", "Spent"),
        (BookFigure.Bought, "bought", "Wood bought"),
        (BookFigure.Used, "used", "In parts"),
        (BookFigure.Kept, "kept", "Kept"),
        (BookFigure.Wasted, "wasted", "Waste"),
        (BookFigure.Hours, "hours", "Hours"),
    ];

    /// <summary>The figures that there are by month, project or store: time belongs to no store.</summary>
    public static IReadOnlyList<(BookFigure Figure, string Key, string Name)> FiguresBy(BookBy by) =>
        by == BookBy.Store ? [.. Figures.Where(one => one.Figure != BookFigure.Hours)] : Figures;

    /// <summary>What the book is put together by.</summary>
    public static IReadOnlyList<(BookBy By, string Key, string Name)> Ways { get; } =
    [(BookBy.Month, "month", "By month"), (BookBy.Project, "project", "By project"), (BookBy.Store, "store", "By store")];

    /// <summary>Offcuts by how long they have lain there; our own steps.</summary>
    public static IReadOnlyList<(int Below, string Name)> Ages { get; } =
    [(30, "Under a month"), (90, "One to three months"), (365, "Three months to a year"), (int.MaxValue, "Over a year")];

    /// <summary>How a figure's bars are filled.</summary>
    public static BarFill FillOf(BookFigure figure) =>
        figure switch
        {
            BookFigure.Wasted => BarFill.Hatched,
            BookFigure.Kept => BarFill.Dotted,
            _ => BarFill.Plain,
        };

    /// <summary>A group's figure; empty for nothing.</summary>
    public static string Say(BookGroup group, BookFigure figure, LengthUnit unit, string sign) =>
        !group.Of(figure).Any() ? ""
        : figure == BookFigure.Spent ? Words.Money(group.Spent, sign)
        : figure == BookFigure.Hours ? Minutes.Say(group.Minutes)
        : AreaFormat.Of(group.Wood(figure), unit);

    /// <summary>An entry's amount.</summary>
    public static string Say(BookEntry entry, LengthUnit unit, string sign) =>
        entry.Figure == BookFigure.Spent ? Words.Money(entry.Money, sign)
        : entry.Figure == BookFigure.Hours ? Minutes.Say(entry.Minutes)
        : AreaFormat.Of(entry.Area, unit);

    /// <summary>A group's figure as a bar is long.</summary>
    public static double ValueOf(BookGroup group, BookFigure figure) =>
        figure == BookFigure.Spent ? (double)group.Spent.Amount
        : figure == BookFigure.Hours ? group.Minutes
        : (double)group.Wood(figure).ToSquareFeet();

    /// <summary>How the price of a board or sheet went, store by store; null where there is one price only.</summary>
    public static LineDrawing? PricePlot(IEnumerable<PriceSeen> prices, string sign, double width)
    {
        var all = prices.ToList();
        if (all.Select(price => price.Day).Distinct().Count() < 2)
            return null;
        var lines = all.GroupBy(price => price.Store)
            .OrderByDescending(own => own.Count())
            .ThenBy(own => own.Key, StringComparer.Ordinal)
            .Take(StepPlot.MostLines)
            .Select(own => new PlotLine(
                own.Key.Length > 0 ? own.Key : "No store named",
                [
                    .. own.OrderBy(price => price.Day)
                        .Select(price => new PlotPoint(
                            price.Day.DayNumber,
                            (double)price.Price.Amount,
                            Words.Money(price.Price, sign),
                            price.WasPaid
                        )),
                ]
            ))
            .ToList();
        var days = lines.SelectMany(line => line.Points).Select(point => point.Day).ToList();
        return StepPlot.Draw(all[0].Stock, lines, (Day(days.Min()), Day(days.Max())), width);
    }

    private static string Day(int number) => DateOnly.FromDayNumber(number).ToString("MMM d, yyyy", CultureInfo.InvariantCulture);
}
