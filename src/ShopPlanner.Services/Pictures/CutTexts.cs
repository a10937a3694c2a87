using System.Collections.Immutable;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Pictures;

/// <summary>The words beside a drawing's cuts, the same on screen and paper.</summary>
public static class CutTexts
{
    /// <summary>What each cut of a layout gives, in the order of the cuts: <c>C1 Rail, 3b remains</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layoutIndex">Index into its layouts.</param>
    /// <param name="copy">Which of the layout's copies, from 1; null names the pieces of all of them.</param>
    public static ImmutableArray<string> Gives(PlanView plan, int layoutIndex, int? copy = null)
    {
        var words = new CutWords(plan, layoutIndex, new PlanMarks(plan), copy);
        return [.. PlanPictures.Trace(plan, layoutIndex).Select(words.Gives)];
    }
}
