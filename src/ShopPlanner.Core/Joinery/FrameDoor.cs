using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Parts of a frame-and-panel door: stiles run through, rails have a tongue at each end, the panel is free in a
/// groove.</summary>
/// <param name="Stile">Length of a stile.</param>
/// <param name="Rail">Length of a rail, both tongues included.</param>
/// <param name="PanelWidth">Across the grain.</param>
/// <param name="PanelHeight">Along it.</param>
public sealed record FrameDoor(
    Working<Length> Stile,
    Working<Length> Rail,
    Working<Length> PanelWidth,
    Working<Length> PanelHeight
)
{
    /// <summary>Rails.</summary>
    public static readonly SourceNote RailRule = new(
        "Geometry: the door less two stiles, plus two groove depths",
        Certainty.Derived
    );

    /// <summary>The panel.</summary>
    public static readonly SourceNote PanelRule = new(
        "Geometry; the panel floats in its groove and is never glued (Noyes, Handwork in Wood, 1910)",
        Certainty.Read
    );

    /// <summary>Parts that are cut long first.</summary>
    public static readonly SourceNote RoughRule = new(
        "Common practice: cut long, trim to size when fitting",
        Certainty.CommonPractice
    );

    /// <summary>The parts of a door.</summary>
    /// <param name="width">Of the door.</param>
    /// <param name="height">Of the door.</param>
    /// <param name="stile">Width of a stile.</param>
    /// <param name="rail">Width of a rail.</param>
    /// <param name="groove">Depth of the groove, so length of a tongue.</param>
    /// <param name="across">Room for the panel at each side.</param>
    /// <param name="along">Room for it below and above.</param>
    public static FrameDoor Of(
        Working<Length> width,
        Working<Length> height,
        Working<Length> stile,
        Working<Length> rail,
        Working<Length> groove,
        Working<Length> across,
        Working<Length> along
    ) =>
        new(
            Working.Of("Stile length", height.Value, "{height}", Working.Geometry, ("height", height)),
            Working.Of(
                "Rail length",
                width.Value - (stile.Value * 2) + (groove.Value * 2),
                "{width} − 2 × {stile} + 2 × {groove}",
                RailRule,
                ("width", width),
                ("stile", stile),
                ("groove", groove)
            ),
            Panel("Panel width", width, stile, groove, across),
            Panel("Panel height", height, rail, groove, along)
        );

    /// <summary>How deep the panel's edge sits in the groove when it stands in the middle.</summary>
    /// <param name="groove">Depth of the groove.</param>
    /// <param name="room">Room at each side.</param>
    public static Working<Length> Hold(Working<Length> groove, Working<Length> room) =>
        Working.Of(
            "Panel's edge in the groove",
            groove.Value - room.Value,
            "{groove} − {room}",
            Working.Geometry,
            ("groove", groove),
            ("room", room)
        );

    /// <summary>Size at which a part is cut first.</summary>
    /// <param name="name">Of the result.</param>
    /// <param name="finished">Finished size.</param>
    /// <param name="oversize">Added, to be trimmed.</param>
    public static Working<Length> Rough(string name, Working<Length> finished, Working<Length> oversize) =>
        Working.Of(
            name,
            finished.Value + oversize.Value,
            "{finished} + {oversize}",
            RoughRule,
            ("finished", finished),
            ("oversize", oversize)
        );

    private static Working<Length> Panel(
        string name,
        Working<Length> door,
        Working<Length> frame,
        Working<Length> groove,
        Working<Length> room
    ) =>
        Working.Of(
            name,
            door.Value - (frame.Value * 2) + (groove.Value * 2) - (room.Value * 2),
            "{door} − 2 × {frame} + 2 × {groove} − 2 × {room}",
            PanelRule,
            ("door", door),
            ("frame", frame),
            ("groove", groove),
            ("room", room)
        );
}
