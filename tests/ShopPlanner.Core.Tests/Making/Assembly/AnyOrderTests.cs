using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>All orders of small assemblies of boxes, tried one by one: the planner finds one exactly where there is one.</summary>
public sealed class AnyOrderTests
{
    private const int Trials = 1500;
    private const int Most = 7;

    private static readonly JointKind[] LetIn = [JointKind.Dado, JointKind.MortiseAndTenon, JointKind.Rabbet];
    private static readonly JointKind[] Butt = [JointKind.Screwed, JointKind.Dowel, JointKind.Dowel, JointKind.Dowel];
    private static readonly RoleMaterial Wood = new("wood", null, "Wood", MaterialForm.Sheet, Length.FromInches(1), null, null);

    [Fact]
    public void An_order_is_given_exactly_where_one_exists()
    {
        var chance = new Random(20261130);
        var (with, without) = (0, 0);
        for (var trial = 0; trial < Trials; trial++)
        {
            var piece = Next(chance, 2 + chance.Next(Most - 1));
            var exists = Exists(piece);
            var plan = AssemblyOrder.Of(piece, WorkChoices.Usual);
            var fails = plan.Findings.Where(finding => finding.Severity == Severity.Fails).ToList();
            Assert.True(exists == (fails.Count == 0), $"trial {trial}: {(exists ? "there is an order" : "there is none")}");
            if (exists)
            {
                with++;
                Orders.Hold(piece, plan, $"trial {trial}");
                continue;
            }

            without++;
            Orders.Precede(plan, $"trial {trial}");
            Assert.All(fails, finding => Assert.True(finding.Marks.Length > 1));
        }

        Assert.True(with > Trials / 10 && without > Trials / 100, $"{with} with an order, {without} without");
    }

    // A block cut into boxes, some of which reach into the next one.
    private static Piece Next(Random chance, int count)
    {
        var boxes = chance.Next(3) == 0 ? [new(At(0), At(0), At(0), At(6), At(6), At(6))] : Pinwheel(chance);
        while (boxes.Count < count)
            Cut(chance, boxes);
        while (boxes.Count > count)
            boxes.RemoveAt(chance.Next(boxes.Count));
        var joints = new List<Joint>();
        for (var from = 0; from < boxes.Count; from++)
        for (var into = 0; into < boxes.Count; into++)
            if (from != into && chance.Next(8) > 0 && !joints.Exists(one => Is(one, from, into)))
                Join(chance, boxes, joints, from, into);
        return Piece(boxes, joints);
    }

    // No cut goes through it from side to side: pegs can lock it.
    private static List<Box> Pinwheel(Random chance)
    {
        (int X, int EndX, int Y, int EndY)[] arms = [(0, 4, 0, 2), (4, 6, 0, 4), (2, 6, 4, 6), (0, 2, 2, 6), (2, 4, 2, 4)];
        var whole = new Box(At(0), At(0), At(0), At(6), At(6), At(6));
        var across = (Axis)chance.Next(3);
        var other = (Axis)(((int)across + 1 + chance.Next(2)) % 3);
        return [.. arms.Select(arm => whole.With(across, At(arm.X), At(arm.EndX)).With(other, At(arm.Y), At(arm.EndY)))];
    }

    private static void Cut(Random chance, List<Box> boxes)
    {
        var (i, axis) = (chance.Next(boxes.Count), (Axis)chance.Next(3));
        var steps = (int)(boxes[i].Extent(axis) / At(1));
        if (steps < 2)
            return;
        var at = boxes[i].Start(axis) + At(1 + chance.Next(steps - 1));
        boxes.Add(boxes[i].With(axis, at, boxes[i].End(axis)));
        boxes[i] = boxes[i].With(axis, boxes[i].Start(axis), at);
    }

    private static bool Is(Joint joint, int from, int into) => joint.From == Mark(into) && joint.Into == Mark(from);

    private static Length At(int steps) => Length.FromInches(steps * 4);

    // Where two touch, the one reaches into the other by an inch, or only butts.
    private static void Join(Random chance, List<Box> boxes, List<Joint> joints, int from, int into)
    {
        if (boxes[from].Meeting(boxes[into]) is not { } face || boxes[from].Shared(boxes[into]) is not null)
            return;
        var along = new[] { Axis.X, Axis.Y, Axis.Z }.First(axis => !face.Extent(axis).IsPositive);
        if (chance.Next(4) > 0)
        {
            joints.Add(new(Butt[chance.Next(Butt.Length)], Mark(from), Mark(into), along, Length.Zero));
            return;
        }

        var inch = Length.FromInches(1);
        var isBefore = boxes[from].End(along) == boxes[into].Start(along);
        var grown = isBefore ? boxes[from].Grown(along, Length.Zero, inch) : boxes[from].Grown(along, inch, Length.Zero);
        for (var other = 0; other < boxes.Count; other++)
            if (
                other != from
                && other != into
                && grown.Shared(boxes[other]) is not null
                && boxes[from].Shared(boxes[other]) is null
            )
                return;
        if (joints.Exists(joint => joint.From == Mark(from) || joint.Into == Mark(from)))
            return;
        boxes[from] = grown;
        joints.Add(new(LetIn[chance.Next(LetIn.Length)], Mark(from), Mark(into), along, inch));
    }

    private static string Mark(int number) => $"A{number + 1}";

    private static Piece Piece(List<Box> boxes, List<Joint> joints)
    {
        var copies = boxes.Select((box, i) => new PartCopy(Mark(i), box, Hand.Either, Axis.X, Axis.Z)).ToImmutableArray();
        var size = Working.Given("Size", Length.FromInches(1));
        var part = new PiecePart(
            "A",
            "Block",
            "Blocks",
            Wood,
            size,
            size,
            size,
            size.Value,
            size.Value,
            true,
            PartPurpose.Member,
            "",
            copies,
            copies.Length
        );
        var whole = boxes.Aggregate((one, other) => one.Around(other));
        var piece = new Piece("Blocks", LengthUnit.Inch, whole, [part], [.. joints], [], [], [], []);
        var held = Core.Designs.Joining.Fastenings.Of(piece).Select(one => new HardwareItem(one.Name, one.Quantity));
        return piece with { Hardware = [.. held] };
    }

    // Every way to part a set in two by one straight move, and so on to the single parts.
    private static bool Exists(Piece piece)
    {
        var straight = new Straight(piece);
        var count = piece.Parts[0].Copies.Length;
        var known = new Dictionary<int, bool>();
        return Parts((1 << count) - 1);

        bool Parts(int set)
        {
            if ((set & (set - 1)) == 0)
                return true;
            if (known.TryGetValue(set, out var before))
                return before;
            var found = false;
            for (var some = (set - 1) & set; some > 0 && !found; some = (some - 1) & set)
                found = IsFree(straight, some, set & ~some, count) && Parts(some) && Parts(set & ~some);
            return known[set] = found;
        }
    }

    private static bool IsFree(Straight straight, int movers, int stand, int count) =>
        new[] { Axis.X, Axis.Y, Axis.Z }.Any(axis =>
            new[] { true, false }.Any(forward =>
                In(movers, count).All(one => In(stand, count).All(other => straight.Comes(one, other, axis, forward)))
            )
        );

    private static IEnumerable<string> In(int set, int count) =>
        Enumerable.Range(0, count).Where(i => (set >> i & 1) == 1).Select(Mark);
}
