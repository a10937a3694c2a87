using System.Collections.Immutable;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>How much a board or panel moves across its grain.</summary>
internal static class MovementCalculator
{
    private const string MoistureHint = "write percent of moisture, 8 %, or a humidity, 45 % RH";

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice("species", "Wood", "oak-red", WoodChoices.Shrinking),
        Key.Length("width", "Width across the grain", most: "10 ft"),
        Key.Text("from", "Moisture when built", "6 %").Hint(MoistureHint),
        Key.Text("to", "Moisture it may come to", "11 %").Hint(MoistureHint),
        Key.Choice(
            "cut",
            "How it is sawn",
            "flat",
            new("flat", "flat-sawn: rings along the width"),
            new("quarter", "quarter-sawn: rings across it"),
            new("mixed", "mixed")
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<MovementAsked, MovementMade>(
        "movement",
        "Movement across the grain",
        "How much a board or panel moves across its grain, and what room it wants."
    )
    {
        Keys = Keys,
        Read = MovementAsked.Read,
        Make = asked => new(asked.Width, Movement.Change(asked.Wood, asked.Width, asked.From, asked.To, asked.Sawn)),
        Results = made => made.Changes,
        Verdicts =
        [
            new(
                Severity.Fine,
                made => made.IsFixedSafe,
                "It may be fastened all across: it hardly moves (common practice: up to about 1/16 in)."
            ),
            new(
                Severity.Watch,
                made => !made.IsFixedSafe,
                "Do not glue or screw it fast across its width: it would split or bow. Slotted screws, buttons, or free in a "
                    + "groove."
            ),
        ],
    }.Form;
}
