using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The sizes that the parts of a sheet carcass share.</summary>
internal sealed record CarcassSizes(
    Working<Length> Width,
    Working<Length> Depth,
    Working<Length> Height,
    RoleMaterial Case,
    RoleMaterial? Back,
    RoleMaterial? Face,
    Working<Length> LetIn,
    Working<Length> Toe,
    Working<Length> Stretcher
)
{
    public bool IsPanel { get; private init; }

    public bool IsBackLetIn { get; private init; }

    public Length BackGroove { get; private init; }

    public Length BackSetback { get; private init; }

    public Length ToeSetback { get; private init; }

    public Length Thick => Case.Thickness;

    /// <summary>Width of a face frame's members: the board's, or for a sheet material one and a half inches (common
    /// practice).</summary>
    public Length FaceWidth => Face?.Width ?? Length.FromInches(1.5m);

    public Length FrontY => Face?.Thickness ?? Length.Zero;

    public Length BackY => Back is { } back && !IsBackLetIn ? Depth.Value - back.Thickness : Depth.Value;

    public Length BottomZ => Toe.Value;

    public Length TopZ => Height.Value - Thick;

    /// <summary>Where the clear space ends at the back.</summary>
    public Length InsideBackY => Back is { } back && IsBackLetIn ? Depth.Value - BackSetback - back.Thickness : BackY;

    public Working<Length> CaseDepth =>
        Working.Of(
            "Depth of the case",
            BackY - FrontY,
            "{depth} − {face} − {back}",
            Working.Geometry,
            ("depth", Depth),
            ("face", Working.Given("face frame", FrontY)),
            ("back", Working.Given("back panel", Depth.Value - BackY))
        );

    public Working<Length> LevelLength =>
        Working.Of(
            "Length between the sides",
            Width.Value - (Thick * 2) + (LetIn.Value * 2),
            "{width} − 2 × {side} + 2 × {letin}",
            Working.Geometry,
            ("width", Width),
            ("side", Working.Given("side", Thick)),
            ("letin", LetIn)
        );

    public static CarcassSizes? Read(NodeReader members, Outside outside)
    {
        var sizes = new CarcassSizes(
            outside.Width,
            outside.Depth,
            outside.Height,
            members.Role("case"),
            members.MaybeRole("back"),
            members.MaybeRole("face"),
            members.Length("let_in"),
            members.Length("toe"),
            members.Length("stretcher")
        )
        {
            IsPanel = members.Choice("over") == "panel",
            IsBackLetIn = members.Choice("back_fit") == "let-in",
            BackGroove = members.Length("back_groove").Value,
            BackSetback = members.Length("back_setback").Value,
            ToeSetback = members.Length("toe_setback").Value,
        };
        if (!members.Failed && sizes.LetIn.Value >= sizes.Thick)
            members.Fail("let_in", sizes.LetIn.Figure.Text(members.Unit), "goes through the side");
        if (!members.Failed && sizes.IsBackLetIn && sizes.BackGroove >= sizes.Thick)
            members.Fail("back_groove", LengthFormat.WithUnit(sizes.BackGroove, members.Unit), "goes through the side");
        return members.Failed ? null : sizes;
    }
}
