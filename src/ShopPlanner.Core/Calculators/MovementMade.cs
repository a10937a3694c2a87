using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Movement worked out.</summary>
/// <param name="Asked">What it was worked out from.</param>
/// <param name="Change">Of the width.</param>
/// <param name="ByShrinkage">What the other table makes of it; null where both agree.</param>
internal sealed record MovementMade(MovementAsked Asked, Working<Length> Change, Working<Length>? ByShrinkage)
{
    // Common practice: so much of a panel's edge stays in its groove.
    private static readonly Length StaysIn = Length.FromInches(0.125m);
    private static readonly SourceNote HoldRule = new(
        "Geometry: all of it comes out at one side when the panel sticks at the other; 1/8 in that stays in is common practice",
        Certainty.CommonPractice
    );

    /// <summary>Whether it moves so little that it may be fixed across its width.</summary>
    public bool IsFixedSafe => Movement.IsFixedSafe(Change.Value);

    /// <summary>Whether it gets narrower.</summary>
    public bool Shrinks => Change.Value < Length.Zero;

    /// <summary>Room for a panel that swells, at each side.</summary>
    public Working<Length> Room
    {
        get
        {
            var half = LengthSteps.HalfMarkUp(Length.FromTicks((Size.Ticks + 1) / 2), Asked.Unit);
            return Working.Of(
                "Clearance for a panel at each side",
                half,
                "{change} ÷ 2, up to the next half mark of the rule",
                Working.Geometry,
                ("change", Change)
            );
        }
    }

    /// <summary>How deep the edges of a panel that shrinks must sit in their grooves.</summary>
    public Working<Length> Hold =>
        Working.Of(
            "Panel's edges in the groove, at least",
            RuleMarks.Up(Size + StaysIn, Asked.Unit),
            "{change} + 1/8 in, up to the next mark of the rule",
            HoldRule,
            ("change", Change)
        );

    /// <summary>The change, the width then, and what it wants.</summary>
    public IEnumerable<Working> Changes => [Change, After, Slot, Shrinks ? Hold : Room];

    private Length Size => Length.FromTicks(Math.Abs(Change.Value.Ticks));

    private Working<Length> After =>
        Working.Of(
            "New width",
            Asked.Width.Value + Change.Value,
            "{width} + {change}",
            Working.Geometry,
            ("width", Asked.Width),
            ("change", Change)
        );

    private Working<Length> Slot =>
        Working.Of(
            "Slot length beyond the screw, total",
            RuleMarks.Up(Size, Asked.Unit),
            "{change}, up to the next mark of the rule",
            Movement.FixedRule,
            ("change", Change)
        );

    public static MovementMade Of(MovementAsked asked) =>
        new(
            asked,
            Movement.Change(asked.Wood, asked.Width, asked.From, asked.To, asked.Sawn),
            Movement.ByShrinkage(asked.Wood, asked.Width, asked.From, asked.To, asked.Sawn)
        );

    /// <summary>The length as a person reads it.</summary>
    public string Say(Length length) => Asked.Say(length);
}
