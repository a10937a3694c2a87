using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ShopPlanner.Services.Buying;

namespace ShopPlanner.Web.Features.Shopping;

/// <summary>Reads which button of a list's form was pressed, where the page has no script.</summary>
internal static class PressedButton
{
    /// <summary>Returns what the button does; nothing for a button that the list does not have any more.</summary>
    public static IEnumerable<ShoppingTick> Read(IFormCollection form, ShoppingList list)
    {
        var pressed = form["Do"].ToString();
        var (verb, of) = pressed.Split(' ', 2) is [var first, var rest] ? (first, rest) : ("", "");
        var places = PlacesOf(verb);
        verb = verb.Split(':')[0];
        var (page, price) = (form["Page"].ToString(), form[$"Price {of}"].ToString());
        if (list.Lines.FirstOrDefault(one => one.Stock == of) is { } line)
            return Number(OfLine(verb, line, places, price), page + pressed);
        var supplies = list.Supplies.SelectMany(project => project.Lines);
        return supplies.FirstOrDefault(one => ShoppingState.KeyOf(one) == of) is { } supply
            ? Number(OfSupply(verb, supply, price), page + pressed)
            : [];
    }

    /// <summary>Returns what a button says that ticks these pieces of a line, or takes them back: sent twice, it names the
    /// same ones.</summary>
    public static string Say(string verb, IEnumerable<int> places, StockLine line) =>
        $"{verb}:{string.Join(',', places)} {line.Stock}";

    private static List<int> PlacesOf(string verb) =>
        [
            .. (verb.Split(':') is [_, var list] ? list.Split(',') : [])
                .Select(text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : 0)
                .Where(place => place > 0)
                .Take(ShoppingEndpoints.Most),
        ];

    private static IEnumerable<ShoppingTick> OfLine(string verb, StockLine line, List<int> places, string price) =>
        verb switch
        {
            "buy" => places.Select(place => Buy(line, place)),
            "back" => places.Select(place => Back(line, place)),
            "price" => [new ShoppingTick(Guid.Empty, "seen") { Stock = line.Stock, Price = price }],
            "gone" or "here" => [new ShoppingTick(Guid.Empty, "seen") { Stock = line.Stock, InStock = verb == "here" }],
            _ => [],
        };

    private static IEnumerable<ShoppingTick> OfSupply(string verb, SupplyLine line, string price)
    {
        var tick = new ShoppingTick(Guid.Empty, "supply") { Project = line.Project, Key = line.Key };
        return verb switch
        {
            "tick" or "untick" => [tick with { Bought = verb == "tick" }],
            "cost" => [tick with { Price = price }],
            _ => [],
        };
    }

    private static ShoppingTick Buy(StockLine line, int place) =>
        new(Guid.Empty, "buy")
        {
            Stock = line.Stock,
            Place = place,
            Price = line.PriceText,
        };

    private static ShoppingTick Back(StockLine line, int place) => new(Guid.Empty, "back") { Stock = line.Stock, Place = place };

    // One showing of the page and one button are one command, however often the form is sent.
    private static IEnumerable<ShoppingTick> Number(IEnumerable<ShoppingTick> ticks, string pressed) =>
        ticks.Select(tick =>
            tick with
            {
                Id = new Guid(SHA256.HashData(Encoding.UTF8.GetBytes($"{pressed} {tick.Place}")).AsSpan(0, 16)),
            }
        );
}
