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
    Length GrooveHeight,
    Working<Length> Groove,
    Working<Length> Play,
    Working<Length> Room
) : Question(Unit)
{
    private static readonly SourceNote SlideRoom = new(
        "Common practice: 1/2 in at each side for most side-mount slides; the maker's sheet comes first",
        Certainty.CommonPractice
    );
    private static readonly SourceNote RunnerRoom = new(
        "Common practice: 1/16 in at each side on wood runners",
        Certainty.CommonPractice
    );

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
        var hasSlides = reader.Choice("slides") == "side";
        return new(
            reader.Unit,
            reader.Given("Opening width", "opening-width"),
            reader.Given("Opening height", "opening-height"),
            depth,
            free,
            reader.MaybeGiven("Clearance at each side", "slide-clearance") ?? Usual(hasSlides),
            hasSlides,
            Enum.Parse<DrawerJoint>(reader.Choice("joint"), true),
            reader.Given("Side", "side"),
            reader.Length("bottom"),
            reader.Length("groove-height"),
            reader.Given("Groove", "groove"),
            reader.Given("Play", "play"),
            reader.Given("Clearance above and below", "height-clearance")
        );
    }

    /// <summary>Whether the bottom is fastened on from below, not let into a groove.</summary>
    public bool IsPlanted => !Groove.Value.IsPositive;

    /// <summary>Height of the sides.</summary>
    public Working<Length> SideHeight
    {
        get
        {
            var bottom = Working.Given("Bottom", Bottom);
            return IsPlanted
                ? Working.Of(
                    "Box height",
                    Height.Value - Room.Value - Bottom,
                    "{opening} − {room} − {bottom} below it",
                    Working.Geometry,
                    ("opening", Height),
                    ("room", Room),
                    ("bottom", bottom)
                )
                : Working.Of(
                    "Box height",
                    Height.Value - Room.Value,
                    "{opening} − {room}",
                    Working.Geometry,
                    ("opening", Height),
                    ("room", Room)
                );
        }
    }

    private static Working<Length> Usual(bool hasSlides)
    {
        var room = Length.FromInches(hasSlides ? 0.5m : 0.0625m);
        return Working.Looked("Clearance at each side", room, new LengthFigure(room), hasSlides ? SlideRoom : RunnerRoom);
    }
}
