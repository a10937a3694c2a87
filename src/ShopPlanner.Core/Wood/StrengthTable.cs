using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Wood;

/// <summary>How heavy and stiff a material is: averages of clear wood at 12% moisture; real boards with knots are weaker and
/// vary.</summary>
/// <param name="Id">Id of a species, or of a kind of panel: <c>mdf</c>.</param>
/// <param name="Name">As shown.</param>
/// <param name="Gravity">Specific gravity: ovendry weight over volume at 12%, relative to water; a panel's as it is.</param>
/// <param name="Elasticity">Modulus of elasticity, GPa; the lowest where a range is published.</param>
/// <param name="IsPanel">True for a panel, whose gravity counts its moisture already.</param>
/// <param name="GravitySource">Where the gravity comes from.</param>
/// <param name="StiffnessSource">Where the elasticity comes from.</param>
public sealed record Strength(
    string Id,
    string Name,
    double Gravity,
    double Elasticity,
    bool IsPanel,
    SourceNote GravitySource,
    SourceNote StiffnessSource
)
{
    /// <summary>Gravity of the lightest in a mixed lot; else the same as <see cref="Gravity"/>.</summary>
    public double Lightest { get; init; } = Gravity;

    /// <summary>Between which gravities single boards or sheets of it lie as a rule; see <see
    /// cref="StrengthTable.Varies"/>.</summary>
    public (double Least, double Most) Range { get; init; } = (Gravity * 0.9, Gravity * 1.1);
}

/// <summary>Weight and stiffness of woods and panels.</summary>
public static class StrengthTable
{
    private const string Handbook = "Wood Handbook, FPL-GTR-190, Tables 5-3b and 12-1: clear wood at 12% moisture";
    private const string Panels = "Wood Handbook, FPL-GTR-190, Table 12-1: ";

    /// <summary>By species, then panels.</summary>
    public static readonly ImmutableArray<Strength> All =
    [
        Wood("pine-ponderosa", 0.40, 1.29, Read),
        Wood("pine-sugar", 0.36, 1.19, Read),
        Wood("pine-western-white", 0.38, 1.46, Read),
        Wood("pine-longleaf", 0.59, 1.98, Read),
        Wood("redwood-old-growth", 0.40, 1.34, Read),
        Wood("douglas-fir-coast", 0.48, 1.95, Read),
        Wood("hemlock-western", 0.45, 1.63, Read),
        Wood("oak-white", 0.68, 1.78, Read),
        Wood("oak-red", 0.63, 1.82, Quoted),
        Wood("maple-red", 0.54, 1.64, Read),
        Wood("maple-sugar", 0.63, 1.83, Quoted),
        Wood("ash-white", 0.60, 1.74, Quoted),
        Wood("beech-american", 0.64, 1.72, Quoted),
        Wood("birch-yellow", 0.62, 2.01, Quoted),
        Wood("birch-paper", 0.55, 1.59, Quoted),
        Wood("alder-red", 0.41, 1.38, Quoted),
        Wood("cherry-black", 0.50, 1.49, Quoted),
        Wood("basswood", 0.37, 1.46, Quoted),
        Wood("butternut", 0.38, 1.18, Quoted),
        Wood("aspen-quaking", 0.38, 1.18, Quoted),
        Wood("hickory-true", 0.72, 2.16, Quoted),
        Wood("elm-american", 0.50, 1.34, Quoted),
        Wood("mahogany-true", 0.45, 1.50, Quoted, green: true),
        Wood("walnut-black", 0.55, 1.68, FromMemory),
        Wood("yellow-poplar", 0.42, 1.58, Quoted),
        Wood("pine-eastern-white", 0.35, 1.24, FromMemory),
        Wood("pine-loblolly", 0.51, 1.79, FromMemory),
        Wood("cedar-western-red", 0.32, 1.11, FromMemory),
        Wood("spruce-sitka", 0.40, 1.57, FromMemory),
        SprucePineFir,
        Panel("plywood", "Plywood", Middle(0.5, "0.4 to 0.6"), Lowest(1.01, "1.01 to 1.24")) with
        {
            Range = (0.4, 0.6),
        },
        Panel(
            "plywood-douglas-fir",
            "Douglas-fir plywood",
            Middle(0.5, "0.4 to 0.6"),
            Faced(0.95, "veneer-core Douglas-fir")
        ) with
        {
            Range = (0.4, 0.6),
        },
        Panel(
            "plywood-hardwood-faced",
            "Plywood with hardwood faces",
            (0.55, new(Panels + "specific gravity of plywood 0.4 to 0.6, taken higher with hardwood faces", CommonPractice)),
            Faced(1.80, "hardwood-faced")
        ) with
        {
            Range = (0.4, 0.6),
        },
        Panel(
            "mdf",
            "MDF",
            (0.77, new(Panels + "specific gravity 0.7 to 0.9; 48 lb/ft³ is common practice", CommonPractice)),
            (0.52, new(Panels + "0.52 million psi", Read))
        ) with
        {
            Range = (0.7, 0.9),
        },
        Panel("hardboard", "Hardboard", Middle(0.95, "0.9 to 1.0"), Lowest(0.45, "0.45 to 0.80")) with
        {
            Range = (0.9, 1.0),
        },
        Panel("particleboard", "Particleboard", Middle(0.7, "0.6 to 0.8"), Lowest(0.40, "0.40 to 0.60")) with
        {
            Range = (0.6, 0.8),
        },
        Panel("osb", "Oriented strandboard", Middle(0.65, "0.5 to 0.8"), Lowest(0.64, "0.64 to 0.91")) with
        {
            Range = (0.5, 0.8),
        },
    ];

    /// <summary>How much the weight of one kind of wood varies.</summary>
    public static readonly SourceNote Varies = new(
        "Panels: the range of the Wood Handbook, Table 12-1; woods: 10% either way, the usual spread of specific gravity (Wood "
            + "Handbook, ch. 5, from memory)",
        FromMemory
    );

    /// <summary>The row of a wood or a panel; null where none is published here.</summary>
    public static Strength? Find(string id) => All.FirstOrDefault(row => row.Id == id);

    /// <summary>Modulus of elasticity as a working, in GPa.</summary>
    public static Working<double> Elasticity(Strength row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return Working.Looked(
            "Modulus of elasticity of " + WoodNames.InText(row.Name),
            row.Elasticity,
            QuantityKind.Modulus,
            2,
            row.StiffnessSource
        );
    }

    // Sold mixed: as stiff as the least stiff of them, as heavy as its design values say, as light as the lightest.
    private static Strength SprucePineFir =>
        Row(
            "spruce-pine-fir",
            0.42,
            1.29,
            new(
                "National Design Specification 2018, Table 12.3.3A, as quoted; the woods sold under this name have 0.32 to 0.43",
                Quoted
            ),
            new(
                "Wood Handbook, FPL-GTR-190, Table 5-3b: the woods sold "
                    + "under this name have 1.29 (subalpine fir) to 1.61 million "
                    + "psi (red and black spruce); the lowest",
                FromMemory
            )
        ) with
        {
            Lightest = 0.32,
            Range = (0.32, 0.43),
        };

    private static Strength Wood(string id, double gravity, double million, Certainty stiffness, bool green = false) =>
        Row(
            id,
            gravity,
            million,
            new(green ? Handbook + "; specific gravity green" : Handbook, stiffness),
            new(Handbook, stiffness)
        );

    private static Strength Row(string id, double gravity, double million, SourceNote heavy, SourceNote stiff) =>
        new(
            id,
            MaterialCatalogue.TryFindSpecies(id, out var species) ? species.Name : id,
            gravity,
            QuantityKind.Modulus.ToMetric(million, Measures.LengthUnit.Inch),
            false,
            heavy,
            stiff
        );

    private static Strength Panel(
        string id,
        string name,
        (double Of, SourceNote Source) gravity,
        (double Of, SourceNote Source) million
    ) =>
        new(
            id,
            name,
            gravity.Of,
            QuantityKind.Modulus.ToMetric(million.Of, Measures.LengthUnit.Inch),
            true,
            gravity.Source,
            million.Source
        );

    private static (double, SourceNote) Middle(double gravity, string range) =>
        (gravity, new(Panels + "specific gravity " + range + "; the middle is taken", CommonPractice));

    // A shelf of the least stiff sheet must not be told to hang less than it does.
    private static (double, SourceNote) Lowest(double million, string range) =>
        (million, new(Panels + range + " million psi; the lowest", Read));

    private static (double, SourceNote) Faced(double million, string what) =>
        (
            million,
            new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Architectural Woodwork Standards 2009, 4.4.14: {what} plywood, {million} million psi"
                ),
                Read
            )
        );
}
