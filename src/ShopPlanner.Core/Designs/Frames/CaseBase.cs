using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>What a case stands on, made by itself and screwed on from inside: a plinth of boards on edge, or legs with rails
/// between them. It is built below the case, whose foot is at z = 0.</summary>
/// <param name="Kind">None, a plinth or legs.</param>
/// <param name="Case">The case above.</param>
/// <param name="Board">Of the plinth's boards or the rails; null without a base.</param>
/// <param name="Leg">Of the legs; null without any.</param>
/// <param name="High">Height of the base.</param>
/// <param name="SetBack">From the front and the ends of the case.</param>
internal sealed record CaseBase(
    string Kind,
    CarcassSizes Case,
    RoleMaterial? Board,
    RoleMaterial? Leg,
    Length High,
    Working<Length> SetBack
)
{
    private const string None = "none";
    private const string Plinth = "plinth";

    /// <summary>What a case takes for it.</summary>
    public static readonly MemberInfo[] Members =
    [
        new("base", "Base under the case", MemberType.Choice, None, None, Plinth, "legs"),
        new("base_board", "Boards of the plinth, or rails between the legs", MemberType.Role, ""),
        new("base_leg", "Legs of the base", MemberType.Role, ""),
        new("base_height", "Height of the base (a plinth is as high as its board)", MemberType.Length, "6 in"),
        new("base_setback", "Base set back from front and ends", MemberType.Length, "1 in"),
    ];

    // A plinth has a board from front to back at least every so often (common practice).
    private static readonly Length CrossApart = Length.FromInches(30);

    private Length X => SetBack.Value;

    private Length Y => Length.Max(SetBack.Value, Case.FrontY);

    private Length EndX => Case.Width.Value - SetBack.Value;

    private Length EndY => Case.BackY;

    private Length Thick => Board!.Thickness;

    /// <summary>How high it lifts the case.</summary>
    public static Length Height(NodeReader members)
    {
        var (kind, board, height) = (
            members.Choice("base"),
            members.MaybeRole("base_board"),
            members.Length("base_height").Value
        );
        if (kind == None || members.Failed)
            return Length.Zero;
        return kind == Plinth ? board?.Width ?? height : height;
    }

    /// <summary>Reads it; null after a fault.</summary>
    public static CaseBase? Read(NodeReader members, CarcassSizes size)
    {
        var (kind, board, leg) = (members.Choice("base"), members.MaybeRole("base_board"), members.MaybeRole("base_leg"));
        var under = new CaseBase(kind, size, board, leg, Height(members), members.Length("base_setback"));
        if (kind != None && !members.Failed)
            under.Check(members);
        return members.Failed ? null : under;
    }

    private void Check(NodeReader members)
    {
        if (Board is null)
            members.Fail("base_board", "", "is missing: a base needs boards for its plinth, or rails between its legs");
        if (Kind != Plinth && Leg is null)
            members.Fail("base_leg", "", "is missing: pick what the legs are made of");
        if (Case.Toe.Value.IsPositive)
            members.Fail("toe", Text(Case.Toe.Value, members), "isn't needed over a base: set it to 0");
        if (!High.IsPositive)
            members.Fail("base_height", Text(High, members), "must be more than zero");
        if (members.Failed)
            return;
        if (EndX - X < Thick * 6 || EndY - Y < Thick * 4)
            members.Fail("base_setback", Text(SetBack.Value, members), "leaves no room for a base: use a smaller one");
        if (Kind != Plinth)
            CheckLegs(members, LegAndApron.Tall(Board!));
    }

    private void CheckLegs(NodeReader members, Length tall)
    {
        if (tall > High)
            members.Fail("base_height", Text(High, members), $"is less than the rails are wide: at least {Text(tall, members)}");
        var wide = Length.Max(Leg!.Width ?? Leg.Thickness, Leg.Thickness);
        if (Thick > Leg.Thickness)
            members.Fail("base_board", Board!.Name, "is thicker than the legs: use a thinner board, or thicker legs");
        if (wide * 3 > Length.Min(EndX - X, EndY - Y))
            members.Fail("base_leg", Leg.Name, "is too wide for a base of this size: use narrower legs");
    }

    /// <summary>Adds its parts.</summary>
    public void Add(Draft bottom, Builder builder)
    {
        if (Kind == None)
            return;
        foreach (var board in Kind == Plinth ? Boards(builder) : Stand(builder))
            Hold(board, bottom, builder);
        builder.Steps.Add("Check that the base doesn't rock before you screw the case to it from inside.");
    }

    // Down through the bottom of the case, else from pockets in the board. A board that mostly lies under a side is held by its
    // neighbors.
    private static void Hold(Draft board, Draft bottom, Builder builder)
    {
        if (board.Box.Meeting(bottom.Box) is not { } contact || contact.Extent(board.Flat) * 2 < board.Box.Extent(board.Flat))
            return;
        if (ButtJoint.TakesScrews(bottom, board, Axis.Z))
            builder.Join(JointKind.Screwed, bottom, board, Axis.Z);
        else
            builder.Join(ButtJoint.Hidden(board, bottom, Axis.Z), board, bottom, Axis.Z);
    }

    private List<Draft> Boards(Builder builder)
    {
        Draft Long(Length y) =>
            Plank("Plinth front and back", Box.Between(X, y, -High, EndX, y + Thick, Length.Zero), Axis.X, builder);
        List<Draft> boards = [Long(Y), Long(EndY - Thick)];
        var free = EndX - X - (Thick * 2);
        var gaps = 1 + (int)((free - Length.FromTicks(1)) / CrossApart);
        for (var i = 0; i <= gaps; i++)
        {
            var x = i == gaps ? EndX - Thick : X + Length.FromTicks((EndX - X - Thick).Ticks * i / gaps);
            var name = i == 0 || i == gaps ? "Plinth end" : "Plinth cross board";
            boards.Add(Between(name, x, boards, builder));
        }

        return boards;
    }

    private Draft Between(string name, Length x, List<Draft> boards, Builder builder)
    {
        var box = Box.Between(x, Y + Thick, -High, x + Thick, EndY - Thick, Length.Zero);
        var board = Plank(name, box, Axis.Y, builder);
        foreach (var other in boards.Take(2))
            builder.Join(ButtJoint.Hidden(board, other, Axis.Y), board, other, Axis.Y);
        return board;
    }

    private Draft Plank(string name, Box box, Axis along, Builder builder) =>
        builder.Add(
            new(name, "Base", Board!, box, along, along == Axis.X ? Axis.Y : Axis.X)
            {
                Length =
                    along == Axis.X
                        ? Working.Of(
                            "Length of the plinth",
                            box.Dx,
                            "{width} − 2 × {setback}",
                            Working.Geometry,
                            ("width", Case.Width),
                            ("setback", SetBack)
                        )
                        : Working.Given("Clear depth of the plinth", box.Dy),
                Width = Working.Given("Height of the plinth", High),
                FacesToFinish = "outer face, lower edge",
            }
        );

    // Legs and rails as of a table, made at its own foot and moved under the case.
    private List<Draft> Stand(Builder builder)
    {
        var before = builder.Drafts.Count;
        var outside = new Outside(
            Less("Width of the base", Case.Width),
            Working.Given("Depth of the base", EndY - Y),
            Working.Given("Height of the base", High)
        );
        var sizes = new LegSizes(Leg!, true, outside);
        var legs = sizes.AddLegs(builder, "Base leg");
        var tall = LegAndApron.Tall(Board!);
        var rails = new Rails(sizes, legs, Board!, tall, Length.Zero, RailJoint.Butted(JointKind.PocketScrew));
        List<Draft> carrying =
        [
            rails.Front("Base rail", High - tall, builder),
            rails.Back("Base rail", High - tall, builder),
            rails.Left("Base end rail", High - tall, builder),
            rails.Right("Base end rail", High - tall, builder),
        ];
        foreach (var draft in builder.Drafts.Skip(before))
            draft.Box = draft.Box.Moved(X, Y, -High);
        return carrying;
    }

    private Working<Length> Less(string name, Working<Length> whole) =>
        Working.Of(
            name,
            whole.Value - (SetBack.Value * 2),
            "{whole} − 2 × {setback}",
            Working.Geometry,
            ("whole", whole),
            ("setback", SetBack)
        );

    private static string Text(Length length, NodeReader members) => LengthFormat.WithUnit(length, members.Unit);
}
