using System.Globalization;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Making;

/// <summary>Puts what a finish takes on the project's shopping list.</summary>
internal sealed class FinishListing(SupplyKeeping supplies)
{
    /// <summary>How much of an item stands on the list.</summary>
    public static string Amount(WorkItem item) => item.Quantity.ToString(CultureInfo.InvariantCulture);

    /// <summary>Adds the items that are missing, and brings those that were put there to today's amount.</summary>
    /// <returns>The work with what is on the list now; or why not.</returns>
    public async Task<Outcome<WorkDocument>> AddAsync(
        ShopContext db,
        Guid projectId,
        (WorkDocument Document, FinishAmounts Finish) work,
        string device,
        CancellationToken cancel
    )
    {
        var listed = work.Document.Listed;
        foreach (var item in work.Finish.Buy)
        {
            var amount = Amount(item);
            var put = work.Document.ListedOf(item.Name);
            var outcome = await supplies.PutAsync(db, projectId, (item.Name, amount), put, device, cancel);
            if (!outcome.Ok)
                return Outcome.Faulty<WorkDocument>(outcome.Faults);
            // A line that is bought, or that the builder typed, may stand at another amount.
            if (outcome.Value.Amount == amount)
                listed = listed.SetItem(item.Name, amount);
        }

        return work.Document with
        {
            Listed = listed,
        };
    }
}
