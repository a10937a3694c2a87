using System.Collections.Immutable;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>How much a board or panel moves across its grain.</summary>
internal static class MovementCalculator
{
    private const string MoistureHint = "write a moisture like 8%, or a humidity like 45% RH";

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice("species", "Wood", "oak-red", WoodChoices.Shrinking),
        Key.Length("width", "Width across the grain", most: "10 ft"),
        Key.Text("from", "Moisture when built", "6%").Hint(MoistureHint),
        Key.Text("to", "Moisture later", "11%").Hint(MoistureHint),
        Key.Choice(
            "cut",
            "How it is sawn",
            "flat",
            new("flat", "flatsawn: rings run along the width"),
            new("quarter", "quartersawn: rings run across it"),
            new("mixed", "mixed")
        ),
    ];

    private static readonly ImmutableArray<Remark<MovementMade>> Verdicts =
    [
        new(
            Severity.Fine,
            made => made.IsFixedSafe,
            "It hardly moves, so you can fasten it across its full width (common practice: up to about 1/16 in)."
        ),
        new(
            Severity.Watch,
            made => !made.IsFixedSafe,
            "Don't glue or screw it tight across its width: it would split or bow. Use slotted screws or buttons, or let it "
                + "float in a groove."
        ),
        new(
            Severity.Watch,
            made => made is { IsFixedSafe: false, Shrinks: true },
            made =>
                $"It shrinks, so a panel pulls out of its grooves. Let its edges in by at least "
                + $"{made.Say(made.Hold.Value)}, or pin it in the middle of each rail so that "
                + "both sides share the shrinkage. Set slotted screws at the outer end "
                + "of their slots."
        ),
        new(
            Severity.Watch,
            made => made is { IsFixedSafe: false, Shrinks: false },
            made =>
                $"It swells, so leave a panel {made.Say(made.Room.Value)} at each side. Set slotted screws at the "
                + "inner end of their slots."
        ),
        new(
            Severity.Watch,
            made => made.ByShrinkage is not null,
            made =>
                "Two tables of the Wood Handbook differ on this wood. The figure follows Table 13-5, made for this range; by the "
                + $"shrinkage in Table 4-3 it would be {made.ByShrinkage!.Figure.Text(made.Asked.Unit)}. Allow for the larger."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<MovementAsked, MovementMade>(
        "movement",
        "Movement across the grain",
        "How much a board or panel moves across its grain, and how much room to leave."
    )
    {
        Keys = Keys,
        Read = MovementAsked.Read,
        Make = MovementMade.Of,
        Results = made => made.Changes,
        Verdicts = Verdicts,
    }.Form;
}
