using System.Collections.Immutable;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Workings.Forms;

/// <summary>Spacing, pins, screws, dowels.</summary>
internal static class HardwareForms
{
    public static readonly ImmutableArray<WorkingForm> All = [SpacingForm(), PinsForm(), ScrewsForm(), DowelsForm()];

    private static readonly SourceNote EdgeRule = new("Common practice: two screws from 1 1/2 in of width on, then one for each 6 in", Certainty.CommonPractice);

    private static WorkingForm SpacingForm() => new(
        "spacing", "Equal spacing", "Slats, spindles or rails at equal gaps, and the spacer block that sets them.",
        [
            new("span", "Clear span", KeyKind.Length) { Most = "40 ft" },
            new("member", "Width of one", KeyKind.Length) { Most = "10 ft" },
            new("count", "How many", KeyKind.Count) { Optional = true, Least = "1", Most = "500", Hint = "Or give the widest gap" },
            new("max-gap", "Widest gap", KeyKind.Length) { Optional = true, Most = "10 ft" },
            new("ends", "What stands at the ends", KeyKind.Choice) { Default = "gaps", Choices = [new("members", "a member at each end"), new("gaps", "a gap at each end")] },
        ],
        reader =>
        {
            var (span, member) = (Working.Given("Span", reader.Length("span")), Working.Given("Width of one", reader.Length("member")));
            var (count, widest, atEnds) = (reader.MaybeCount("count"), reader.MaybeLength("max-gap"), reader.Choice("ends") == "members");
            if (count is null && widest is null && reader.Faults.Count == 0) reader.Refuse("count", "is not given, and no max-gap either: one of them is wanted");
            return () => Spaced(count is { } n ? Spacing.Of(span, member, n, atEnds) : Spacing.Within(span, member, widest!.Value, atEnds), span.Value, member.Value, count, widest);
        });

    private static FormOutcome Spaced(Spacing? spacing, Length span, Length member, int? count, Length? widest)
    {
        if (spacing is null)
            return Fault.Of("count", count?.ToString(System.Globalization.CultureInfo.InvariantCulture), "does not go into the span: fewer, or narrower ones; with a member at each end at least 2");
        var number = Working.Looked("How many", spacing.Count, QuantityKind.Bare, 0, count is null ? Working.Geometry : Working.AsGiven);
        var verdicts = widest is { } most && spacing.Gap.Value > most ? new Verdict(Gravity.Watch, "With this number the gap is wider than the one asked for.") : null;
        return new Answer([spacing.Gap, number, spacing.Positions])
        {
            Verdicts = verdicts is null ? [] : [verdicts], Cautions = [Cautions.SmallParts],
            Parts = spacing.Gap.Value.IsPositive ? [new("Spacer block", Length.Max(member, Length.FromInches(6)), spacing.Gap.Value, Length.FromInches(0.75m), 1)] : [],
        };
    }

    private static WorkingForm PinsForm() => new(
        "pins", "Shelf pins", "Rows of holes for shelf pins, drilled with one template.",
        [
            new("height", "Clear height of the side", KeyKind.Length) { Most = "12 ft" },
            new("first", "Height of the lowest hole", KeyKind.Length) { Default = "6 in", Most = "10 ft" },
            new("pitch", "From hole to hole", KeyKind.Length) { Default = "32 mm", Least = "1/2 in", Most = "2 ft" },
            new("setback", "From the front and back edges", KeyKind.Length) { Default = "37 mm", Least = "1/4 in", Most = "1 ft" },
            new("depth", "Thickness of the side", KeyKind.Length) { Default = "23/32 in", Least = "1/4 in", Most = "3 in", Hint = "The hole stops 1/8 in short of its far face" },
        ],
        reader =>
        {
            var (height, first, pitch) = (Working.Given("Height", reader.Length("height")), Working.Given("First hole", reader.Length("first")), Working.Given("Pitch", reader.Length("pitch")));
            var (setback, thickness) = (Working.Given("Setback", reader.Length("setback")), Working.Given("Thickness", reader.Length("depth")));
            return () => Pins(height, first, pitch, setback, thickness);
        });

    private static FormOutcome Pins(Working<Length> height, Working<Length> first, Working<Length> pitch, Working<Length> setback, Working<Length> thickness)
    {
        var holes = ShelfPins.Heights(height, first, pitch, first);
        if (holes.Value.IsEmpty) return Fault.Of("first", first.Figure.Text(LengthUnit.Inch), "leaves no room for a hole: less than half the height is wanted");
        var count = Working.Of("Holes in each row", holes.Value.Length, QuantityKind.Bare, 0, "as many as {heights}", Working.Geometry, ("heights", holes));
        var deep = Length.Min(Length.FromMillimetres(10), thickness.Value - Length.FromInches(0.125m));
        var depth = Working.Of("Depth of the holes", deep, "10 mm, or {thickness} less 1/8 in", new("Common practice: half a usual pin, never through", Certainty.CommonPractice), ("thickness", thickness));
        return new Answer([holes, count, setback, depth])
        {
            Verdicts = [new(Gravity.Fine, "Two rows on each side, both sides with the same end of the template at the bottom: mark that end.")],
        };
    }

    private static WorkingForm ScrewsForm() => new(
        "screws", "Screws", "Which screw joins two pieces without breaking through, and its drills.",
        [
            new("thickness", "Thickness of the near piece", KeyKind.Length) { Most = "6 in" },
            new("into", "Wood of the far piece in the screw's direction", KeyKind.Length) { Most = "24 in" },
            new("joint", "Joint", KeyKind.Choice) { Default = "face", Choices = [new("pocket", "from a pocket"), new("face", "face to face"), new("edge", "into an edge or end")] },
            new("wood", "Far piece", KeyKind.Choice) { Default = "softwood", Choices = [new("softwood", "softwood, plywood, MDF"), new("hardwood", "hardwood")] },
            new("width", "Width of the joint", KeyKind.Length) { Default = "2 1/2 in", Most = "8 ft" },
        ],
        reader =>
        {
            var (near, into) = (Working.Given("Near piece", reader.Length("thickness")), Working.Given("Far piece", reader.Length("into")));
            var joint = reader.Choice("joint") switch { "pocket" => ScrewJoint.Pocket, "edge" => ScrewJoint.Edge, _ => ScrewJoint.Face };
            var (hard, width) = (reader.Choice("wood") == "hardwood", Working.Given("Width of the joint", reader.Length("width")));
            return () => Screws(near, into, joint, hard, width);
        });

    private static FormOutcome Screws(Working<Length> near, Working<Length> into, ScrewJoint joint, bool hard, Working<Length> width)
    {
        var (choice, refused) = ScrewChoice.Of(near, into, joint);
        if (choice is null) return Fault.Of(refused!.Contains("too thin", StringComparison.Ordinal) || refused.Contains("thicker", StringComparison.Ordinal) ? "thickness" : "into", Shown(near, into, refused), refused);
        var count = width.Value < Length.FromInches(1.5m) ? 1 : 2 + (int)((width.Value - Length.FromTicks(1)).Ticks / Length.FromInches(6).Ticks);
        var holes = Working.Of("Screws in the joint", count, QuantityKind.Bare, 0, "by {width}", EdgeRule, ("width", width));
        return new Answer([choice.Length, .. Drills(choice, near, joint, hard), choice.Penetration, holes]) { Verdicts = [.. Verdicts(choice, into.Value, joint, hard)] };
    }

    private static string Shown(Working<Length> near, Working<Length> into, string refused) =>
        (refused.Contains("too thin", StringComparison.Ordinal) || refused.Contains("thicker", StringComparison.Ordinal) ? near : into).Figure.Text(LengthUnit.Inch);

    private static IEnumerable<Working> Drills(ScrewChoice choice, Working<Length> near, ScrewJoint joint, bool hard)
    {
        var (gauge, pilot) = (choice.Gauge, hard ? choice.Gauge.PilotHardwood : choice.Gauge.PilotSoftwood);
        yield return Working.Looked("Gauge", gauge.Gauge, QuantityKind.Bare, 0, new("Common practice by thickness", Certainty.CommonPractice));
        if (joint == ScrewJoint.Pocket)
        {
            yield return Working.Of("Stop collar: the jig's mark for", near.Value, "the thickness of {near}", ScrewChoice.PocketPractice, ("near", near));
            yield break;
        }

        yield return Working.Looked("Clearance drill, near piece", gauge.Clearance, new LengthFigure(gauge.Clearance), WoodScrews.DrillSource);
        yield return Working.Looked("Pilot drill, far piece", pilot, new LengthFigure(pilot), WoodScrews.PilotSource);
        yield return Working.Of("Stop collar on the pilot drill at", choice.Length.Value, "length of {screw}", Working.Geometry, ("screw", choice.Length));
    }

    private static IEnumerable<Verdict> Verdicts(ScrewChoice choice, Length into, ScrewJoint joint, bool hard)
    {
        if (joint == ScrewJoint.Edge) yield return new(Gravity.Watch, "End grain holds a screw badly and plywood edges split: drill the pilot, and add glue, a dowel or a cleat where it carries.");
        if (joint == ScrewJoint.Pocket) yield return new(Gravity.Fine, hard ? "Fine thread for hardwood." : "Coarse thread for softwood, plywood and MDF.");
        if (into - choice.Penetration.Value < Length.FromInches(0.125m))
            yield return new(Gravity.Watch, "Less than 1/8 in of the far piece is left beyond the point: try the joint on scrap of the same thickness first, by the jig's own mark.");
        if (choice.Penetration.Value < choice.Gauge.Diameter * 6)
            yield return new(Gravity.Watch, "Fewer than six diameters are in the far piece, less than the design specification counts (from memory): add glue, and carry no load by it.");
        else if (choice.Penetration.Value < choice.Gauge.Diameter * 10)
            yield return new(Gravity.Watch, "Fewer than ten diameters are in the far piece: sideways it holds less than its full value (from memory of the design specification).");
    }

    private static WorkingForm DowelsForm() => new(
        "dowels", "Dowels", "Dowels for a joint: which, how deep, where.",
        [
            new("thickness", "Thickness of the thinner piece", KeyKind.Length) { Least = "3/8 in", Most = "3 in" },
            new("width", "Length of the joint", KeyKind.Length) { Most = "10 ft" },
        ],
        reader =>
        {
            var (thickness, width) = (Working.Given("Thickness", reader.Length("thickness")), Working.Given("Length of the joint", reader.Length("width")));
            return () => Dowels.Of(thickness, width) is not { } dowels ? Fault.Of("thickness", thickness.Figure.Text(LengthUnit.Inch), "finds no rod from a third to a half of it")
                : new Answer([dowels.Diameter, dowels.DowelLength, dowels.HoleDepth, Working.Of("Dowels", dowels.Places.Value.Length, QuantityKind.Bare, 0, "as many as {places}", Working.Geometry, ("places", dowels.Places)), dowels.Places])
                {
                    Verdicts = [new(Gravity.Fine, "Groove the dowels or buy fluted ones: trapped glue splits the wood.")],
                };
        });
}
