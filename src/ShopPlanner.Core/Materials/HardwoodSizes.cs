using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Materials;

/// <summary>A hardwood thickness as sold.</summary>
/// <param name="Name">Quarters of an inch, <c>5/4</c>, or the fraction below 4/4.</param>
/// <param name="Rough">As sawn.</param>
/// <param name="OneSide">Surfaced on one side.</param>
/// <param name="TwoSides">Surfaced on two sides, as graded. 4/4 is often sold thicker (15/16) or thinner (3/4): measure.</param>
public sealed record HardwoodThickness(string Name, Length Rough, Length OneSide, Length TwoSides)
{
    /// <summary>Where the surfaced thicknesses come from.</summary>
    public SourceNote Source { get; init; } = HardwoodSizes.GradingSource;
}

/// <summary>Hardwood lumber: thickness in quarters, and the ready-planed boards that stores sell.</summary>
public static class HardwoodSizes
{
    /// <summary>Where the surfaced thicknesses come from.</summary>
    public static readonly SourceNote GradingSource = new(
        "Hardwood lumber grading rules, table of surfaced thickness",
        Certainty.Quoted
    );

    /// <summary>Where a row comes from that the quoted table leaves out.</summary>
    public static readonly SourceNote FromMemory = new(
        "Hardwood lumber grading rules, table of surfaced thickness",
        Certainty.FromMemory
    );

    /// <summary>Where the ready-planed sizes come from.</summary>
    public static readonly SourceNote RetailSource = new("A hardwood dealer's chart of surfaced sizes", Certainty.Read);

    /// <summary>Where the other ready-planed sizes come from: the same step off as softwood.</summary>
    public static readonly SourceNote RetailPractice = new("Common practice: measure the board", Certainty.CommonPractice);

    /// <summary>Rough, surfaced on one side, surfaced on two sides.</summary>
    public static readonly ImmutableArray<HardwoodThickness> Thicknesses =
    [
        Of("3/8", "3/8", "1/4", "3/16"),
        Of("1/2", "1/2", "3/8", "5/16"),
        Of("5/8", "5/8", "1/2", "7/16"),
        Of("3/4", "3/4", "5/8", "9/16"),
        Of("4/4", "1", "7/8", "13/16"),
        Of("5/4", "1 1/4", "1 1/8", "1 1/16"),
        Of("6/4", "1 1/2", "1 3/8", "1 5/16"),
        Of("8/4", "2", "1 13/16", "1 3/4"),
        Of("10/4", "2 1/2", "2 5/16", "2 1/4") with
        {
            Source = FromMemory,
        },
        Of("12/4", "3", "2 13/16", "2 3/4"),
        Of("16/4", "4", "3 13/16", "3 3/4"),
    ];

    private static readonly Dictionary<Length, Length> PlanedThickness = new()
    {
        [Inches.Of("1")] = Inches.Of("3/4"),
        [Inches.Of("1 1/4")] = Inches.Of("1 1/16"),
        [Inches.Of("2")] = Inches.Of("1 3/4"),
    };

    private static readonly Dictionary<Length, (Length Actual, SourceNote Source)> PlanedWidth = new()
    {
        [Inches.Of("2")] = (Inches.Of("1 1/2"), RetailPractice),
        [Inches.Of("3")] = (Inches.Of("2 1/2"), RetailPractice),
        [Inches.Of("4")] = (Inches.Of("3 1/2"), RetailSource),
        [Inches.Of("5")] = (Inches.Of("4 1/2"), RetailPractice),
        [Inches.Of("6")] = (Inches.Of("5 1/2"), RetailSource),
        [Inches.Of("8")] = (Inches.Of("7 1/4"), RetailPractice),
        [Inches.Of("10")] = (Inches.Of("9 1/4"), RetailPractice),
        [Inches.Of("12")] = (Inches.Of("11 1/4"), RetailPractice),
    };

    internal static BoardSection? Section(string name, Length thickness, Length width) =>
        PlanedThickness.TryGetValue(thickness, out var thick) && PlanedWidth.TryGetValue(width, out var wide)
            ? new(name, WoodKind.Hardwood, thick, wide.Actual, RetailSource.And(wide.Source))
            : null;

    private static HardwoodThickness Of(string name, string rough, string oneSide, string twoSides) =>
        new(name, Inches.Of(rough), Inches.Of(oneSide), Inches.Of(twoSides));
}
