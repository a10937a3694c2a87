using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of screws.</summary>
internal sealed record ScrewAsked(
    LengthUnit Unit,
    Working<Length> Near,
    Working<Length> Into,
    ScrewJoint Joint,
    PilotWood Wood,
    Working<Length> Width
) : Question(Unit)
{
    public static ScrewAsked Read(FormReader reader) =>
        new(
            reader.Unit,
            reader.Given("Near piece", "thickness"),
            reader.Given("Far piece", "into"),
            Enum.Parse<ScrewJoint>(reader.Choice("joint"), true),
            Enum.Parse<PilotWood>(reader.Choice("wood"), true),
            reader.Given("Width of the joint", "width")
        );
}
