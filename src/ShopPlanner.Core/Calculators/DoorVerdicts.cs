using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What follows from the sizes of a door.</summary>
internal static class DoorVerdicts
{
    private static readonly Length Wide = Length.FromInches(24);
    private static readonly Length Hold = Length.FromInches(0.125m);

    public static IEnumerable<Verdict> Of(DoorAsked asked, DoorSizes door, Shims shims, Working<Length>? growth, LengthUnit unit)
    {
        string Say(Length length) => LengthFormat.WithUnit(length, unit);
        foreach (var one in Panel(asked, growth, Say))
            yield return one;
        if (door.Width.Value > Wide)
            yield return new(
                Severity.Watch,
                $"A leaf wider than about {Say(Wide)} pulls hard on its hinges (common practice): " + "two leaves are lighter."
            );
        if (asked.Gap.Value.IsPositive && shims.Count.Value == 0)
            yield return new(Severity.Watch, "The gap is thinner than half a card: set it with paper.");
        if (asked.Oversize.Value.IsPositive)
            yield return new(
                Severity.Fine,
                "Cut the parts long, and trim the door to the opening as it really is, with shims " + "all round."
            );
        yield return new(Severity.Fine, "Leave the panel free in its groove and never glue it; finish it before it goes in.");
    }

    private static IEnumerable<Verdict> Panel(DoorAsked asked, Working<Length>? growth, Func<Length, string> say)
    {
        if (growth is { } change && change.Value > asked.Across.Value * 2)
            yield return new(
                Severity.Fails,
                $"The panel grows by {say(change.Value)} across and would push the frame apart: leave at least "
                    + $"{say(Length.FromTicks((change.Value.Ticks + 1) / 2))} at each side."
            );
        if (asked.Across.Value * 2 >= asked.Groove.Value)
            yield return new(
                Severity.Fails,
                "Pushed to one side the panel slips out at the other: a deeper groove or less room " + "is wanted."
            );
        else if (asked.Groove.Value - asked.Across.Value < Hold)
            yield return new(
                Severity.Watch,
                $"The panel's edges sit less than {say(Hold)} in the groove: a deeper groove holds " + "it better."
            );
        if (asked.Panel * 3 > asked.Thickness + (Step * 3))
            yield return new(
                Severity.Watch,
                $"The groove is best a third of the frame's {say(asked.Thickness)} (Handwork in Wood): thin the "
                    + "panel's edges to "
                    + $"{say(Length.FromTicks(asked.Thickness.Ticks / 3))}, or use a thicker frame."
            );
    }

    private static Length Step => Length.FromTicks(Length.TicksPerInch / 32);
}
