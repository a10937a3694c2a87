using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a drawer.</summary>
internal sealed record DrawerAsked(
    LengthUnit Unit,
    Working<Length> Width,
    Working<Length> Height,
    Working<Length> Depth,
    Working<Length> Behind,
    Working<Length> Clearance,
    bool HasSlides,
    DrawerJoint Joint,
    Working<Length> Side,
    Length Bottom,
    Working<Length> Groove,
    Working<Length> Play,
    Working<Length> Room
) : Question(Unit)
{
    public static DrawerAsked Read(FormReader reader)
    {
        var (depth, behind) = (
            reader.Given("Depth behind the front", "opening-depth"),
            reader.Given("Clearance behind", "depth-clearance")
        );
        var free = Working.Of(
            "Depth for the box",
            depth.Value - behind.Value,
            "{depth} − {room}",
            Working.Geometry,
            ("depth", depth),
            ("room", behind)
        );
        return new(
            reader.Unit,
            reader.Given("Opening width", "opening-width"),
            reader.Given("Opening height", "opening-height"),
            depth,
            free,
            reader.Given("Clearance at each side", "slide-clearance"),
            reader.Choice("slides") == "side",
            Enum.Parse<DrawerJoint>(reader.Choice("joint"), true),
            reader.Given("Side", "side"),
            reader.Length("bottom"),
            reader.Given("Groove", "groove"),
            reader.Given("Play", "play"),
            reader.Given("Clearance above and below", "height-clearance")
        );
    }
}
