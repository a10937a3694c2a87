using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Sawing;

/// <summary>Says of a part that is cut long what is cut now and what is left of it later, the same on screen and paper.</summary>
public static class TrimWords
{
    /// <summary><c>cut 35″ long, trim to 34 ½″ later</c>; null for a part that is cut to size.</summary>
    /// <param name="part">The part.</param>
    /// <param name="unit">Of the figures.</param>
    public static string? Of(CutPart part, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(part);
        string Say(Length length) => LengthFormat.WithUnit(length, unit);
        return (part.FinishedLength, part.FinishedWidth) switch
        {
            (null, null) => null,
            ({ } length, null) => $"cut {Say(part.Length)} long, trim to {Say(length)} later",
            (null, { } width) => $"cut {Say(part.Width)} wide, trim to {Say(width)} later",
            ({ } length, { } width) => $"cut {Say(part.Length)} × {Say(part.Width)}, trim to {Say(length)} × {Say(width)} later",
        };
    }
}
