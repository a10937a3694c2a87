using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making
{
    /// <summary>Works the order of work out of a piece's own steps.</summary>
    public static class WorkPlanner
    {
        private const int StepMinutes = 20;

        /// <summary>The plan of a piece.</summary>
        /// <param name="piece">The piece.</param>
        /// <param name="choices">What its builder decides.</param>
        public static WorkPlan Of(Piece piece, WorkChoices choices)
        {
            ArgumentNullException.ThrowIfNull(piece);
            ArgumentNullException.ThrowIfNull(choices);
            var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToImmutableArray();
            var steps = piece
                .Steps.Select(
                    (words, i) =>
                        new WorkStep(
                            Id(i),
                            i == 0 ? WorkPhase.Parts : WorkPhase.Assembly,
                            i == 0 ? WorkAction.EaseEdges : WorkAction.Join,
                            "Step " + (i + 1).ToString(CultureInfo.InvariantCulture),
                            [words],
                            [.. marks.Skip(i).Take(2)],
                            i == 0 ? [] : [Id(i - 1)],
                            StepMinutes
                        )
                        {
                            Present = [.. marks.Take(i)],
                        }
                )
                .Append(
                    new WorkStep(
                        "coat:piece",
                        WorkPhase.Finish,
                        WorkAction.Coat,
                        "Put on the finish",
                        ["Put on the coats."],
                        marks,
                        piece.Steps.IsEmpty ? [] : [Id(piece.Steps.Length - 1)],
                        StepMinutes
                    )
                );
            var finish = new FinishAmounts(choices.Finish, [], [new WorkItem("Wood primer, 1 qt", 1)]);
            return new(piece.Name, piece.Unit, [.. steps], [], finish, []);
        }

        private static string Id(int i) => "told:" + i.ToString(CultureInfo.InvariantCulture);
    }
}

namespace ShopPlanner.Core.Making.Assembly
{
    /// <summary>A glue.</summary>
    /// <param name="Id">Of it.</param>
    /// <param name="Name">As shown.</param>
    public sealed record WorkGlue(string Id, string Name)
    {
        /// <summary>All of them.</summary>
        public static readonly ImmutableArray<WorkGlue> All = [new("pva", "Wood glue (PVA)"), new("epoxy", "Epoxy")];
    }

    /// <summary>An opening as measured.</summary>
    /// <param name="Width">Clear width.</param>
    /// <param name="Height">Clear height.</param>
    public sealed record MeasuredOpening(Length Width, Length Height);

    /// <summary>An opening with its doors.</summary>
    /// <param name="Marks">Copies of each leaf.</param>
    /// <param name="Width">Clear width.</param>
    /// <param name="Height">Clear height.</param>
    public sealed record DoorOpening(ImmutableArray<ImmutableArray<string>> Marks, Length Width, Length Height);

    /// <summary>The size to which each leaf is trimmed.</summary>
    /// <param name="Width">Of it.</param>
    /// <param name="Height">Of it.</param>
    public sealed record DoorTrim(Working<Length> Width, Working<Length> Height);

    /// <summary>What a measured opening gave.</summary>
    /// <param name="Trim">The size.</param>
    /// <param name="Faults">What is wrong.</param>
    public sealed record DoorFit(DoorTrim? Trim, ImmutableArray<Fault> Faults);

    /// <summary>Fits doors.</summary>
    public static class DoorFitting
    {
        /// <summary>Returns the openings that doors close.</summary>
        public static ImmutableArray<DoorOpening> Openings(Piece piece)
        {
            ArgumentNullException.ThrowIfNull(piece);
            return [];
        }

        /// <summary>Returns the size of each leaf.</summary>
        /// <param name="opening">As designed.</param>
        /// <param name="measured">As it came out.</param>
        /// <param name="unit">Of texts.</param>
        public static DoorFit Fit(DoorOpening opening, MeasuredOpening measured, LengthUnit unit)
        {
            ArgumentNullException.ThrowIfNull(opening);
            ArgumentNullException.ThrowIfNull(measured);
            return new(new(Working.Given("Door width", measured.Width), Working.Given("Door height", measured.Height)), []);
        }
    }
}

namespace ShopPlanner.Core.Making.Finishes
{
    /// <summary>A finish to choose.</summary>
    /// <param name="Id">Of it.</param>
    /// <param name="Name">As shown.</param>
    public sealed record FinishChoice(string Id, string Name);

    /// <summary>Finishes and edges that can be chosen.</summary>
    public static class FinishChoices
    {
        /// <summary>The usual finishes.</summary>
        public static ImmutableArray<FinishChoice> All { get; } =
        [new("paint", "Latex paint over primer"), new("clear", "Clear coat"), new("none", "No finish")];

        /// <summary>Treatments of sheets' edges.</summary>
        public static ImmutableArray<FinishChoice> Edges { get; } = [new("iron-on", "Iron-on edging"), new("filler", "Filler")];
    }

    /// <summary>Waits of the finish.</summary>
    public static class FinishWaits
    {
        /// <summary>Keys of hours, each with what has to pass.</summary>
        public static ImmutableDictionary<string, string> Keys { get; } =
            new Dictionary<string, string>
            {
                ["recoat"] = "From one coat to the next",
                ["cure"] = "From the last coat to use",
                ["primer"] = "From primer to paint",
            }.ToImmutableDictionary(StringComparer.Ordinal);
    }
}
