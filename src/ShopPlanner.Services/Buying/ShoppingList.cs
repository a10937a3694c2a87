using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;

namespace ShopPlanner.Services.Buying;

/// <summary>A board or sheet that was bought.</summary>
/// <param name="Place">Which piece of its line, from 1.</param>
/// <param name="Tag">The piece's tag in the rack.</param>
/// <param name="Price">What was paid.</param>
/// <param name="Store">Where.</param>
/// <param name="State">Where it is now.</param>
/// <param name="Device">The device that ticked it.</param>
public sealed record BoughtBoard(int Place, string Tag, Money Price, string Store, BoughtState State, string Device);

/// <summary>One kind of board or sheet to buy.</summary>
/// <param name="Stock">The stock's id in the plan's request.</param>
/// <param name="Name">E.g. <c>Pine 1x3, 8 ft</c>.</param>
/// <param name="Form">Board or sheet.</param>
/// <param name="Asked">How many the plan cuts.</param>
/// <param name="Needed">How many of those the bench still needs, bought or not.</param>
/// <param name="Left">How many are still to be bought.</param>
/// <param name="Planned">What the plan counted on for each.</param>
/// <param name="Now">What the store's price list says now; null where it has no such line.</param>
/// <param name="InStock">Whether the store had it when last seen.</param>
/// <param name="Bought">What was bought and not taken back, by place.</param>
public sealed record StockLine(
    string Stock,
    string Name,
    StockForm Form,
    int Asked,
    int Needed,
    int Left,
    Money Planned,
    Money? Now,
    bool InStock,
    ImmutableArray<BoughtBoard> Bought
)
{
    /// <summary>What one more costs, as far as is known.</summary>
    public Money Price => Now ?? Planned;

    /// <summary>How many that the plan cuts are bought.</summary>
    public int Have => Asked - Left;

    /// <summary>How many were bought beyond what the plan cuts.</summary>
    public int Extra => Math.Max(0, Bought.Count(one => IsInRack(one) || one.State == BoughtState.Cut) - Asked);

    /// <summary>The price to buy one more at, as text; empty where it is the plan's.</summary>
    public string PriceText => Price == Planned ? "" : Price.ToString();

    /// <summary>Places that can be taken back, the last first.</summary>
    public IEnumerable<int> Returnable => Bought.Where(IsInRack).Select(one => one.Place).OrderDescending();

    /// <summary>Returns the first places that are not bought yet.</summary>
    public ImmutableArray<int> FreePlaces(int count)
    {
        var taken = Bought.Select(one => one.Place).ToHashSet();
        return [.. Enumerable.Range(1, taken.Count + count).Where(place => !taken.Contains(place)).Take(count)];
    }

    /// <summary>Whether some of it is to be bought and the store was not seen without it.</summary>
    public bool IsToBuy => Left > 0 && (InStock || Now is null);

    private static bool IsInRack(BoughtBoard one) =>
        one.State is BoughtState.InRack or BoughtState.TooSmall or BoughtState.Flawed;

    /// <summary>What was paid for the line.</summary>
    public Money Paid => Bought.Aggregate(Money.Zero, (sum, one) => sum + one.Price);
}

/// <summary>What to buy at one store.</summary>
/// <param name="Name">The store's.</param>
/// <param name="Seen">The day of the oldest price that the plan counted on; null where it is not known.</param>
/// <param name="Lines">In the order of the plan.</param>
public sealed record StoreLines(string Name, DateOnly? Seen, ImmutableArray<StockLine> Lines)
{
    /// <summary>What the plan counted on for all of them.</summary>
    public Money Planned => Lines.Aggregate(Money.Zero, (sum, line) => sum + (line.Planned * line.Asked));

    /// <summary>What is still to be bought here and is not known to be out of stock.</summary>
    public IEnumerable<StockLine> Rest => Lines.Where(line => line.IsToBuy);

    /// <summary>What is still to pay here.</summary>
    public Money Left => Lines.Aggregate(Money.Zero, (sum, line) => sum + (line.Price * line.Left));
}

/// <summary>Something else that a project needs bought: hardware, screws, glue, or a line of the builder's own.</summary>
/// <param name="Project">The project.</param>
/// <param name="Key">Tells it from the project's other lines.</param>
/// <param name="Name">As asked for in a store.</param>
/// <param name="Amount">How much; may be empty.</param>
/// <param name="Own">Whether the builder wrote the line.</param>
/// <param name="IsNeeded">Whether the design still asks for it, or the builder wrote it.</param>
/// <param name="Bought">Whether it is bought.</param>
/// <param name="Price">Of the whole line; null where nobody said.</param>
public sealed record SupplyLine(
    Guid Project,
    string Key,
    string Name,
    string Amount,
    bool Own,
    bool IsNeeded,
    bool Bought,
    Money? Price
);

/// <summary>The other things that one project needs bought.</summary>
/// <param name="Project">The project.</param>
/// <param name="Name">Its name.</param>
/// <param name="Lines">The design's first, then the builder's own.</param>
public sealed record ProjectSupplies(Guid Project, string Name, ImmutableArray<SupplyLine> Lines);

/// <summary>A piece of the rack or the bin that the plan takes: a reminder, nothing is paid for it.</summary>
/// <param name="Tag">Written on it.</param>
/// <param name="Name">What it is.</param>
/// <param name="Note">What is noted about it; may be empty.</param>
public sealed record TakenLine(string Tag, string Name, string Note);

/// <summary>The money of a shopping list.</summary>
/// <param name="Planned">What the plan counted on, with the other things as far as they are priced.</param>
/// <param name="Spent">What was paid for what is on this list.</param>
/// <param name="Left">What is still to pay, at the prices known now.</param>
/// <param name="Elsewhere">What was paid for other plans of the same projects.</param>
/// <param name="Unpriced">How many of the other things have no price.</param>
public sealed record BuyTotals(Money Planned, Money Spent, Money Left, Money Elsewhere, int Unpriced);

/// <summary>The plan that a list is for.</summary>
/// <param name="Id">The plan.</param>
/// <param name="ShortId">As on screen and paper.</param>
/// <param name="State">Where it stands.</param>
public sealed record ListedPlan(Guid Id, string ShortId, PlanState State)
{
    /// <summary>Whether there is something left to cut, so that buying makes sense.</summary>
    public bool IsOpen => State is PlanState.Ready or PlanState.Cutting;
}

/// <summary>What to buy, and what of it is bought.</summary>
/// <param name="Plan">The plan; null for a project that has none.</param>
/// <param name="Name">The projects' names.</param>
/// <param name="Projects">The projects.</param>
/// <param name="Stores">Boards and sheets by store.</param>
/// <param name="Supplies">Hardware and supplies by project.</param>
/// <param name="Taken">What to take from the rack and the bin.</param>
/// <param name="Totals">The money.</param>
/// <param name="ReadUtc">When it was read.</param>
public sealed record ShoppingList(
    ListedPlan? Plan,
    string Name,
    ImmutableArray<Guid> Projects,
    ImmutableArray<StoreLines> Stores,
    ImmutableArray<ProjectSupplies> Supplies,
    ImmutableArray<TakenLine> Taken,
    BuyTotals Totals,
    DateTime ReadUtc
)
{
    /// <summary>All boards and sheets.</summary>
    public IEnumerable<StockLine> Lines => Stores.SelectMany(store => store.Lines);

    /// <summary>How many boards and sheets are still to be bought.</summary>
    public int Left => Lines.Sum(line => line.Left);

    /// <summary>Whether something to buy is not to be had, or costs another price than planned: planning again may find
    /// better.</summary>
    public bool IsWorthPlanning =>
        Plan is { IsOpen: true } && Lines.Any(line => line.Left > 0 && (!line.InStock || line.Price != line.Planned));
}
