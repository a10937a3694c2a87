using System.Collections.Immutable;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings.Forms;

/// <summary>Doors.</summary>
internal static class DoorForms
{
    public static readonly ImmutableArray<WorkingForm> All = [DoorForm()];

    private static readonly SourceNote Card = new("Common practice: a playing card is 0.011 to 0.012 in thick", Certainty.CommonPractice);
    private static readonly Length CardThickness = Length.FromInches(0.0115m);

    private static WorkingForm DoorForm() => new(
        "door", "Frame-and-panel door", "Every part of a door from its opening: leaves, stiles, rails, panels, finished and rough.",
        [
            new("opening-width", "Opening, width", KeyKind.Length) { Most = "10 ft" },
            new("opening-height", "Opening, height", KeyKind.Length) { Most = "10 ft" },
            new("leaves", "Leaves", KeyKind.Count) { Default = "1", Least = "1", Most = "2" },
            new("fit", "Fit", KeyKind.Choice) { Default = "inset", Choices = [new("inset", "in the opening"), new("overlay", "on the front")] },
            new("gap", "Gap", KeyKind.LengthOrZero) { Default = "1/16 in", Most = "1 in" },
            new("overlay", "Overlay at each side", KeyKind.LengthOrZero) { Default = "1/2 in", Most = "6 in" },
            new("stile", "Width of a stile", KeyKind.Length) { Default = "2 1/4 in", Most = "12 in" },
            new("rail", "Width of a rail", KeyKind.Length) { Optional = true, Most = "12 in", Hint = "As the stiles where left out" },
            new("groove", "Depth of the groove", KeyKind.Length) { Default = "3/8 in", Most = "2 in" },
            new("panel", "Thickness of the panel", KeyKind.Length) { Default = "1/4 in", Most = "2 in" },
            new("clearance", "Room for the panel at each side", KeyKind.LengthOrZero) { Default = "1/16 in", Most = "1 in", Hint = "Half of it below and above" },
            new("oversize", "Cut long, to trim to the opening", KeyKind.LengthOrZero) { Default = "1/2 in", Most = "3 in" },
            new("thickness", "Thickness of the frame", KeyKind.Length) { Default = "3/4 in", Most = "3 in" },
        ],
        reader =>
        {
            var asked = new Asked(
                Given(reader, "opening-width", "Opening width"), Given(reader, "opening-height", "Opening height"), reader.Count("leaves"), reader.Choice("fit") == "inset",
                Given(reader, "gap", "Gap"), Given(reader, "overlay", "Overlay"), Given(reader, "stile", "Stile"),
                Working.Given("Rail", reader.MaybeLength("rail") ?? reader.Length("stile")), Given(reader, "groove", "Groove"), reader.Length("panel"),
                Given(reader, "clearance", "Room for the panel"), reader.Length("oversize"), reader.Length("thickness"));
            return () => Answer(asked);
        });

    private static Working<Length> Given(FormReader reader, string key, string name) => Working.Given(name, reader.Length(key));

    private static FormOutcome Answer(Asked asked)
    {
        var door = asked.Inset ? DoorSizes.Inset(asked.Width, asked.Height, asked.Leaves, asked.Gap) : DoorSizes.Overlay(asked.Width, asked.Height, asked.Leaves, asked.Overlay, asked.Gap);
        if (Refused(asked, door) is { } fault) return fault;
        var along = Working.Given("Room below and above", Length.FromTicks(asked.Clearance.Value.Ticks / 2));
        var parts = FrameDoor.Of(door.Width, door.Height, asked.Stile, asked.Rail, asked.Groove, asked.Clearance, along);
        var rough = Working.Of("Stiles cut at", parts.Stile.Value + asked.Oversize, "{stile} + {oversize}", Working.Geometry, ("stile", parts.Stile), ("oversize", Working.Given("oversize", asked.Oversize)));
        var cards = Math.Max(1, (int)Math.Round(asked.Gap.Value.Ticks / (double)CardThickness.Ticks));
        var shims = Working.Of("Gap in playing cards", cards, QuantityKind.Bare, 0, "{gap} ÷ 0.0115 in", Card, ("gap", asked.Gap));
        return new Answer([door.Width, door.Height, parts.Stile, parts.Rail, parts.PanelWidth, parts.PanelHeight, rough, shims])
        {
            Verdicts = [.. Verdicts(asked, door)],
            Cautions = [Cautions.GrooveWithoutGuard, Cautions.SmallParts],
            Parts = Parts(asked, parts),
        };
    }

    private static ImmutableArray<ProposedPart> Parts(Asked asked, FrameDoor parts) =>
    [
        new("Door stile", parts.Stile.Value, asked.Stile.Value, asked.Thickness, 2 * asked.Leaves) { CutLongBy = asked.Oversize },
        new("Door rail", parts.Rail.Value, asked.Rail.Value, asked.Thickness, 2 * asked.Leaves),
        new("Door panel", parts.PanelHeight.Value, parts.PanelWidth.Value, asked.Panel, asked.Leaves),
    ];

    private static Fault? Refused(Asked asked, DoorSizes door)
    {
        if (!door.Width.Value.IsPositive || !door.Height.Value.IsPositive) return At("gap", asked.Gap, "is wider than the opening leaves: nothing remains of the door");
        if (asked.Stile.Value * 2 >= door.Width.Value) return At("stile", asked.Stile, $"is half the door or more: a leaf comes to {Text(door.Width.Value)}");
        if (asked.Rail.Value * 2 >= door.Height.Value) return At("rail", asked.Rail, $"is half the door or more: the door comes to {Text(door.Height.Value)}");
        if (asked.Groove.Value >= asked.Stile.Value || asked.Groove.Value >= asked.Rail.Value) return At("groove", asked.Groove, "goes through the stile or rail");
        if (asked.Panel >= asked.Thickness) return Fault.Of("panel", Text(asked.Panel), "is as thick as the frame: no groove can take it");
        return asked.Clearance.Value >= asked.Groove.Value ? At("clearance", asked.Clearance, "is as much as the groove is deep: the panel would fall out") : null;
    }

    private static Fault At(string key, Working<Length> given, string message) => Fault.Of(key, Text(given.Value), message);

    private static string Text(Length length) => LengthFormat.Plain(length, LengthUnit.Inch).Text + " in";

    private static IEnumerable<Verdict> Verdicts(Asked asked, DoorSizes door)
    {
        if (door.Width.Value > Length.FromInches(24)) yield return new(Gravity.Watch, "A leaf wider than about 24 in pulls hard on its hinges (common practice): two leaves are lighter.");
        if (door.Rest.IsPositive) yield return new(Gravity.Fine, "What two equal leaves leave over, less than 0.01 mm, goes to the middle gap.");
        if (asked.Oversize.IsPositive) yield return new(Gravity.Fine, "Glue the door up long, then trim it to the opening as it is, shims all round.");
    }

    private sealed record Asked(
        Working<Length> Width, Working<Length> Height, int Leaves, bool Inset, Working<Length> Gap, Working<Length> Overlay, Working<Length> Stile, Working<Length> Rail,
        Working<Length> Groove, Length Panel, Working<Length> Clearance, Length Oversize, Length Thickness);
}
