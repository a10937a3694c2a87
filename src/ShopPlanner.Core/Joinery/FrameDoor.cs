using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Parts of a frame-and-panel door: stiles run through, rails have a tongue at each end, the panel is free in a groove.</summary>
/// <param name="Stile">Length of a stile.</param>
/// <param name="Rail">Length of a rail, both tongues included.</param>
/// <param name="PanelWidth">Across the grain.</param>
/// <param name="PanelHeight">Along it.</param>
public sealed record FrameDoor(Working<Length> Stile, Working<Length> Rail, Working<Length> PanelWidth, Working<Length> PanelHeight)
{
    /// <summary>Rails.</summary>
    public static readonly SourceNote RailRule = new("Geometry: door less two stiles and two groove depths more", Certainty.Derived);

    /// <summary>The panel.</summary>
    public static readonly SourceNote PanelRule = new(
        "Geometry; the panel is free in its groove and never glued (Noyes, Handwork in Wood, 1910)", Certainty.Read);

    /// <summary>The parts of a door.</summary>
    /// <param name="width">Of the door.</param>
    /// <param name="height">Of the door.</param>
    /// <param name="stile">Width of a stile.</param>
    /// <param name="rail">Width of a rail.</param>
    /// <param name="groove">Depth of the groove, so length of a tongue.</param>
    /// <param name="across">Room for the panel at each side.</param>
    /// <param name="along">Room for it below and above.</param>
    public static FrameDoor Of(
        Working<Length> width, Working<Length> height, Working<Length> stile, Working<Length> rail, Working<Length> groove, Working<Length> across, Working<Length> along)
    {
        var (clearWidth, clearHeight) = (width.Value - (stile.Value * 2), height.Value - (rail.Value * 2));
        return new(
            Working.Of("Stile length", height.Value, "{height}", Working.Geometry, ("height", height)),
            Working.Of("Rail length", clearWidth + (groove.Value * 2), "{width} − 2 × {stile} + 2 × {groove}", RailRule, ("width", width), ("stile", stile), ("groove", groove)),
            Working.Of(
                "Panel width", clearWidth + (groove.Value * 2) - (across.Value * 2), "{width} − 2 × {stile} + 2 × {groove} − 2 × {room}", PanelRule,
                ("width", width), ("stile", stile), ("groove", groove), ("room", across)),
            Working.Of(
                "Panel height", clearHeight + (groove.Value * 2) - (along.Value * 2), "{height} − 2 × {rail} + 2 × {groove} − 2 × {room}", PanelRule,
                ("height", height), ("rail", rail), ("groove", groove), ("room", along)));
    }
}
