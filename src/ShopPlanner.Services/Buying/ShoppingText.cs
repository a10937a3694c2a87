using System.Globalization;
using System.Text;

namespace ShopPlanner.Services.Buying;

/// <summary>A shopping list as plain text, to be sent in a message.</summary>
public static class ShoppingText
{
    /// <summary>Returns what is still to be bought, store by store, one thing a line.</summary>
    /// <param name="list">The list.</param>
    /// <param name="sign">The shop's currency sign.</param>
    public static string Of(ShoppingList list, string sign)
    {
        ArgumentNullException.ThrowIfNull(list);
        var text = new StringBuilder();
        Line(text, $"To buy: {list.Name}");
        foreach (var store in list.Stores.Where(store => store.Lines.Any(line => line.Left > 0)))
        {
            Line(text, "");
            Line(text, store.Name.Length > 0 ? store.Name : "Boards and sheets");
            foreach (var line in store.Lines.Where(line => line.Left > 0))
                Line(text, $"- {line.Left} × {line.Name}, {sign}{line.Price} each");
            Line(text, $"About {sign}{store.Left} before tax");
        }

        foreach (var project in list.Supplies)
            Supplies(text, project, list.Supplies.Length > 1);
        if (list.Taken.Length > 0)
        {
            Line(text, "");
            Line(text, "Already on hand: " + string.Join(", ", list.Taken.Select(taken => $"{taken.Tag} {taken.Name}")));
        }

        return text.ToString();
    }

    private static void Supplies(StringBuilder text, ProjectSupplies project, bool named)
    {
        var open = project.Lines.Where(line => line is { IsNeeded: true, Bought: false }).ToList();
        if (open.Count == 0)
            return;
        Line(text, "");
        Line(text, named ? $"Hardware and supplies, {project.Name}" : "Hardware and supplies");
        foreach (var line in open)
            Line(text, $"- {line.Name}{(line.Amount.Length > 0 ? $", {line.Amount}" : "")}");
    }

    // The same on every system: a message has no carriage returns.
    private static void Line(StringBuilder text, string line) =>
        text.Append(string.Create(CultureInfo.InvariantCulture, $"{line}")).Append('\n');
}
