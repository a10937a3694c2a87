using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stores;

/// <summary>What a trip to a store costs, as text and as it is counted.</summary>
internal static class StoreTripReader
{
    // A store a day's drive away is a slip.
    private const int MostMinutes = 24 * 60;

    /// <summary>Empty where a trip costs nothing.</summary>
    public static string CostText(StoredStore store) => store.TripCost == Money.Zero ? "" : store.TripCost.ToString();

    /// <summary>Empty where it takes no time.</summary>
    public static string MinutesText(StoredStore store) =>
        store.TripMinutes == 0 ? "" : store.TripMinutes.ToString(CultureInfo.InvariantCulture);

    /// <summary>What a page typed; wrong texts add a fault.</summary>
    public static (Money Cost, int Minutes) Read(StoreView wanted, List<Fault> faults) =>
        (Cost(wanted, faults), Minutes(wanted, faults));

    private static Money Cost(StoreView wanted, List<Fault> faults)
    {
        if (wanted.TripCost.Trim().Length == 0)
            return Money.Zero;
        var parsed = MoneyText.Parse(wanted.TripCost);
        if (parsed.Ok)
            return parsed.Value;
        faults.Add(parsed.Fault.At(nameof(wanted.TripCost)));
        return Money.Zero;
    }

    private static int Minutes(StoreView wanted, List<Fault> faults)
    {
        var text = wanted.TripMinutes.Trim();
        if (text.Length == 0)
            return 0;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) && minutes <= MostMinutes)
            return minutes;
        faults.Add(
            Fault.Of(
                nameof(wanted.TripMinutes),
                wanted.TripMinutes,
                $"isn't a number of minutes: write a whole number up to {MostMinutes}, or leave it blank"
            )
        );
        return 0;
    }
}
