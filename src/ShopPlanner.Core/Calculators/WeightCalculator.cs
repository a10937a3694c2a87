using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What wood weighs, and who lifts it.</summary>
internal static class WeightCalculator
{
    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice("material", "Wood or sheet", "pine-eastern-white", WoodChoices.Strong),
        Key.Length("thickness", "Thickness", most: "2 ft").Optional(),
        Key.Length("width", "Width", most: "20 ft").Optional(),
        Key.Length("length", "Length", most: "40 ft").Optional(),
        Key.Count("count", "Pieces", "1", "1", "10000"),
        Key.Number("volume", "Or the volume in board feet", least: "0", most: "100000").Optional(),
        Key.Number("moisture", "Moisture, percent", "8", "0", "40"),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<WeightAsked, Working<double>>(
        "weight",
        "Weight",
        "What wood weighs, and whether one person can lift it."
    )
    {
        Keys = Keys,
        Read = WeightAsked.Read,
        Make = asked => Weight.Of(asked.Volume, Weight.Density(asked.Material, asked.Moisture)),
        Results = weight => [weight],
        Verdicts =
        [
            new(Severity.Fine, weight => !IsHeavy(weight.Value), weight => Lifting(weight.Value).Text),
            new(Severity.Watch, weight => IsHeavy(weight.Value), weight => Lifting(weight.Value).Text),
        ],
    }.Form;

    /// <summary>Who lifts a weight.</summary>
    /// <param name="weight">Kg.</param>
    public static Verdict Lifting(double weight) =>
        IsHeavy(weight)
            ? new(
                Severity.Watch,
                "Too heavy for one person. Use "
                    + Math.Ceiling(weight / Weight.OnePerson).ToString(CultureInfo.InvariantCulture)
                    + " people or a cart. Sheets get awkward before they get heavy."
            )
            : new(
                Severity.Fine,
                "One person can lift it if it is close to the body with a good grip (up to 51 lb, 23 kg; unverified, from the "
                    + "NIOSH equation)."
            );

    private static bool IsHeavy(double weight) => weight > Weight.OnePerson;

    private sealed record WeightAsked(
        Strength Material,
        double? BoardFeet,
        Length? Thickness,
        Length? Width,
        Length? Length,
        int Count,
        Working<double> Moisture
    )
    {
        private static readonly Area SquareFoot = Area.Of(Measures.Length.FromInches(12), Measures.Length.FromInches(12));

        public Volume Volume =>
            BoardFeet is { } feet
                ? SquareFoot * Measures.Length.FromTicks((long)Math.Round(feet * Measures.Length.TicksPerInch))
                : Area.Of(Width!.Value, Length!.Value) * Thickness!.Value * Count;

        // A volume is that of all pieces: beside it sides or a count would say the same in another way, or contradict it.
        private void Check(FormReader reader)
        {
            if (BoardFeet is null && !IsSized)
                reader.Refuse("volume", "is missing: enter it, or thickness, width and length");
            else if (BoardFeet is <= 0)
                reader.Refuse("volume", "must be more than zero");
            else if (BoardFeet is not null && (Thickness ?? Width ?? Length) is not null)
                reader.Refuse("volume", "and sides are both given: enter one or the other");
            else if (BoardFeet is not null && reader.Has("count"))
                reader.Refuse("count", "is not used with a volume: enter the volume of all pieces, or sides");
        }

        private bool IsSized => Thickness is not null && Width is not null && Length is not null;

        public static WeightAsked Read(FormReader reader)
        {
            var material = StrengthTable.Find(reader.Choice("material"))!;
            var (thickness, width) = (reader.MaybeLength("thickness"), reader.MaybeLength("width"));
            var (length, volume) = (reader.MaybeLength("length"), reader.MaybeNumber("volume"));
            var count = reader.Count("count");
            var moisture = Working.Given("Moisture", reader.Number("moisture"), QuantityKind.Percent, 0);
            WeightAsked asked = new(material, volume, thickness, width, length, count, moisture);
            if (reader.Faults.Count == 0)
                asked.Check(reader);
            return asked;
        }
    }
}
