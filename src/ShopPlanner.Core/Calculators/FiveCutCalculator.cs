using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Saws;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Squareness of a sled or miter gauge by five cuts.</summary>
internal static class FiveCutCalculator
{
    // 0.005 in over 24 in (common practice for cabinets).
    private const double Square = 0.005 / 24;

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<FiveAsked, FiveMade>(
        "five-cuts",
        "Five-cut squareness",
        "How far a crosscut sled or miter gauge is off square, and how far to move its fence."
    )
    {
        Keys =
        [
            Key.Length("far", "Strip width, end away from the fence", most: "12 in").Hint("With calipers: 1.250, or 31.75 mm"),
            Key.Length("near", "Strip width, end at the fence", most: "12 in").Hint("With calipers: 1.238, or 31.45 mm"),
            Key.Length("length", "Length of the strip", least: "4 in", most: "8 ft"),
            Key.Length("pivot", "Fence, from its pivot to where you move it", "18 in", "1 in", "8 ft"),
        ],
        Read = reader =>
            new(
                reader.Unit,
                reader.Read("Far end of the strip", "far"),
                reader.Read("Strip at the fence", "near"),
                reader.Given("Strip length", "length"),
                reader.Given("From the pivot", "pivot")
            ),
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Fine,
                made => made.IsSquare,
                "Square enough for cabinet work: within 0.005 in over 24 in (0.13 mm over 600 mm; common practice)."
            ),
            new(
                Watch,
                made => !made.IsSquare && made.Radians > 0,
                made =>
                    "The cut corner is wider than square. Move the fence toward "
                    + $"the work by {made.Move.Figure.Text(made.Asked.Unit)}, "
                    + "measured at that distance from the pivot, on the side of the piece you keep. Then cut five times again."
            ),
            new(
                Watch,
                made => !made.IsSquare && made.Radians < 0,
                made =>
                    $"The cut corner is narrower than square. Move the fence away from the work by "
                    + $"{made.Move.Figure.Text(made.Asked.Unit)}, measured at that "
                    + "distance from the pivot, on the side of the piece you "
                    + "keep. Then cut five times again."
            ),
            new(
                Tip,
                "After each cut turn the piece so that the edge just cut goes against the fence. The fifth cut takes a strip off "
                    + "the first edge: measure that strip."
            ),
        ],
        Cautions = [ShopCautions.Unplugged, Cautions.Guards, Cautions.TrappedCutoff, Cautions.SmallParts],
    }.Form;

    private sealed record FiveAsked(
        LengthUnit Unit,
        Working<Length> Far,
        Working<Length> Near,
        Working<Length> Strip,
        Working<Length> Pivot
    ) : Question(Unit);

    private sealed record FiveMade(FiveAsked Asked)
    {
        private readonly Working<double> corner = SawSetup.Corner(Asked.Far, Asked.Near, Asked.Strip);

        public double Radians => SawSetup.Radians(Asked.Far.Value, Asked.Near.Value, Asked.Strip.Value);

        public bool IsSquare => Math.Abs(Radians) <= Square;

        public Working<Length> Move => SawSetup.Over("Move the fence by", Radians, corner, Asked.Pivot);

        public Working[] Sizes => [corner, SawSetup.Over("Off over the strip's length", Radians, corner, Asked.Strip), Move];
    }
}
