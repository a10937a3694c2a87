using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>A drawer worked out.</summary>
/// <param name="Asked">What it was worked out from.</param>
/// <param name="Box">Its box.</param>
/// <param name="Slide">The longest slide that fits; null for runners of wood.</param>
internal sealed record DrawerMade(DrawerAsked Asked, DrawerBox Box, Working<Length>? Slide)
{
    /// <summary>What the slide leaves of the depth; null without one.</summary>
    public Length? Spare => Slide is { } slide ? Asked.Behind.Value - slide.Value : null;

    /// <summary>Whether the box is so wide or high for its depth that it binds.</summary>
    public bool Racks => Box.Height.Value > Box.Depth.Value || Box.Width.Value > Box.Depth.Value * 2;

    /// <summary>Sizes of box and parts, and the slide.</summary>
    public IEnumerable<Working?> Sizes =>
        [
            Box.Width,
            Box.Height,
            Box.Depth,
            Working.Of("Side length", Box.Depth.Value, "{depth}", Working.Geometry, ("depth", Box.Depth)),
            Box.FrontBack,
            Box.BottomWidth,
            Box.BottomDepth,
            DrawerBox.LetInto(Asked.Side, Asked.Joint),
            GrooveWidth,
            Asked.IsPlanted ? null : Working.Given("Groove above the lower edge", Asked.GrooveHeight),
            Slide,
        ];

    private Working<Length>? GrooveWidth =>
        Asked.IsPlanted
            ? null
            : Working.Of(
                "Groove width",
                Asked.Bottom,
                "{bottom}, as measured",
                CentredGroove.Panel,
                ("bottom", Working.Given("Bottom", Asked.Bottom))
            );

    /// <summary>Parts for a project.</summary>
    public ImmutableArray<ProposedPart> Proposed =>
        [
            new("Drawer side", Box.Depth.Value, Box.Height.Value, Asked.Side.Value, 2),
            new("Drawer front and back", Box.FrontBack.Value, Box.Height.Value, Asked.Side.Value, 2),
            new("Drawer bottom", Box.BottomWidth.Value, Box.BottomDepth.Value, Asked.Bottom, 1),
        ];

    public static DrawerMade Of(DrawerAsked asked)
    {
        var slide = asked.HasSlides ? Slides.Longest(asked.Behind, asked.Unit) : null;
        var depth = slide is null
            ? Working.Of("Box depth", asked.Behind.Value, "{behind}", Working.Geometry, ("behind", asked.Behind))
            : Working.Of("Box depth", slide.Value, "same as {slide}", Slides.Lengths, ("slide", slide));
        var box = DrawerBox.Of(
            asked.Width,
            asked.SideHeight,
            depth,
            asked.Clearance,
            asked.Side,
            asked.Joint,
            asked.Groove,
            asked.Play
        );
        return new(asked, box, slide);
    }
}
