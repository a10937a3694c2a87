using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>A draft and the state of the shop that it was made from.</summary>
/// <param name="Order">The order, as text.</param>
/// <param name="Changes">See <see cref="ShopWork.Changes"/>.</param>
/// <param name="Draft">What the order comes to.</param>
/// <param name="Advice">What to know about its materials.</param>
internal sealed record MadeDraft(string Order, long Changes, Outcome<PlanDraft> Draft, MaterialAdvice Advice);

/// <summary>Makes drafts, and hands the last one out again while neither the order nor the shop changed: an order that was
/// previewed and is then sent is worked out once.</summary>
internal sealed class PlanDrafts(ShopWork work, ReadPlans plans)
{
    private volatile MadeDraft? last;

    /// <summary>What an order comes to, as the shop stands now.</summary>
    public async Task<MadeDraft> MakeAsync(ShopContext db, PlanOrder order, CancellationToken cancel)
    {
        // Before the shop is read: a change meanwhile makes the draft newer than its number says, never older.
        var changes = work.Changes;
        var text = PlanOrderDocument.Write(order);
        if (last is { } known && known.Changes == changes && known.Order == text)
            return known;
        var shop = await Snapshot.ForOrderAsync(db, plans, order, cancel);
        return last = new MadeDraft(text, changes, RequestBuilder.Build(order, shop), MaterialAdvising.Of(order, shop));
    }

    /// <summary>Whether a draft is what its order comes to still.</summary>
    public bool IsCurrent(MadeDraft made) => made.Changes == work.Changes;
}
