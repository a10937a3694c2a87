using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Operations;

/// <summary>What must hold of the operations on any piece: every joint is cut once on each side, everything can be done in the
/// order given, and a step keeps its id while sizes change.</summary>
public sealed class OperationPropertyTests
{
    private const int Trials = 40;

    // Cut in both parts, whatever their sizes.
    private static readonly JointKind[] Both =
    [
        JointKind.MortiseAndTenon,
        JointKind.Dovetail,
        JointKind.Beveled,
        JointKind.HalfLap,
        JointKind.Bridle,
        JointKind.Miter,
    ];

    // What is measured from a door that is trimmed, and edges that are flush only once they are joined.
    private static readonly WorkAction[] Later =
    [
        WorkAction.TrimToSize,
        WorkAction.BoreHinges,
        WorkAction.EaseEdges,
        WorkAction.Rabbet,
    ];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    public static TheoryData<string> Frames => [.. Core.Designs.DesignKinds.Frames.Select(one => one.Name)];

    [Theory, MemberData(nameof(Names))]
    public void Built_in_designs_hold(string name)
    {
        foreach (var (said, piece) in Worked.BuiltIn(name, Trials))
            Holds(piece, said);
    }

    [Theory, MemberData(nameof(Frames))]
    public void Designs_of_any_frame_hold(string frame)
    {
        foreach (var (said, piece) in Worked.MadeUp(frame, 120))
            Holds(piece, said);
    }

    // The same parts and joints: only sizes change, and with them nothing that is done.
    [Theory, MemberData(nameof(Names))]
    public void Ids_stay_while_sizes_change(string name)
    {
        var known = new Dictionary<string, ImmutableArray<string>>();
        foreach (var (said, piece) in Worked.BuiltIn(name, Trials, withCounts: false))
        {
            var ids = Worked.Steps(piece).Select(one => one.Id).Order(StringComparer.Ordinal).ToImmutableArray();
            var first = known.TryAdd(Structure(piece), ids) ? ids : known[Structure(piece)];
            Assert.True(
                first.SequenceEqual(ids),
                $"{said}: now {string.Join(", ", ids.Except(first))}, not {string.Join(", ", first.Except(ids))}"
            );
        }

        Assert.True(known.Count < Trials / 4, "every size is another structure: nothing was compared");
    }

    private static string Structure(Piece piece) =>
        string.Join(
            ';',
            piece
                .Joints.Select(one => $"{Made.NameOf(piece, one.From)} {one.Kind} {Made.NameOf(piece, one.Into)}")
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    [Theory, MemberData(nameof(Names))]
    public void Only_what_needs_joined_parts_waits_for_them(string name)
    {
        foreach (var (said, piece) in Worked.BuiltIn(name, 4))
        {
            var assembly = piece
                .Parts.SelectMany(part => part.Copies.Select(copy => (copy.Mark, part.Assembly)))
                .ToDictionary(one => one.Mark, one => one.Assembly);
            foreach (var step in Worked.Steps(piece).Where(one => one.Phase != WorkPhase.Parts))
            {
                Assert.Contains(step.Action, Later);
                Assert.True(step.Handles.All(mark => assembly[mark] is "Door" or "Face frame"), $"{step.Id}: {said}");
            }
        }
    }

    private static void Holds(Piece piece, string said)
    {
        var steps = Worked.Steps(piece);
        IsInOrder(steps, said);
        EachStepIsWhole(piece, steps, said);
        EveryJointIsCutOnce(piece, steps, said);
    }

    private static void IsInOrder(ImmutableArray<WorkStep> steps, string said)
    {
        var done = new HashSet<string>();
        var phase = WorkPhase.Parts;
        foreach (var step in steps)
        {
            Assert.True(step.Phase >= phase, $"{step.Id} is in an earlier phase than the step before: {said}");
            Assert.True(step.After.All(done.Contains), $"{step.Id} comes before one of {string.Join(", ", step.After)}: {said}");
            Assert.True(done.Add(step.Id), $"{step.Id} is there twice: {said}");
            phase = step.Phase;
        }
    }

    private static void EachStepIsWhole(Piece piece, ImmutableArray<WorkStep> steps, string said)
    {
        var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToHashSet();
        foreach (var step in steps)
        {
            var what = $"{step.Id}: {said}";
            Assert.True(step.Handles.Length > 0 && step.Handles.All(marks.Contains), what);
            Assert.True(step.Handles.Distinct().Count() == step.Handles.Length, what);
            Assert.True(step.Minutes > 0 && step.Title.Length > 0 && step.Says.All(one => one.EndsWith('.')), what);
            Assert.True(step.Settings.All(one => one.Value.IsPositive), $"{what}: {string.Join(", ", step.Settings)}");
            Assert.DoesNotMatch("[0-9]", step.Id);
            Assert.True(
                step.Joints.All(i => step.Handles.Contains(piece.Joints[i].From) || step.Handles.Contains(piece.Joints[i].Into)),
                what
            );
        }
    }

    private static void EveryJointIsCutOnce(Piece piece, ImmutableArray<WorkStep> steps, string said)
    {
        var copies = Worked.Copies(piece);
        for (var i = 0; i < piece.Joints.Length; i++)
        {
            var joint = piece.Joints[i];
            var cut = Recut.Of(piece, copies, i);
            var into = Count(steps, i, joint.Into, Worked.Taking);
            var from = Count(steps, i, joint.From, WorkAction.Tenon, WorkAction.Lap, WorkAction.Shape);
            var what = $"{joint} is cut {into} times in {joint.Into} and {from} times on {joint.From}: {said}";
            Assert.True(into == (joint.Depth.IsPositive ? 1 : 0), what);
            Assert.True(from == (joint.Depth.IsPositive && AsksForMale(piece, joint, cut) ? 1 : 0), what);
        }
    }

    private static bool AsksForMale(Piece piece, Joint joint, Recut cut) =>
        Both.Contains(joint.Kind)
        || (joint.Kind is JointKind.Groove or JointKind.Breadboard && cut.IsWhole)
        || (
            joint.Kind == JointKind.Dado
            && piece.Parts.Any(part => part.Assembly == "Drawer" && part.Copies.Any(copy => copy.Mark == joint.From))
        );

    private static int Count(ImmutableArray<WorkStep> steps, int joint, string mark, params WorkAction[] actions) =>
        steps.Count(one => actions.Contains(one.Action) && one.Joints.Contains(joint) && one.Handles.Contains(mark));
}
