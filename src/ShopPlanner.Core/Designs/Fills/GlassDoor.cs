using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>What is asked of a glass door beside what every door takes.</summary>
/// <param name="Corner">How the corners of its frame are joined.</param>
/// <param name="Rabbet">How far the rabbet reaches over the glass.</param>
/// <param name="Glass">Thickness of the glass.</param>
/// <param name="Stop">What the stops behind the glass are ripped from; null where it is not named.</param>
internal sealed record GlassAsked(JointKind Corner, Working<Length> Rabbet, Working<Length> Glass, RoleMaterial? Stop)
{
    /// <summary>What doors take for it.</summary>
    public static readonly MemberInfo[] Members =
    [
        new("corner", "Corners of a glass door", MemberType.Choice, "half-lap", "half-lap", "bridle", "mortise", "miter"),
        new("rabbet", "Width of the rabbet for glass", MemberType.Length, "3/8 in"),
        new("glass", "Thickness of the glass", MemberType.Length, "1/8 in"),
        new("stop", "Strips behind the glass", MemberType.Role, ""),
    ];

    private static readonly SourceNote Lip = new(
        "Common practice: at least a third of the frame stays in front of the glass",
        Certainty.CommonPractice
    );

    public static GlassAsked Read(NodeReader members) =>
        new(
            members.Choice("corner") switch
            {
                "bridle" => JointKind.Bridle,
                "mortise" => JointKind.MortiseAndTenon,
                "miter" => JointKind.Miter,
                _ => JointKind.HalfLap,
            },
            members.Length("rabbet"),
            members.Length("glass"),
            members.MaybeRole("stop")
        );

    public void Check(NodeReader members, RoleMaterial frame, Working<Length> stile, Length clearance)
    {
        if (Rabbet.Value <= clearance)
            members.Fail("rabbet", Text(Rabbet.Value, members), "is no wider than the clearance: the glass would fall out");
        if (Rabbet.Value * 2 >= stile.Value)
            members.Fail(
                "rabbet",
                Text(Rabbet.Value, members),
                $"leaves too little of the stile: less than half of {Text(stile.Value, members)}"
            );
        if (Stop is null)
            members.Fail("stop", "", "is missing: glass needs strips behind it that hold it, as thin as 1/4 in plywood");
        else if (Deep.Value * 3 > frame.Thickness * 2)
            members.Fail(
                "stop",
                Stop.Name,
                $"and the glass need a rabbet {Text(Deep.Value, members)} deep: at most "
                    + $"{Text(RuleMarks.Down(Length.FromTicks(frame.Thickness.Ticks * 2 / 3), members.Unit), members)} of this "
                    + "frame. Use thinner strips or glass, or a thicker frame"
            );
        if (!Tongue(frame, stile, members.Unit).Value.IsPositive)
            members.Fail("corner", "mortise", "finds no room in the stile: use wider stiles, or half-laps");
    }

    /// <summary>Depth of the rabbet, from the back.</summary>
    public Working<Length> Deep =>
        Working.Of(
            "Depth of the rabbet",
            Glass.Value + Stop!.Thickness,
            "{glass} + {stop}",
            Lip,
            ("glass", Glass),
            ("stop", Working.Given("strips", Stop.Thickness))
        );

    /// <summary>How far the rails reach into the stiles: a tenon by its length, all others across the whole stile.</summary>
    public Working<Length> Tongue(RoleMaterial frame, Working<Length> stile, LengthUnit unit) =>
        Corner == JointKind.MortiseAndTenon
            ? MortiseTenon.Blind(MortiseTenon.Depth(MortiseTenon.Thickness(Working.Given("frame", frame.Thickness), unit), stile))
            : stile;

    private static string Text(Length length, NodeReader members) => LengthFormat.WithUnit(length, members.Unit);
}

/// <summary>Fits glass into the frame of a door: a rabbet in its back, the glass less its clearance, stops behind it.</summary>
internal sealed class GlassMaker(DoorsAsked asked, DoorSizes sizes, Builder builder)
{
    private Length Reach => asked.Glass.Rabbet.Value;

    /// <summary>Adds the stops, and orders the glass.</summary>
    /// <param name="clear">Opening of the frame.</param>
    /// <param name="frame">Its members.</param>
    public void Add(Box clear, DoorFrame frame)
    {
        var behind = clear.With(Axis.Y, clear.EndY - asked.Glass.Stop!.Thickness, clear.EndY);
        foreach (var (stile, x) in new[] { (frame.Left, clear.X - Reach), (frame.Right, clear.EndX) })
            Upright(behind.With(Axis.X, x, x + Reach).Grown(Axis.Z, Reach, Reach), stile, frame);
        foreach (var (rail, z) in new[] { (frame.Below, clear.Z - Reach), (frame.Above, clear.EndZ) })
            builder.Join(JointKind.Pinned, Strip(behind.With(Axis.Z, z, z + Reach), Axis.X), rail, Axis.Z, Reach);
        Join();
        Order();
    }

    // It runs to the ends of the rabbet, into the corners.
    private void Upright(Box box, Draft stile, DoorFrame frame)
    {
        var strip = Strip(box, Axis.Z);
        builder.Join(JointKind.Pinned, strip, stile, Axis.X, Reach);
        foreach (var rail in frame.Rails.Where(rail => rail.Box.Shared(box) is not null))
            builder.Join(JointKind.Pinned, strip, rail, Axis.Z, Reach);
    }

    private Draft Strip(Box box, Axis along) =>
        builder.Add(
            new("Glass stop", "Door", asked.Glass.Stop!, box, along, Axis.Y)
            {
                Width = Working.Given("Width of the rabbet", Reach),
                FacesToFinish = "back face, inner edge",
            }
        );

    private void Join()
    {
        if (asked.Glass.Corner == JointKind.Miter)
            builder.Steps.Add(
                "When the glue of a mitered door frame is hard, saw a slot across every corner in a jig, and glue in a spline, "
                    + "its grain across the joint."
            );
    }

    private void Order()
    {
        // The size of a panel in a groove as deep as the rabbet is wide.
        var glass = FrameDoor.Of(
            sizes.Width,
            sizes.Height,
            asked.Stile,
            asked.Stile,
            asked.Glass.Rabbet,
            asked.Clearance,
            asked.Clearance
        );
        var (width, height) = (Cut(glass.PanelWidth.Value), Cut(glass.PanelHeight.Value));
        builder.Buy($"Tempered glass, {Text(asked.Glass.Glass.Value)} thick, {width} × {height}, edges seamed", 1);
        builder.Steps.Add("Finish the glass doors first. Then lay the glass in, and hold the stops with brads, without glue.");
        builder.Warn(
            Severity.Safety,
            "Order tempered safety glass from a glazier by the rabbet you measure, less the clearance: it can't be cut later. "
                + "Wear gloves and eye protection when you handle it.",
            null,
            glass.PanelWidth.Named("Glass width")
        );
    }

    private string Cut(Length length) => Text(RuleMarks.Down(length, builder.Unit));

    private string Text(Length length) => LengthFormat.WithUnit(length, builder.Unit);
}
