using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>True sizes of boards that are sold by nominal ones.</summary>
internal static class SizeCalculator
{
    /// <summary>The form.</summary>
    public static readonly WorkingForm Form = new Calculator<SizeAsked, SizeMade>(
        "actual-size",
        "Actual size",
        "What a board sold by nominal size really measures, dry and planed."
    )
    {
        Keys =
        [
            Key.Text("nominal", "Sold as", "1x3").Hint("write 1x3, 2x4, 5/4x6, or a hardwood thickness, 4/4"),
            Key.Choice("kind", "Kind", "softwood", new("softwood", "softwood"), new("hardwood", "hardwood")),
        ],
        Read = reader =>
            new(
                reader.Text("nominal")!,
                reader.Choice("kind") == "hardwood" ? WoodKind.Hardwood : WoodKind.Softwood,
                !reader.Has("kind")
            ),
        Make = SizeMade.Of,
        Failures =
        [
            new(
                "nominal",
                made => made is { Section: null, Quarters: null },
                "isn't a size stores sell: write 1x3, 2x4, 5/4x6, or for hardwood a thickness such as 4/4"
            )
            {
                Quote = made => made.Nominal,
            },
        ],
        Results = made => made.Sizes,
        Verdicts =
        [
            new(
                Severity.Watch,
                made => made.Section is not null,
                "Measure your boards: they swell, shrink and differ from mill to mill."
            ),
            new(Severity.Tip, made => made.IsGuess, "Only hardwood is sold by this size, so it is taken for hardwood."),
            new(Severity.Watch, made => made.Quarters is not null, "Surfaced 4/4 is sold at 13/16, 15/16 and 3/4: measure it."),
        ],
    }.Form;

    private sealed record SizeAsked(string Nominal, WoodKind Kind, bool IsKindOpen);

    /// <summary>A section, or a hardwood's thickness in quarters; neither where it is not known.</summary>
    private sealed record SizeMade(string Nominal, BoardSection? Section, HardwoodThickness? Quarters)
    {
        /// <summary>Whether hardwood was not asked for and is what it must be.</summary>
        public bool IsGuess { get; private init; }

        public IEnumerable<Working> Sizes =>
            Section is { } section
                ? [Size("Thickness", section.Thickness, section.Source), Size("Width", section.Width, section.Source)]
                :
                [
                    Size("Surfaced on two sides", Quarters!.TwoSides, Quarters.Source),
                    Size("Surfaced on one side", Quarters.OneSide, Quarters.Source),
                    Size("Rough", Quarters.Rough, Quarters.Source),
                ];

        public static SizeMade Of(SizeAsked asked)
        {
            if (
                (asked.Kind == WoodKind.Hardwood || asked.IsKindOpen)
                && HardwoodSizes.Thicknesses.FirstOrDefault(one => one.Name == asked.Nominal.Trim()) is { } quarters
            )
                return new(asked.Nominal, null, quarters) { IsGuess = asked.Kind != WoodKind.Hardwood };
            return new(
                asked.Nominal,
                MaterialCatalogue.TryFindSection(asked.Nominal, asked.Kind, out var section) ? section : null,
                null
            );
        }

        private static Working<Length> Size(string name, Length length, SourceNote source) =>
            Working.Looked(name, length, new LengthFigure(length), source);
    }
}
