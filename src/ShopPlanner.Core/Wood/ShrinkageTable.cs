using System.Collections.Immutable;
using ShopPlanner.Core.Workings;
using static ShopPlanner.Core.Workings.Certainty;

namespace ShopPlanner.Core.Wood;

/// <summary>How a wood shrinks.</summary>
/// <param name="SpeciesId">Id of the wood.</param>
/// <param name="Radial">Green to ovendry across the rings, percent.</param>
/// <param name="Tangential">Green to ovendry along the rings, percent.</param>
/// <param name="RadialCoefficient">Change for each percent of moisture, quarter-sawn width.</param>
/// <param name="TangentialCoefficient">Change for each percent of moisture, flat-sawn width.</param>
/// <param name="ShrinkageSource">Where the shrinkage comes from.</param>
/// <param name="CoefficientSource">Where the coefficients come from.</param>
public sealed record Shrinkage(
    string SpeciesId,
    double Radial,
    double Tangential,
    double RadialCoefficient,
    double TangentialCoefficient,
    SourceNote ShrinkageSource,
    SourceNote CoefficientSource
)
{
    // These woods begin to shrink near 22% (Wood Handbook, ch. 13).
    private static readonly string[] Early = ["redwood-old-growth", "cedar-western-red", "cedar-northern-white"];

    /// <summary>Moisture at which it begins to shrink when it dries, percent.</summary>
    public double Saturation => IsEarly(SpeciesId) ? 22 : 30;

    /// <summary>Whether a wood begins to shrink later than others, near 22%.</summary>
    internal static bool IsEarly(string speciesId) => Early.Contains(speciesId);
}

/// <summary>Shrinkage of woods.</summary>
public static class ShrinkageTable
{
    private const string Shrinks = "Wood Handbook, FPL-GTR-190, Table 4-3";
    private const string Mixed = ": the woods sold under this name";
    private const string Coefficients = "Wood Handbook, FPL-GTR-190, Table 13-5";

    /// <summary>By species.</summary>
    public static readonly ImmutableArray<Shrinkage> All =
    [
        Of("alder-red", 4.4, 7.3, Read, 0.00151, 0.00256, Read),
        Of("ash-white", 4.9, 7.8, Read, 0.00169, 0.00274, Read),
        Of("aspen-quaking", 3.5, 6.7, Read, 0.00119, 0.00234, Read),
        Of("basswood", 6.6, 9.3, Read, 0.00230, 0.00330, Read),
        Of("beech-american", 5.5, 11.9, Read, 0.00190, 0.00431, Read),
        Of("birch-paper", 6.3, 8.6, Read, 0.00219, 0.00304, Read),
        Of("birch-yellow", 7.3, 9.5, Read, 0.00256, 0.00338, Read),
        Of("butternut", 3.4, 6.4, Read, 0.00116, 0.00223, Read),
        Of("cherry-black", 3.7, 7.1, Read, 0.00126, 0.00248, Read),
        Of("elm-american", 4.2, 9.5, Read, 0.00144, 0.00338, Read),
        Of("hickory-pecan", 4.9, 8.9, Read, 0.00169, 0.00315, Read),
        Of("hickory-true", 7.7, 11.0, Read, 0.00259, 0.00411, FromMemory),
        Of("maple-red", 4.0, 8.2, FromMemory, 0.00137, 0.00289, Read),
        Of("maple-sugar", 4.8, 9.9, Quoted, 0.00165, 0.00353, Read),
        Of("oak-red", 4.0, 8.6, FromMemory, 0.00158, 0.00369, Read),
        Of("oak-white", 5.6, 10.5, Read, 0.00180, 0.00365, Read),
        Of("sweetgum", 5.3, 10.2, Read, 0.00183, 0.00365, Read),
        Of("sycamore", 5.0, 8.4, Read, 0.00172, 0.00296, Read),
        Of("walnut-black", 5.5, 7.8, Read, 0.00190, 0.00274, Read),
        Of("yellow-poplar", 4.6, 8.2, Read, 0.00158, 0.00289, Derived),
        Of("cedar-western-red", 2.4, 5.0, Read, 0.00111, 0.00234, Derived),
        Of("cedar-eastern-red", 3.1, 4.7, Read, 0.00106, 0.00162, Derived),
        Of("cedar-incense", 3.3, 5.2, Read, 0.00112, 0.00180, Derived),
        Of("cedar-northern-white", 2.2, 4.9, Read, 0.00101, 0.00229, Derived),
        Of("douglas-fir-coast", 4.8, 7.6, Read, 0.00165, 0.00267, Derived),
        Of("douglas-fir-interior-north", 3.8, 6.9, Read, 0.00130, 0.00241, Derived),
        Of("fir-balsam", 2.9, 6.9, Read, 0.00099, 0.00241, Derived),
        Of("fir-white", 3.3, 7.0, Read, 0.00112, 0.00245, Derived),
        Of("hemlock-western", 4.2, 7.8, FromMemory, 0.00144, 0.00274, FromMemory),
        Of("pine-eastern-white", 2.1, 6.1, FromMemory, 0.00071, 0.00212, FromMemory),
        Of("pine-ponderosa", 3.9, 6.2, FromMemory, 0.00133, 0.00216, FromMemory),
        Of("pine-sugar", 2.9, 5.6, FromMemory, 0.00099, 0.00194, FromMemory),
        Of("pine-western-white", 4.1, 7.4, FromMemory, 0.00141, 0.00259, FromMemory),
        Of("pine-lodgepole", 4.3, 6.7, FromMemory, 0.00148, 0.00234, FromMemory),
        Of("pine-loblolly", 4.8, 7.4, FromMemory, 0.00165, 0.00259, FromMemory),
        Of("pine-longleaf", 5.1, 7.5, FromMemory, 0.00176, 0.00263, FromMemory),
        SprucePineFir,
        Of("spruce-sitka", 4.3, 7.5, FromMemory, 0.00148, 0.00263, FromMemory),
        Of("redwood-old-growth", 2.6, 4.4, FromMemory, 0.00120, 0.00205, FromMemory),
        Of("mahogany-true", 3.0, 4.1, FromMemory, 0.00172, 0.00238, FromMemory),
        Of("teak", 2.5, 5.8, FromMemory, 0.00101, 0.00186, FromMemory),
    ];

    // Sold mixed: it moves as much as the one that moves most.
    private static Shrinkage SprucePineFir =>
        new(
            "spruce-pine-fir",
            4.7,
            8.2,
            0.00162,
            0.00289,
            new(Shrinks + Mixed + " shrink 2.6 to 4.7 and 6.6 to 8.2%; the most, white spruce", FromMemory),
            new(Coefficients + ", from the shrinkage by C = S / (3000 − 20 S)" + Mixed + ", the most", FromMemory)
        );

    /// <summary>The row of a wood; null where none is published here.</summary>
    public static Shrinkage? Find(string speciesId) => All.FirstOrDefault(row => row.SpeciesId == speciesId);

    private static Shrinkage Of(
        string id,
        double radial,
        double tangential,
        Certainty shrinkage,
        double radialCoefficient,
        double tangentialCoefficient,
        Certainty coefficient
    ) =>
        new(
            id,
            radial,
            tangential,
            radialCoefficient,
            tangentialCoefficient,
            new(Shrinks, shrinkage),
            new(
                coefficient == Derived
                    ? Coefficients
                        + ", from the shrinkage by C = S / "
                        + (Shrinkage.IsEarly(id) ? "(2200 − 12 S)" : "(3000 − 20 S)")
                    : Coefficients,
                coefficient
            )
        );
}
