using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Edging;
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

    public BackFit BackFit { get; private init; }

    public bool IsBackLetIn => Back is not null && BackFit == BackFit.LetIn;

    /// <summary>Depth of the back's groove, or of its rabbet in the sides and the top.</summary>
    public Length BackGroove { get; private init; }

    /// <summary>Room for the back in its groove at each edge.</summary>
    public Length BackClearance { get; private init; }

    public Length BackSetback { get; private init; }

    public Length ToeSetback { get; private init; }

    /// <summary>What is done to the front edges.</summary>
    public EdgeAsked Edge { get; private init; } = EdgeAsked.Plain;

    public Length Thick => Case.Thickness;

    /// <summary>Width of a face frame's members: the board's, or for a sheet material one and a half inches (common
    /// practice).</summary>
    public Length FaceWidth => Face?.Width ?? Length.FromInches(1.5m);

    public Length FrontY => Face?.Thickness ?? Length.Zero;

    /// <summary>Where bottom, top and stretchers end: before a back that covers their edges.</summary>
    public Length BackY => Back is { } back && !IsBackLetIn ? Depth.Value - back.Thickness : Depth.Value;

    /// <summary>Where the sides end: they hide a back in rabbets, and end before one that is planted on.</summary>
    public Length SideBackY => BackFit == BackFit.Rabbet ? Depth.Value : BackY;

    public Length BottomZ => Toe.Value;

    public Length TopZ => Height.Value - Thick;

    /// <summary>Where the stretcher at the back ends: before a back that runs up behind it.</summary>
    public Length StretcherBackY => InsideBackY;

    /// <summary>Where the clear space ends at the back.</summary>
    public Length InsideBackY => Back is { } back && IsBackLetIn ? Depth.Value - BackSetback - back.Thickness : BackY;

    public Working<Length> SideDepth => DepthTo("Depth of the sides", SideBackY);

    public Working<Length> CaseDepth => DepthTo("Depth of the case", BackY);

    private Working<Length> DepthTo(string name, Length end) =>
        Working.Of(
            name,
            end - FrontY,
            "{depth} − {face} − {back}",
            Working.Geometry,
            ("depth", Depth),
            ("face", Working.Given("face frame", FrontY)),
            ("back", Working.Given("back panel", Depth.Value - end))
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
        var material = members.Role("case");
        var sizes = new CarcassSizes(
            outside.Width,
            outside.Depth,
            outside.Height,
            material,
            members.MaybeRole("back"),
            members.MaybeRole("face"),
            members.Length("let_in"),
            members.Length("toe"),
            members.Length("stretcher")
        )
        {
            IsPanel = members.Choice("over") == "panel",
            BackFit = members.Choice("back_fit") switch
            {
                "let-in" => BackFit.LetIn,
                "rabbet" => BackFit.Rabbet,
                _ => BackFit.Planted,
            },
            BackGroove = members.Length("back_groove").Value,
            BackClearance = members.Length("back_clearance").Value,
            BackSetback = members.Length("back_setback").Value,
            ToeSetback = members.Length("toe_setback").Value,
            Edge = EdgeAsked.Read(members, material),
        };
        if (!members.Failed)
            sizes.Check(members);
        return members.Failed ? null : sizes;
    }

    private void Check(NodeReader members)
    {
        string Text(Length length) => LengthFormat.WithUnit(length, members.Unit);
        if (Face is not null && Edge.Work is not null)
            members.Fail("edge", members.Choice("edge"), "can't be: the face frame covers these edges, so leave them plain");
        if (LetIn.Value >= Thick)
            members.Fail("let_in", Text(LetIn.Value), $"goes through the side: less than {Text(Thick)}");
        if (Back is not null && BackFit != BackFit.Planted)
            CheckGroove(members);
        if (Toe.Value.IsPositive && FrontY + ToeSetback + Thick > BackY)
            members.Fail(
                "toe_setback",
                Text(ToeSetback),
                $"leaves no room for the toe board: at most {Text(BackY - FrontY - Thick)}"
            );
        if (!IsPanel && FrontY + (Stretcher.Value * 2) > StretcherBackY)
            members.Fail(
                "stretcher",
                Text(Stretcher.Value),
                "is too wide: the two stretchers meet, at most "
                    + Text(RuleMarks.Down(Length.FromTicks((StretcherBackY - FrontY).Ticks / 2), members.Unit))
            );
    }

    private void CheckGroove(NodeReader members)
    {
        string Text(Length length) => LengthFormat.WithUnit(length, members.Unit);
        if (BackGroove >= Thick)
            members.Fail("back_groove", Text(BackGroove), $"goes through the side: less than {Text(Thick)}");
        else if (BackGroove <= (IsBackLetIn ? BackClearance : Length.Zero))
            members.Fail("back_groove", Text(BackGroove), "holds no back: the groove must be deeper than the clearance in it");
    }
}

/// <summary>How the back of a case is fitted.</summary>
internal enum BackFit
{
    /// <summary>Screwed on from behind, over the edges of the case.</summary>
    Planted,

    /// <summary>From behind into rabbets of the sides and the top, which hide its edges.</summary>
    Rabbet,

    /// <summary>In grooves, put in while the case is glued up.</summary>
    LetIn,
}
