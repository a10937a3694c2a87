using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of screws.</summary>
internal sealed record ScrewAsked(
    Working<Length> Near,
    Working<Length> Into,
    ScrewJoint Joint,
    bool IsHard,
    Working<Length> Width
)
{
    public static ScrewAsked Read(FormReader reader) =>
        new(
            reader.Given("Near piece", "thickness"),
            reader.Given("Far piece", "into"),
            Enum.Parse<ScrewJoint>(reader.Choice("joint"), true),
            reader.Choice("wood") == "hardwood",
            reader.Given("Width of the joint", "width")
        );
}
