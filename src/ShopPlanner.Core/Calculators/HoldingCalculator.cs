using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Severity;

namespace ShopPlanner.Core.Calculators;

/// <summary>What screws hold.</summary>
internal static class HoldingCalculator
{
    private static readonly ImmutableArray<FormChoice> Woods =
    [
        .. StrengthTable.All.Where(row => !row.IsPanel).Select(row => new FormChoice(row.Id, row.Name)),
    ];

    private static readonly ImmutableArray<FormKey> Keys =
    [
        Key.Choice("species", "Wood that holds the thread", "pine-eastern-white", Woods).Hint("Not sure? Keep the lightest"),
        Key.Number("gravity", "Specific gravity instead", least: "0.25", most: "1").Optional(),
        Key.Choice(
            "gauge",
            "Screw",
            "8",
            [.. ScrewHolding.Screws.Select(one => new FormChoice(Number(one.Gauge), $"#{one.Gauge}"))]
        ),
        Key.Length("thread", "Thread in that wood", "1 in", "1/8 in", "6 in").Hint("The point doesn't count"),
        Key.Length("thickness", "Thickness of the piece it holds", "3/4 in", "1/8 in", "6 in"),
        Key.Choice("grain", "Thread goes into", "side", new("side", "side grain"), new("end", "end grain")),
        Key.Count("count", "Screws", "1", "1", "200"),
    ];

    private static readonly ImmutableArray<Remark<HoldingMade>> Verdicts =
    [
        new(
            Fails,
            made => made.Asked.IsEnd,
            "A screw in end grain counts for nothing when it is pulled out: run it into side grain, a dowel or a cleat."
        ),
        new(
            Fails,
            made => made.Diameters < ScrewHolding.LeastDiameters,
            made =>
                $"With less than six diameters of thread, {made.Asked.Say(RuleMarks.Up(made.Six, made.Asked.Unit))}, a "
                + $"screw counts for nothing sideways "
                + "(unverified; from the design specification)."
        ),
        new(
            Watch,
            made => made.Diameters is >= ScrewHolding.LeastDiameters and < ScrewHolding.FullDiameters,
            made =>
                "The full value sideways needs ten diameters of thread: "
                + $"{made.Asked.Say(RuleMarks.Up(made.Ten, made.Asked.Unit))}."
        ),
        new(
            Watch,
            "These are loads to design for, about a fifth of what pulls a screw out of clear wood. Knots, splits and wrong pilot "
                + "holes take more off. The screw maker's own table comes first."
        ),
    ];

    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<HoldingAsked, HoldingMade>(
        "screw-holding",
        "What screws hold",
        "How much wood screws may carry, pulled out and sideways."
    )
    {
        Keys = Keys,
        Read = HoldingAsked.Read,
        Make = asked => new(asked),
        Results = made => made.Loads,
        Verdicts = Verdicts,
        MostSevereFirst = true,
        Cautions = [ShopCautions.HangingLoad],
    }.Form;

    private static string Number(int gauge) => gauge.ToString(CultureInfo.InvariantCulture);

    private sealed record HoldingAsked(
        LengthUnit Unit,
        Working<double> Gravity,
        HoldingScrew Screw,
        Working<Length> Thread,
        Working<Length> Near,
        bool IsEnd,
        Working<double> Count
    ) : Question(Unit)
    {
        public static HoldingAsked Read(FormReader reader)
        {
            var (row, gauge) = (StrengthTable.Find(reader.Choice("species"))!, reader.Choice("gauge"));
            return new(
                reader.Unit,
                reader.MaybeNumber("gravity") is { } own
                    ? Working.Given("Specific gravity", own, QuantityKind.Bare, 2)
                    : Working.Looked(
                        "Specific gravity of " + WoodNames.InText(row.Name),
                        row.Gravity,
                        QuantityKind.Bare,
                        2,
                        row.StiffnessSource
                    ),
                ScrewHolding.Screws.First(one => Number(one.Gauge) == gauge),
                reader.Given("Thread", "thread"),
                reader.Given("Piece it holds", "thickness"),
                reader.Choice("grain") == "end",
                Working.Given("Screws", reader.Count("count"), QuantityKind.Bare, 0)
            );
        }
    }

    private sealed record HoldingMade(HoldingAsked Asked)
    {
        private static readonly SourceNote EndGrain = new(
            "Wood Handbook: no withdrawal load from end grain; sideways 67% of side grain (unverified, the design "
                + "specification)",
            Certainty.FromMemory
        );

        private const double EndShare = 0.67;

        public double Diameters => (double)Asked.Thread.Value.ToInches() / Asked.Screw.Diameter;

        public Length Six => Length.FromInches((decimal)Asked.Screw.Diameter * ScrewHolding.LeastDiameters);

        public Length Ten => Length.FromInches((decimal)Asked.Screw.Diameter * ScrewHolding.FullDiameters);

        public IEnumerable<Working> Loads =>
            [
                ScrewHolding.Times("All screws, pulled out", Pull, Asked.Count),
                ScrewHolding.Times("All screws, sideways", Sideways, Asked.Count),
                Pull,
                Sideways,
                ScrewHolding.Break(Asked.Screw, Asked.Gravity, Asked.Thread),
                ScrewHolding.Distance("From an edge, at least", Asked.Screw, 4, Asked.Unit),
                ScrewHolding.Distance("From an end, at least", Asked.Screw, 10, Asked.Unit),
            ];

        private Working<double> Pull =>
            Asked.IsEnd
                ? Working.Looked("One screw, pulled out", 0, QuantityKind.Mass, 1, EndGrain)
                : ScrewHolding.Pull(Asked.Screw, Asked.Gravity, Asked.Thread);

        private Working<double> Sideways
        {
            get
            {
                var side = ScrewHolding.Sideways(Asked.Screw, Asked.Gravity, Asked.Near, Asked.Thread);
                return Asked.IsEnd
                    ? Working.Of(
                        "One screw, sideways",
                        side.Value * EndShare,
                        QuantityKind.Mass,
                        1,
                        "0.67 × {side}",
                        EndGrain,
                        ("side", side)
                    )
                    : side;
            }
        }
    }
}
