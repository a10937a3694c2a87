using System.Collections.Immutable;
using static ShopPlanner.Core.Materials.WoodKind;

namespace ShopPlanner.Core.Materials;

/// <summary>The woods a home shop in North America meets.</summary>
internal static class SpeciesList
{
    /// <summary>Hardwoods first, each group by name.</summary>
    public static readonly ImmutableArray<Species> All =
    [
        new("alder-red", "Red alder", Hardwood, "#EBCFB4"),
        new("ash-white", "White ash", Hardwood, "#EFE3CB"),
        new("aspen-quaking", "Quaking aspen", Hardwood, "#F3EBDA"),
        new("basswood", "Basswood", Hardwood, "#F2E6CF"),
        new("beech-american", "American beech", Hardwood, "#EBD3B8"),
        new("birch-paper", "Paper birch", Hardwood, "#F1E3C8"),
        new("birch-yellow", "Yellow birch", Hardwood, "#EEDDBE"),
        new("butternut", "Butternut", Hardwood, "#E3CDAE"),
        new("cherry-black", "Black cherry", Hardwood, "#E6BFA0"),
        new("elm-american", "American elm", Hardwood, "#E3CFB3"),
        new("hickory-pecan", "Pecan hickory", Hardwood, "#E8CFAF"),
        new("hickory-true", "True hickory", Hardwood, "#E9D5B5"),
        new("mahogany-true", "True mahogany", Hardwood, "#DDB097"),
        new("maple-red", "Red (soft) maple", Hardwood, "#F0E0C8"),
        new("maple-sugar", "Sugar (hard) maple", Hardwood, "#F4E8D2"),
        new("oak-red", "Red oak", Hardwood, "#EACDAE"),
        new("oak-white", "White oak", Hardwood, "#E5D3B0"),
        new("sweetgum", "Sweetgum", Hardwood, "#E0C6AC"),
        new("sycamore", "Sycamore", Hardwood, "#EBD6BF"),
        new("teak", "Teak", Hardwood, "#E0C08D"),
        new("walnut-black", "Black walnut", Hardwood, "#D3B9A0"),
        new("yellow-poplar", "Yellow-poplar", Hardwood, "#E6E4C6"),
        new("cedar-eastern-red", "Eastern redcedar", Softwood, "#EBBFAA"),
        new("cedar-incense", "Incense-cedar", Softwood, "#E9C9AC"),
        new("cedar-northern-white", "Northern white-cedar", Softwood, "#EFDDC0"),
        new("cedar-western-red", "Western redcedar", Softwood, "#E5BD9E"),
        new("douglas-fir-coast", "Douglas-fir, coast", Softwood, "#F0CFA6"),
        new("douglas-fir-interior-north", "Douglas-fir, interior north", Softwood, "#F0D2AD"),
        new("fir-balsam", "Balsam fir", Softwood, "#F5EAD3"),
        new("fir-white", "White fir", Softwood, "#F4E8D0"),
        new("hemlock-western", "Western hemlock", Softwood, "#EFDDC4"),
        new("pine-eastern-white", "Eastern white pine", Softwood, "#F6E6C4"),
        new("pine-lodgepole", "Lodgepole pine", Softwood, "#F5E4C0"),
        new("pine-longleaf", "Longleaf (southern) pine", Softwood, "#F2D9A8"),
        new("pine-loblolly", "Loblolly (southern) pine", Softwood, "#F3DBAC"),
        new("pine-ponderosa", "Ponderosa pine", Softwood, "#F6E3BC"),
        new("pine-sugar", "Sugar pine", Softwood, "#F5E7C9"),
        new("pine-western-white", "Western white pine", Softwood, "#F5E5C3"),
        new("redwood-old-growth", "Redwood, old growth", Softwood, "#E0B39B"),
        new("spruce-sitka", "Sitka spruce", Softwood, "#F4E7CF"),
        new("spruce-pine-fir", "Spruce-pine-fir, sold mixed", Softwood, "#F5E6C8"),
    ];
}
