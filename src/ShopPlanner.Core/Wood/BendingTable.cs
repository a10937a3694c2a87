using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Wood;

/// <summary>How a wood bends and breaks.</summary>
/// <param name="Id">Id of the wood.</param>
/// <param name="Name">As people call it.</param>
/// <param name="Rupture">Modulus of rupture of clear, dry wood, MPa.</param>
/// <param name="Elasticity">Modulus of elasticity, GPa.</param>
/// <param name="Source">Where both come from.</param>
internal sealed record Bending(string Id, string Name, double Rupture, double Elasticity, SourceNote Source);

/// <summary>Bending strength of woods that carry people.</summary>
internal static class BendingTable
{
    private const string Handbook = "Wood Handbook, FPL-GTR-190, Table 5-3b: clear wood at 12% moisture";

    /// <summary>The store's lumber first, then by species.</summary>
    public static readonly ImmutableArray<Bending> All =
    [
        new(
            "spruce-pine-fir",
            "Spruce-pine-fir, store lumber",
            Psi(8600),
            Million(1.29),
            new("Oregon State University wood property table: the weakest of the group, subalpine fir", Read)
        ),
        .. Woods(
            ("pine-ponderosa", 9400, Read),
            ("pine-eastern-white", 8600, FromMemory),
            ("pine-western-white", 9700, Read),
            ("pine-sugar", 8200, Read),
            ("pine-longleaf", 14_500, Read),
            ("pine-loblolly", 12_800, FromMemory),
            ("douglas-fir-coast", 12_400, Read),
            ("hemlock-western", 11_300, Read),
            ("spruce-sitka", 10_200, FromMemory),
            ("redwood-old-growth", 10_000, Read),
            ("cedar-western-red", 7500, FromMemory),
            ("yellow-poplar", 10_100, FromMemory),
            ("oak-red", 14_300, Quoted),
            ("oak-white", 15_200, Read),
            ("maple-sugar", 15_800, Quoted),
            ("maple-red", 13_400, Read),
            ("ash-white", 15_000, Quoted),
            ("beech-american", 14_900, Quoted),
            ("birch-yellow", 16_600, Quoted),
            ("birch-paper", 12_300, Quoted),
            ("cherry-black", 12_300, Quoted),
            ("walnut-black", 14_600, FromMemory),
            ("mahogany-true", 11_500, Quoted),
            ("hickory-true", 20_200, FromMemory),
            ("elm-american", 11_800, FromMemory),
            ("alder-red", 9800, Quoted),
            ("basswood", 8700, Quoted),
            ("butternut", 8100, Quoted),
            ("aspen-quaking", 8400, FromMemory)
        ),
    ];

    private static IEnumerable<Bending> Woods(params (string Id, double Psi, Certainty Certainty)[] rows) =>
        rows.Select(one =>
            StrengthTable.Find(one.Id) is { } strength
                ? new Bending(
                    one.Id,
                    strength.Name,
                    Psi(one.Psi),
                    strength.Elasticity,
                    new SourceNote(Handbook, one.Certainty).And(strength.StiffnessSource with { Text = "its stiffness, too" })
                )
                : throw new InvalidOperationException($"{one.Id} has no stiffness")
        );

    private static double Psi(double psi) => QuantityKind.Pressure.ToMetric(psi, LengthUnit.Inch);

    private static double Million(double million) => QuantityKind.Modulus.ToMetric(million, LengthUnit.Inch);
}
