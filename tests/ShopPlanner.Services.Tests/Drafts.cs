using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;

namespace ShopPlanner.Services.Tests;

/// <summary>Plans ready to be stored that want one piece of the bin, made while it was free.</summary>
internal static class Drafts
{
    public static async Task<(PlanDraft Draft, CutPlan Plan)> WantingAsync(PlannedShop given, string tag)
    {
        var (order, plans) = (given.Order(), given.Shop.Get<ReadPlans>());
        var shop = await given.Shop.Work.ReadAsync(
            db => Snapshot.ForOrderAsync(db, plans, order, TestShop.Cancel),
            TestShop.Cancel
        );
        var draft = RequestBuilder.Build(order, shop).Value!;
        var request = draft.Request with { Stock = [.. draft.Request.Stock.Where(stock => stock.Id == tag)] };
        return (draft, new FirstFitPlanner().Plan(request, new SearchControl()));
    }
}
