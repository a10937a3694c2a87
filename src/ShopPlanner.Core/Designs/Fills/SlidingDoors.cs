using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>
/// Two doors that slide past each other in grooves of what bounds the bay below and above. The upper groove is so much deeper
/// that a door, lifted into it, comes out of the lower one.
/// </summary>
internal sealed class SlidingDoors : IFill
{
    private const int Leaves = 2;

    public KindInfo Info { get; } =
        new(
            "sliding-doors",
            "Sliding doors",
            "Two doors that slide in grooves of a case and lift out.",
            [
                new("material", "Doors", MemberType.Role, null),
                new("overlap", "Overlap in the middle", MemberType.Length, "1 in"),
                new("setback", "Set back from the front", MemberType.Length, "1/4 in"),
                new("lower", "Depth of the lower grooves", MemberType.Length, "1/8 in"),
                new("upper", "Depth of the upper grooves", MemberType.Length, "5/16 in"),
                new("play", "Clearance for a door in its groove, each face", MemberType.Length, "1/32 in"),
                new("between", "Wood between the grooves", MemberType.Length, "1/4 in"),
                .. EdgeAsked.ThinMembers("Upright edges of the doors"),
            ]
        );

    public bool Closes => true;

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var asked = SlidingAsked.Read(members);
        if (asked is null || !asked.Fits(members, bay))
            return bay;
        var wide = asked.Width(bay.Box.Dx);
        Draft? rear = null;
        for (var i = 0; i < Leaves; i++)
        {
            var y = bay.Box.Y + asked.SetBack + asked.Play + ((asked.Groove + asked.Between) * i);
            var x = i == 0 ? bay.Box.X : bay.Box.EndX - wide.Value;
            var clear = bay.Box.With(Axis.X, x, x + wide.Value).With(Axis.Y, y, y + asked.Material.Thickness);
            rear = Door(asked, members, bay, clear, wide, builder);
            if (rear is null)
                return bay;
        }

        asked.Say(bay, builder);
        return bay with { Box = bay.Box.With(Axis.Y, rear!.Box.EndY + asked.Play + asked.Between, bay.Box.EndY) };
    }

    private static Draft? Door(SlidingAsked asked, NodeReader members, Bay bay, Box clear, Working<Length> wide, Builder builder)
    {
        var (below, above) = (Track(bay, clear, false, builder), Track(bay, clear, true, builder));
        if (below is null || above is null)
        {
            members.Fail(
                "material",
                asked.Material.Name,
                $"finds nothing {(below is null ? "below" : "above")} to cut its grooves in: sliding doors run between the "
                    + "bottom and the top of a case, or between fixed shelves"
            );
            return null;
        }

        if (!asked.LeavesWood(members, below, above))
            return null;
        var door = builder.Add(
            new(
                "Sliding door",
                "Sliding door",
                asked.Material,
                clear.Grown(Axis.Z, asked.Lower.Value, asked.Hold),
                Axis.Z,
                Axis.Y
            )
            {
                Length = asked.Height(bay.Box.Dz),
                Width = wide,
                FacesToFinish = "both faces, all edges",
            }
        );
        foreach (var side in new[] { BoxSide.Left, BoxSide.Right })
            EdgeMaker.Treat(door, side, asked.Edge, builder);
        builder.Join(JointKind.SlidingGroove, door, below, Axis.Z, asked.Lower.Value);
        builder.Join(JointKind.SlidingGroove, door, above, Axis.Z, asked.Hold, asked.Upper.Value - asked.Hold);
        return door;
    }

    // One part along the whole way of the door, as deep as the door is thick at least.
    private static Draft? Track(Bay bay, Box door, bool isAbove, Builder builder) =>
        builder
            .Touching(door, Axis.Z, isAbove)
            .FirstOrDefault(one =>
                one.Box.X <= bay.Box.X && one.Box.EndX >= bay.Box.EndX && one.Box.Y < door.Y && one.Box.EndY > door.EndY
            );
}

/// <summary>What is asked of sliding doors.</summary>
internal sealed record SlidingAsked(
    RoleMaterial Material,
    Working<Length> Overlap,
    Length SetBack,
    Working<Length> Lower,
    Working<Length> Upper,
    Length Play,
    Length Between,
    EdgeAsked Edge
)
{
    private static readonly SourceNote Practice = new(
        "Common practice: the upper groove is twice as deep as the lower one and a little more, so that the door lifts out",
        Certainty.CommonPractice
    );

    // What is free under a door that is lifted all the way.
    private static readonly Length Lift = Length.FromInches(0.0625m);

    // A door that is more than so many times as tall as wide jams (common practice).
    private const int TallestForWidth = 2;

    /// <summary>Width of a groove.</summary>
    public Length Groove => Material.Thickness + (Play * 2);

    /// <summary>How far a door that stands in the lower groove reaches into the upper one.</summary>
    public Length Hold => Upper.Value - Lower.Value - Lift;

    public static SlidingAsked? Read(NodeReader members)
    {
        var material = members.Role("material");
        var asked = new SlidingAsked(
            material,
            members.Length("overlap"),
            members.Length("setback").Value,
            members.Length("lower"),
            members.Length("upper"),
            members.Length("play").Value,
            members.Length("between").Value,
            EdgeAsked.Read(members, material)
        );
        return members.Failed ? null : asked;
    }

    /// <summary>Refuses doors that would fall out, not pass each other, or find no room.</summary>
    public bool Fits(NodeReader members, Bay bay)
    {
        string Text(Length length) => LengthFormat.WithUnit(length, members.Unit);
        if (!Lower.Value.IsPositive)
            members.Fail("lower", Text(Lower.Value), "guides no door: at least 1/16 in");
        else if (Hold < Lower.Value)
            members.Fail(
                "upper",
                Text(Upper.Value),
                "holds the doors by less than the lower grooves, or keeps them from being lifted out: at least "
                    + Text((Lower.Value * 2) + Lift)
            );
        if (!Between.IsPositive)
            members.Fail("between", Text(Between), "leaves no wood between the grooves: at least 1/8 in");
        if (Overlap.Value >= bay.Box.Dx)
            members.Fail("overlap", Text(Overlap.Value), "is as wide as the opening: the doors could not open");
        var deep = SetBack + (Groove * 2) + Between;
        if (deep > bay.Box.Dy)
            members.Fail("setback", Text(SetBack), $"and the grooves need {Text(deep)} of depth: the bay has {Text(bay.Box.Dy)}");
        return !members.Failed;
    }

    /// <summary>Refuses grooves that go through more than half of what takes them.</summary>
    public bool LeavesWood(NodeReader members, Draft below, Draft above)
    {
        foreach (var (name, depth, into) in new[] { ("lower", Lower.Value, below), ("upper", Upper.Value, above) })
            if (depth * 2 > into.Box.Dz)
                members.Fail(
                    name,
                    LengthFormat.WithUnit(depth, members.Unit),
                    $"is more than half of the {into.Name.ToLowerInvariant()}: at most "
                        + LengthFormat.WithUnit(
                            RuleMarks.Down(Length.FromTicks(into.Box.Dz.Ticks / 2), members.Unit),
                            members.Unit
                        )
                );
        return !members.Failed;
    }

    /// <summary>Width of each door.</summary>
    public Working<Length> Width(Length opening) =>
        Working.Of(
            "Width of a sliding door",
            Length.FromTicks((opening + Overlap.Value).Ticks / 2),
            "({opening} + {overlap}) ÷ 2",
            Working.Geometry,
            ("opening", Working.Given("Opening width", opening)),
            ("overlap", Overlap)
        );

    /// <summary>Height of each door, both tongues included.</summary>
    public Working<Length> Height(Length opening) =>
        Working.Of(
            "Height of a sliding door",
            opening + Upper.Value - Lift,
            "{opening} + {upper} − 1/16 in",
            Practice,
            ("opening", Working.Given("Opening height", opening)),
            ("upper", Upper)
        );

    /// <summary>What is bought, and what is to be watched.</summary>
    public void Say(Bay bay, Builder builder)
    {
        builder.Buy("Recessed pull", 2);
        builder.Steps.Add("Try a sliding door in its grooves before the case is joined, and wax doors and grooves at the end.");
        if (bay.Box.Dz > Width(bay.Box.Dx).Value * TallestForWidth)
            builder.Warn(
                Severity.Watch,
                "The sliding doors are more than twice as tall as wide, so they will jam. Use a lower or wider opening, or "
                    + "doors on hinges.",
                null,
                Width(bay.Box.Dx)
            );
    }
}
