using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Together;

/// <summary>A store and what a trip to it costs.</summary>
/// <param name="Name">Unlike all others.</param>
/// <param name="Stock">Ids of what it sells.</param>
/// <param name="Cost">Of one trip there and back: zero or more.</param>
/// <param name="Minutes">It takes: zero or more.</param>
public sealed record StoreTrip(string Name, ImmutableHashSet<string> Stock, Money Cost, int Minutes);

/// <summary>What buying at some of the stores comes to.</summary>
/// <param name="Stores">Names of the stores that are driven to, in the order given; none where the wood on hand is
/// enough.</param>
/// <param name="Wood">What is paid for the wood.</param>
/// <param name="Trips">What the trips cost.</param>
/// <param name="Minutes">The trips take.</param>
/// <param name="Missing">Pieces that find no stock.</param>
public sealed record StoreBasket(ImmutableArray<string> Stores, Money Wood, Money Trips, int Minutes, int Missing)
{
    /// <summary>Wood and trips.</summary>
    public Money Total => Wood + Trips;
}

/// <summary>
/// Chooses where to buy: every set of stores is planned for a moment, and the one with the fewest pieces missing, then the lowest
/// cost of wood and trips, then the fewest minutes is taken. Of more than <see cref="MostSets"/> sets those of one store, of two
/// and of all are tried.
/// </summary>
public static class StoreBaskets
{
    /// <summary>Most sets of stores that are tried one by one.</summary>
    public const int MostSets = 15;

    /// <summary>Returns the baskets, best first.</summary>
    /// <param name="request">Obeys the rules noted on its members.</param>
    /// <param name="stores">All that sell some of its stock.</param>
    /// <param name="onlyOne">Whether everything is to come from one store.</param>
    /// <param name="time">For all of it; null for no clock.</param>
    /// <param name="plan">Plans one request within a time.</param>
    public static ImmutableArray<StoreBasket> Of(
        CutRequest request,
        IReadOnlyList<StoreTrip> stores,
        bool onlyOne,
        TimeSpan? time,
        Func<CutRequest, TimeSpan?, CutPlan> plan
    )
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(stores);
        ArgumentNullException.ThrowIfNull(plan);
        var sets = Sets(stores, onlyOne);
        return
        [
            .. sets.Select(set => Basket(set, plan(From(request, stores, set), time / sets.Count)))
                .DistinctBy(basket => string.Join('\n', basket.Stores))
                .OrderBy(basket => basket.Missing)
                .ThenBy(basket => basket.Total)
                .ThenBy(basket => basket.Minutes)
                .ThenBy(basket => basket.Stores.Length),
        ];
    }

    /// <summary>Returns the request with what is on hand and what the stores of a basket sell.</summary>
    /// <param name="request">The request for all stores.</param>
    /// <param name="stores">All that sell some of its stock.</param>
    /// <param name="basket">One of the baskets.</param>
    public static CutRequest From(CutRequest request, IReadOnlyList<StoreTrip> stores, StoreBasket basket)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(stores);
        ArgumentNullException.ThrowIfNull(basket);
        return From(request, stores, [.. stores.Where(store => basket.Stores.Contains(store.Name))]);
    }

    private static CutRequest From(CutRequest request, IEnumerable<StoreTrip> stores, IReadOnlyList<StoreTrip> chosen)
    {
        var passed = stores.Except(chosen).SelectMany(store => store.Stock).ToHashSet();
        return request with { Stock = [.. request.Stock.Where(stock => !passed.Contains(stock.Id))] };
    }

    // A store at which nothing is bought is not driven to.
    private static StoreBasket Basket(IEnumerable<StoreTrip> set, CutPlan plan)
    {
        var visited = set.Where(store => plan.Buy.Any(buy => store.Stock.Contains(buy.Stock))).ToList();
        return new(
            [.. visited.Select(store => store.Name)],
            plan.Buy.Aggregate(Money.Zero, (sum, buy) => sum + buy.Cost),
            visited.Aggregate(Money.Zero, (sum, store) => sum + store.Cost),
            visited.Sum(store => store.Minutes),
            plan.Unplaced.Sum(left => left.Quantity)
        );
    }

    private static List<List<StoreTrip>> Sets(IReadOnlyList<StoreTrip> stores, bool onlyOne)
    {
        List<List<StoreTrip>> sets = [.. stores.Select(store => new List<StoreTrip> { store })];
        if (onlyOne || stores.Count < 2)
            return sets;
        if ((1L << Math.Min(stores.Count, 30)) - 1 <= MostSets)
            return
            [
                .. Enumerable
                    .Range(1, (1 << stores.Count) - 1)
                    .Select(set => stores.Where((_, i) => (set & (1 << i)) != 0).ToList()),
            ];
        sets.AddRange(
            from first in Enumerable.Range(0, stores.Count)
            from second in Enumerable.Range(first + 1, stores.Count - first - 1)
            select new List<StoreTrip> { stores[first], stores[second] }
        );
        sets.Add([.. stores]);
        return sets;
    }
}
