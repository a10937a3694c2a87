using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Stability;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>Whether a piece stands.</summary>
internal static class FurnitureForms
{
    public static readonly ImmutableArray<WorkingForm> All = [StabilityForm()];

    private static WorkingForm StabilityForm() =>
        new(
            "stability",
            "Stability",
            "Whether a piece tips when its doors or drawers are open.",
            [
                new("width", "Width of the base", KeyKind.Length) { Default = "30 in", Most = "10 ft" },
                new("depth", "Depth of the base", KeyKind.Length) { Most = "5 ft" },
                new("height", "Height", KeyKind.Length) { Most = "10 ft" },
                new("weight", "Weight, empty", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Mass,
                    Least = "1 lb",
                    Most = "2000 lb",
                },
                new("doors", "Doors or drawers that open at once", KeyKind.Count)
                {
                    Default = "1",
                    Least = "0",
                    Most = "12",
                },
                new("reach", "How far each reaches out", KeyKind.Length)
                {
                    Optional = true,
                    Most = "5 ft",
                    Hint = "As deep as the base where left out",
                },
                new("open-weight", "Weight of what stands open, all together", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Mass,
                    Default = "10 lb",
                    Least = "0 lb",
                    Most = "1000 lb",
                },
                new("leaning", "Load at the end of what stands open", KeyKind.Quantity)
                {
                    Quantity = QuantityKind.Mass,
                    Default = "60 lb",
                    Least = "0 lb",
                    Most = "500 lb",
                    Hint = "60 lb stands for a child that climbs",
                },
                new("floor", "Floor", KeyKind.Choice)
                {
                    Default = "hard",
                    Choices = [new("hard", "hard floor"), new("carpet", "carpet")],
                },
            ],
            reader =>
            {
                var (depth, height, doors) = (reader.Length("depth"), reader.Length("height"), reader.Count("doors"));
                var reach = reader.MaybeLength("reach") ?? depth;
                var (weight, open, leaning) = (
                    reader.Quantity("weight"),
                    reader.Quantity("open-weight"),
                    reader.Quantity("leaning")
                );
                var carpet = reader.Choice("floor") == "carpet";
                _ = reader.Length("width");
                return () => Answer(depth, height, doors, reach, weight, open, leaning, carpet);
            }
        );

    private static FormOutcome Answer(
        Length depth,
        Length height,
        int doors,
        Length reach,
        double weight,
        double open,
        double leaning,
        bool carpet
    )
    {
        if (doors == 0)
            (open, leaning, reach) = (0, 0, Length.Zero);
        var factor = Tipping.Factor(
            Working.Given("Depth", depth),
            Working.Given("Weight", weight, QuantityKind.Mass, 0),
            Working.Given("Reach", reach),
            Working.Given("Open weight", open, QuantityKind.Mass, 0),
            Working.Given("Load leaning", leaning, QuantityKind.Mass, 0),
            carpet
        );
        return new Answer([
            double.IsFinite(factor.Value)
                ? factor
                : Working.Looked(
                    "Righting over tipping",
                    "nothing tips it",
                    new WordFigure("nothing stands out in front"),
                    Tipping.Statics
                ),
        ])
        {
            Verdicts = [.. Verdicts(factor.Value, height)],
            Cautions = [Cautions.Tipping, Cautions.WallFixing],
        };
    }

    private static IEnumerable<Verdict> Verdicts(double factor, Length height)
    {
        if (factor < 1)
            yield return new(
                Severity.Fails,
                "It tips: fix it to the wall, make the base deeper, or let only one drawer open at a time."
            );
        else if (factor < 1.5)
            yield return new(Severity.Watch, "It stands, but not by much: fix it to the wall.");
        else
            yield return new(Severity.Fine, "It stands by this reckoning, which counts no climbing, no slope and no bump.");
        if (height >= Tipping.TallFrom)
            yield return new(
                Severity.Watch,
                "At 27 in and more, anchor it to the wall whatever the figure says: a home-made piece is not tested."
            );
    }
}
