using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans.Ordering;

internal sealed class OrderAdvice(ShopWork work, PlanDrafts drafts) : IOrderAdvice
{
    public Task<MaterialAdvice> OfAsync(PlanOrder order, CancellationToken cancel = default) =>
        work.ReadAsync(async db => (await drafts.MakeAsync(db, order, cancel)).Advice, cancel);
}
