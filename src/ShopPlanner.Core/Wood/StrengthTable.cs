using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Wood;

/// <summary>How heavy and stiff a material is: averages of clear wood at 12% moisture; real boards with knots are weaker and
/// vary.</summary>
/// <param name="Id">Id of a species, or of a kind of panel: <c>mdf</c>.</param>
/// <param name="Name">As shown.</param>
/// <param name="Gravity">Specific gravity: ovendry weight over volume at 12%, relative to water; a panel's as it is.</param>
/// <param name="Elasticity">Modulus of elasticity, GPa.</param>
/// <param name="IsPanel">True for a panel, whose gravity counts its moisture already.</param>
/// <param name="StiffnessSource">Where gravity and elasticity come from.</param>
public sealed record Strength(
    string Id,
    string Name,
    double Gravity,
    double Elasticity,
    bool IsPanel,
    SourceNote StiffnessSource
);

/// <summary>Weight and stiffness of woods and panels.</summary>
public static class StrengthTable
{
    private const string Handbook = "Wood Handbook, FPL-GTR-190, Tables 5-3b and 12-1: clear wood at 12% moisture";

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
        Panel(
            "plywood",
            "Plywood",
            0.5,
            1.12,
            "Wood Handbook, FPL-GTR-190, Table 12-1: plywood 1.01 to 1.24 million psi, gravity 0.4 to 0.6; the middle"
        ),
        Panel(
            "plywood-douglas-fir",
            "Douglas-fir plywood",
            0.5,
            0.95,
            "Architectural Woodwork Standards 2009, 4.4.14: veneer-core Douglas-fir plywood; gravity of plywood in general"
        ),
        Panel(
            "plywood-hardwood-faced",
            "Plywood with hardwood faces",
            0.55,
            1.80,
            "Architectural Woodwork Standards 2009, 4.4.14: with hardwood faces on both sides; gravity of plywood in general"
        ),
        Panel(
            "mdf",
            "MDF",
            0.77,
            0.52,
            "Wood Handbook, FPL-GTR-190, Table 12-1: gravity 0.7 to 0.9; 48 lb/ft³ is common practice"
        ),
        Panel(
            "hardboard",
            "Hardboard",
            0.95,
            0.625,
            "Wood Handbook, FPL-GTR-190, Table 12-1: 0.45 to 0.80 million psi; the middle"
        ),
        Panel(
            "particleboard",
            "Particleboard",
            0.7,
            0.50,
            "Wood Handbook, FPL-GTR-190, Table 12-1: 0.40 to 0.60 million psi; the middle"
        ),
        Panel(
            "osb",
            "Oriented strandboard",
            0.65,
            0.775,
            "Wood Handbook, FPL-GTR-190, Table 12-1: 0.64 to 0.91 million psi; the middle"
        ),
    ];

    /// <summary>The row of a wood or a panel; null where none is published here.</summary>
    public static Strength? Find(string id) => All.FirstOrDefault(row => row.Id == id);

    /// <summary>Modulus of elasticity as a working, in GPa.</summary>
    public static Working<double> Elasticity(Strength row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return Working.Looked(
            "Modulus of elasticity of " + row.Name,
            row.Elasticity,
            QuantityKind.Modulus,
            2,
            row.StiffnessSource
        );
    }

    private static Strength Wood(string id, double gravity, double million, Certainty stiffness, bool green = false) =>
        new(
            id,
            MaterialCatalogue.TryFindSpecies(id, out var species) ? species.Name : id,
            gravity,
            QuantityKind.Modulus.ToMetric(million, Measures.LengthUnit.Inch),
            false,
            new(green ? Handbook + "; gravity green" : Handbook, stiffness)
        );

    private static Strength Panel(string id, string name, double gravity, double million, string source) =>
        new(id, name, gravity, QuantityKind.Modulus.ToMetric(million, Measures.LengthUnit.Inch), true, new(source, Read));
}
