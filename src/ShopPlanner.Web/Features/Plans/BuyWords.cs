using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Plans;

/// <summary>A line of a shopping list in plain words.</summary>
public static class BuyWords
{
    /// <summary>How many are bought: <c>2 of 3</c>, <c>3 of 3, 1 extra</c>.</summary>
    public static string Count(StockLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var count = $"{line.Have} of {line.Asked}";
        return line.Extra > 0 ? $"{count}, {line.Extra} extra" : count;
    }

    /// <summary>What else there is to know: what is still to pay, what is not to be had, what was lost.</summary>
    public static string Said(StockLine line, string sign)
    {
        ArgumentNullException.ThrowIfNull(line);
        var lost = line.Bought.Count(one => one.State == BoughtState.Gone);
        var flawed = line.Bought.Count(one => one.State == BoughtState.Flawed);
        var small = line.Bought.Count(one => one.State == BoughtState.TooSmall);
        string?[] said =
        [
            line.Left == 0 ? "all bought"
            : line.Left == line.Asked ? Words.Money(line.Price * line.Left, sign)
            : $"{line.Left} to buy, {Words.Money(line.Price * line.Left, sign)}",
            line.Left > 0 && line.Price != line.Planned ? $"planned at {Words.Money(line.Planned, sign)} each" : null,
            line.Left > 0 && line.Now is not null && !line.InStock ? "not in stock" : null,
            lost > 0 ? $"{lost} thrown away" : null,
            small > 0 ? $"{small} too small now" : null,
            flawed > 0 ? $"{flawed} not sound: plan again" : null,
        ];
        return string.Join(" · ", said.OfType<string>());
    }

    /// <summary>What was paid: <c>Paid $19.44 for 3</c>.</summary>
    public static string Paid(StockLine line, string sign)
    {
        ArgumentNullException.ThrowIfNull(line);
        return $"Paid {Words.Money(line.Paid, sign)} for {line.Bought.Length}";
    }

    /// <summary>The price of each piece bought, as text; empty where they differ.</summary>
    public static string PaidEach(StockLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Bought.Select(one => one.Price).Distinct().ToList() is [var only] ? only.ToString() : "";
    }
}
