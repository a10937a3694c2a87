using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Operations;

/// <summary>Every setting is what the boxes say, worked out here once more, and stays inside the wood.</summary>
public sealed partial class SettingTests
{
    private const int Trials = 30;
    private const long Room = Length.TicksPerMillimetre / 5;
    private const long Eighth = Length.TicksPerInch / 8;

    // Sixteenths of an inch, and millimeters, of the chisels and bits that stores carry; a third of the stock, to the nearest
    // (Handwork in Wood, 1910, ch. VII, no. 42).
    private static readonly long[] Sixteenths = [2, 3, 4, 5, 6, 8, 10, 12, 16];
    private static readonly long[] Millimetres = [3, 4, 5, 6, 8, 10, 12, 15, 16, 18, 20, 25];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    public static TheoryData<string> Frames => [.. Core.Designs.DesignKinds.Frames.Select(one => one.Name)];

    [Theory, MemberData(nameof(Names))]
    public void Built_in_designs_are_set_by_their_boxes(string name)
    {
        foreach (var (said, piece) in Worked.BuiltIn(name, Trials))
            Holds(piece, said);
    }

    [Theory, MemberData(nameof(Frames))]
    public void Designs_of_any_frame_are_set_by_their_boxes(string frame)
    {
        foreach (var (said, piece) in Worked.MadeUp(frame, 120))
            Holds(piece, said);
    }

    private static void Holds(Piece piece, string said)
    {
        var (steps, copies) = (Worked.Steps(piece), Worked.Copies(piece));
        foreach (var step in steps)
        foreach (var i in step.Joints)
        {
            var cut = Recut.Of(piece, copies, i);
            var what = $"{step.Id} {cut.Joint} {cut.From.Box} {cut.Into.Box} {string.Join(", ", step.Settings)}: {said}";
            if (cut.Joint.Kind == JointKind.Pinned)
                Assert.Contains(cut.Joint.Depth.Ticks, step.Figures("Width of the rabbet"));
            else if (step.Action is WorkAction.Groove or WorkAction.Dado or WorkAction.Rabbet)
                IsTrench(step, cut, IsDrawerDado(piece, cut.Joint), what);
            if (step.Action == WorkAction.Mortise)
                IsMortise(step, cut, piece.Unit, what);
        }

        HolesAreCounted(piece, steps, said);
        NotchesAreCut(piece, steps);
        PinsAreInWood(steps, copies, said);
    }

    private static bool IsDrawerDado(Piece piece, Joint joint) =>
        joint.Kind == JointKind.Dado
        && piece.Parts.Any(part => part.Assembly == "Drawer" && part.Copies.Any(copy => copy.Mark == joint.From));

    private static void IsTrench(WorkStep step, Recut cut, bool isDrawerDado, string what)
    {
        Assert.True(step.Figures("Depth").Contains(cut.Depth) && cut.Depth < cut.Room, "depth: " + what);
        if (cut.IsWhole || isDrawerDado)
            return;
        var width = cut.Thick + (cut.Joint.Kind is JointKind.Groove or JointKind.SlidingGroove ? Room : 0);
        Assert.True(step.Figures("Width of the cut").Contains(width), "width: " + what);
        Assert.Equal(step.Action == WorkAction.Rabbet, cut.Near == 0 || cut.Far == 0);
        if (step.Action == WorkAction.Rabbet)
            return;
        var isMiddle = step.Action == WorkAction.Groove && cut.From.Flat == cut.Into.Flat && Math.Abs(cut.Near - cut.Far) <= 1;
        if (isMiddle)
            Assert.True(step.Figures("Fence to blade").Contains((cut.Stock - width + 1) / 2), "fence: " + what);
        else
        {
            var distances = step.Settings.Where(one => one.Name.Contains(" to the cut", StringComparison.Ordinal)).ToList();
            Assert.True(distances.Exists(one => one.Value.Ticks == cut.Near || one.Value.Ticks == cut.Far), "distance: " + what);
        }

        // The wall that stays is never less than what the clearance may take of it.
        Assert.True(Math.Min(cut.Near, cut.Far) > Room, "wall: " + what);
    }

    private static void IsMortise(WorkStep step, Recut cut, LengthUnit unit, string what)
    {
        var third =
            unit == LengthUnit.Inch
                ? Sixteenths.Select(one => one * Length.TicksPerInch / 16).MinBy(one => Math.Abs((one * 3) - cut.Thick))
                : Millimetres.Select(one => one * Length.TicksPerMillimetre).MinBy(one => Math.Abs((one * 3) - cut.Thick));
        Assert.True(step.Figures("Mortise width").Contains(third), "width: " + what);
        // A through mortise is as deep as the part, a blind one stays in it.
        var depth = cut.Joint.Depth.Ticks >= cut.Room ? cut.Room : cut.Joint.Depth.Ticks + Eighth;
        Assert.True(step.Figures("Mortise depth").Contains(depth) && depth <= cut.Room, "depth: " + what);
        var shoulder = (cut.Thick - third) / 2;
        var fence = Math.Min(cut.Near + shoulder, cut.Far + shoulder);
        Assert.True(step.Figures("Fence to the mortise").Any(one => Math.Abs(one - fence) <= 1) && fence > 0, "fence: " + what);
        var wide = Recut.Size(cut.From.Box, Third(cut.Joint.Along, cut.From.Flat));
        Assert.True(step.Figures("Mortise length").All(one => one > 0), "length: " + what);
        Assert.True(step.Figures("Mortise length").Any(one => one < wide), "length: " + what);
    }

    private static Axis Third(Axis one, Axis other) =>
        new[] { Axis.X, Axis.Y, Axis.Z }.Single(axis => axis != one && axis != other);

    // What is bored is what is bought.
    private static void HolesAreCounted(Piece piece, ImmutableArray<WorkStep> steps, string said)
    {
        int Bought(string name) =>
            piece.Hardware.Where(one => one.Name.StartsWith(name, StringComparison.Ordinal)).Sum(one => one.Quantity);
        int Told(string step) =>
            steps
                .Where(one => one.Id.StartsWith(step, StringComparison.Ordinal))
                .SelectMany(one => one.Says)
                .SelectMany(one => Count().Matches(one))
                .Sum(one => int.Parse(one.Groups[1].Value, CultureInfo.InvariantCulture));
        Assert.True(Bought("Pocket screws") == Told("pocket-holes"), "pockets: " + said);
        Assert.True(Bought("Wood screws") == Told("screw-holes"), "screws: " + said);
        // Over a tenon there is no room for one that the list counts.
        Assert.True(Bought("Top fasteners") >= Told("top-fasteners"), "top: " + said);
        Assert.True(Bought("Top fasteners") <= 2 * Told("top-fasteners"), "top: " + said);
        Assert.True(Bought("Shelf pin") > 0 || steps.All(one => one.Action != WorkAction.DrillPins), "pins: " + said);
    }

    private static void NotchesAreCut(Piece piece, ImmutableArray<WorkStep> steps)
    {
        foreach (var copy in piece.Parts.SelectMany(part => part.Copies).Where(one => one.ToeNotch is not null))
        {
            var step = Assert.Single(steps, one => one.Action == WorkAction.Notch && one.Handles.Contains(copy.Mark));
            Assert.Contains(copy.ToeNotch!.Deep.Ticks, step.Figures("From the front edge"));
            Assert.Contains(copy.ToeNotch.High.Ticks, step.Figures("From the lower end"));
        }
    }

    private static void PinsAreInWood(ImmutableArray<WorkStep> steps, Dictionary<string, PartCopy> copies, string said)
    {
        foreach (var step in steps.Where(one => one.Action == WorkAction.DrillPins))
        {
            var boxes = step.Handles.Select(mark => copies[mark].Box).ToList();
            Assert.True(step.Figures("Depth").All(one => one < boxes.Max(box => box.Dx.Ticks)), said);
            Assert.True(step.Figures("Lowest hole").All(one => one > 0 && one < boxes.Max(box => box.Dz.Ticks)), said);
            foreach (var row in step.Figures("Front row").Concat(step.Figures("Back row")))
                Assert.True(row > 0 && row < boxes.Max(box => box.Dy.Ticks), said);
        }
    }

    [GeneratedRegex("([0-9]+) (holes for|top fasteners)")]
    private static partial Regex Count();
}
