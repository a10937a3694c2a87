using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Saws;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>The kerf of a blade, by strips.</summary>
internal static class KerfCalculator
{
    private const int FewStrips = 4;
    private static readonly Length WideKerf = Length.FromInches(0.25m);

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<KerfAsked, KerfAsked>(
        "kerf",
        "Kerf of your blade",
        "How wide your blade really cuts, from strips sawn off a measured board."
    )
    {
        Keys =
        [
            Key.Length("board", "Width of the board before", most: "10 ft"),
            Key.Count("count", "Strips sawn off", "5", "1", "50").Hint("One cut for each"),
            Key.Length("strip", "Width of each strip", most: "4 ft").Hint("Measure several, and take the middle"),
            Key.LengthOrZero("rest", "Width of what is left", most: "10 ft"),
        ],
        Read = reader =>
            new(
                reader.Unit,
                reader.Given("Board", "board"),
                Working.Given("Strips", reader.Count("count"), QuantityKind.Bare, 0),
                reader.Given("Strip", "strip"),
                reader.Given("What is left", "rest")
            ),
        Refusals =
        [
            new(
                "rest",
                asked => !asked.Kerf.Value.IsPositive,
                asked => $"and the strips leave nothing for the saw: together less than {asked.Say(asked.Board.Value)}"
            ),
        ],
        Make = asked => asked,
        Results = asked => [asked.Kerf],
        Verdicts =
        [
            new(
                Watch,
                asked => asked.Kerf.Value > WideKerf,
                "No single blade cuts this wide. Measure again, unless it is a dado set."
            ),
            new(
                Watch,
                asked => asked.Strips.Value < FewStrips,
                "With so few strips a small measuring error shows: saw five or more."
            ),
            new(
                Tip,
                "A measuring error is spread over all the cuts: with ten strips, 1/32 in (0.8 mm) comes to 0.003 in (0.08 mm). "
                    + "Set this kerf in Setup for the saw."
            ),
        ],
        Cautions = [Cautions.Guards, Cautions.TrappedCutoff, Cautions.SmallParts],
    }.Form;

    private sealed record KerfAsked(
        LengthUnit Unit,
        Working<Length> Board,
        Working<double> Strips,
        Working<Length> Strip,
        Working<Length> Rest
    ) : Question(Unit)
    {
        public Working<Length> Kerf { get; } = SawSetup.Kerf(Board, Strips, Strip, Rest);
    }
}
