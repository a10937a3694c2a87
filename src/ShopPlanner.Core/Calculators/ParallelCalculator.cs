using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Saws;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>Blade and fence of a table saw.</summary>
internal static class ParallelCalculator
{
    // 0.003 in across a blade, and never more than a hair closing (common practice).
    private static readonly Length Close = Length.FromInches(0.003m);
    private static readonly Length Open = Length.FromInches(0.015m);

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<ParallelAsked, ParallelMade>(
        "parallel",
        "Fence and blade parallel",
        "How far a table saw's blade or fence is off parallel, which way, and how far to move it."
    )
    {
        Keys =
        [
            Key.Choice("what", "What you measured", "fence", new("fence", "blade to fence"), new("blade", "miter slot to blade")),
            Key.Length("front", "Distance at the front of the blade", most: "24 in")
                .Hint("With calipers: 6.003, or 152.48 mm. Blade: to one marked tooth, turned to the front"),
            Key.Length("back", "Distance at the back of the blade", most: "24 in")
                .Hint("Blade: to the same tooth, turned to the back"),
            Key.Length("length", "Between the two places", least: "1 in", most: "48 in"),
            Key.Length("reach", "Length over which you adjust", most: "72 in")
                .Optional()
                .Hint("The fence's length, for one. Blank = between the two places"),
        ],
        Read = reader =>
        {
            var apart = reader.Given("Between the two places", "length");
            return new(
                reader.Unit,
                reader.Choice("what") == "fence",
                reader.Read("At the front", "front"),
                reader.Read("At the back", "back"),
                apart,
                reader.MaybeGiven("Length adjusted", "reach") ?? apart
            );
        },
        Make = asked => new(asked),
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Safety,
                made => made is { IsFence: true, Closing: { IsPositive: true } closing } && closing > Close,
                made =>
                    "The fence closes in behind the blade: the piece is pinched "
                    + "and thrown back. Don't rip with it. Move its back end "
                    + $"away from the blade by {made.Move.Figure.Text(made.Asked.Unit)}."
            ),
            new(
                Watch,
                made => made.IsFence && made.Closing < -Open,
                made =>
                    "The fence opens more than it should, so the piece wanders off it. Move its back end toward the blade by "
                    + $"{made.Move.Figure.Text(made.Asked.Unit)}, and stop before it closes."
            ),
            new(
                Fine,
                made => made.IsFence && made.Closing <= Close && made.Closing >= -Open,
                "Good: parallel, or a hair open behind the blade. It must never close in there."
            ),
            new(
                Watch,
                made => !made.IsFence && made.Off > Close,
                made =>
                    "Move the blade's mounting, or the table, until both "
                    + $"distances agree: by {made.Move.Figure.Text(made.Asked.Unit)} "
                    + "over the length adjusted. The saw's manual says how. Then set the fence to the slot."
            ),
            new(
                Fine,
                made => !made.IsFence && made.Off <= Close,
                "The blade is parallel to the slot within 0.003 in (0.08 mm; common practice)."
            ),
        ],
        MostSevereFirst = true,
        Cautions = [ShopCautions.Unplugged, Cautions.Guards],
    }.Form;

    private sealed record ParallelAsked(
        LengthUnit Unit,
        bool IsFence,
        Working<Length> Front,
        Working<Length> Back,
        Working<Length> Apart,
        Working<Length> Reach
    ) : Question(Unit);

    private sealed record ParallelMade(ParallelAsked Asked)
    {
        private readonly Working<double> angle = SawSetup.Parallel(Asked.Front, Asked.Back, Asked.Apart);

        public bool IsFence => Asked.IsFence;

        // More than zero where the distance is smaller at the back.
        public Length Closing => Asked.Front.Value - Asked.Back.Value;

        public Length Off => Length.FromTicks(Math.Abs(Closing.Ticks));

        public Working<Length> Move =>
            SawSetup.Over("Move the back end by", (double)Off.Ticks / Asked.Apart.Value.Ticks, angle, Asked.Reach);

        public Working[] Sizes =>
            [
                angle,
                Working.Of(
                    "Difference, front to back",
                    Off,
                    new FineLengthFigure(Off),
                    "{front} − {back}, without a sign",
                    Working.Geometry,
                    ("front", Asked.Front),
                    ("back", Asked.Back)
                ),
                Move,
            ];
    }
}
