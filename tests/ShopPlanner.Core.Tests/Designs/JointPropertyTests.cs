using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>What must hold of every joint, whatever frame, split, fill and top a design names: it touches, it has a size, and a
/// fastening that is sold stays inside both parts, or the piece says that it cannot be built.</summary>
public sealed class JointPropertyTests
{
    private const int Trials = 600;

    private static readonly JointKind[] LetIn =
    [
        JointKind.Dado,
        JointKind.Rabbet,
        JointKind.Groove,
        JointKind.MortiseAndTenon,
        JointKind.Dovetail,
        JointKind.Beveled,
        JointKind.HalfLap,
        JointKind.Bridle,
        JointKind.Miter,
        JointKind.Breadboard,
        JointKind.SlidingGroove,
        JointKind.Pinned,
    ];

    public static TheoryData<string> Frames => [.. Core.Designs.DesignKinds.Frames.Select(one => one.Name)];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Frames))]
    public void Every_joint_of_any_design_holds(string frame)
    {
        var chance = new Random(20261129);
        var built = 0;
        for (var i = 0; i < Trials; i++)
        {
            var json = RandomDesigns.Next(frame, chance);
            var evaluation = Made.Evaluate(json);
            if (evaluation.Piece is not { } piece)
            {
                Assert.NotEmpty(evaluation.Faults);
                continue;
            }

            built++;
            Holds(piece, json);
        }

        Assert.True(built > Trials / 4, $"only {built} were built");
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_joint_of_a_built_in_design_holds(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        Holds(piece, name);
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity is Severity.Fails or Severity.Anchor);
    }

    private static void Holds(Piece piece, string said)
    {
        var copies = piece
            .Parts.SelectMany(part => part.Copies.Select(copy => (Part: part, Copy: copy)))
            .ToDictionary(one => one.Copy.Mark);
        var judged = PieceJudge.Of(piece);
        bool IsRefused(string mark) => judged.Any(one => one.Severity == Severity.Fails && one.Part == copies[mark].Part.Id);
        foreach (var joint in piece.Joints)
        {
            var (from, into) = (copies[joint.From], copies[joint.Into]);
            var what =
                $"{from.Part.Name} {from.Copy.Box} {joint.Kind} {into.Part.Name} {into.Copy.Box} along {joint.Along}: {said}";
            Touches(piece, joint, from.Copy.Box, into.Copy.Box, what);
            if (joint.Kind is JointKind.Screwed or JointKind.PocketScrew && !IsRefused(joint.From))
                Assert.True(Fasteners.Holds(joint, from.Copy, into.Copy), what);
        }

        Assert.True(
            piece.Joints.Select(joint => (joint.From, joint.Into)).Distinct().Count() == piece.Joints.Length,
            "joined twice: " + said
        );
        var joined = piece.Joints.SelectMany(joint => new[] { joint.From, joint.Into }).ToHashSet();
        Assert.All(
            copies.Values.Where(one => one.Part.Assembly != "Shelves" && !joined.Contains(one.Copy.Mark)),
            one => Assert.True(IsRefused(one.Copy.Mark), $"{one.Part.Name} hangs in the air: {said}")
        );
    }

    private static void Touches(Piece piece, Joint joint, Box from, Box into, string what)
    {
        if (joint.Kind is JointKind.Sliding or JointKind.Hinged)
        {
            // A slide's thickness or a door's gap lies between them.
            var gap = Length.Max(
                into.Start(joint.Along) - from.End(joint.Along),
                from.Start(joint.Along) - into.End(joint.Along)
            );
            Assert.True(gap <= RandomDesigns.MostGap, what);
            Assert.True(from.Grown(joint.Along, RandomDesigns.MostGap, RandomDesigns.MostGap).Meeting(into) is not null, what);
            return;
        }

        Assert.True(from.Meeting(into) is not null, "apart: " + what);
        var shared = from.Shared(into);
        if (LetIn.Contains(joint.Kind))
        {
            Assert.True(joint.Depth.IsPositive && shared is not null, "no depth: " + what);
            Assert.True(shared!.Value.Extent(joint.Along) == joint.Depth, "another depth: " + what);
            Assert.True(joint.Depth <= into.Extent(joint.Along), "through: " + what);
        }
        else
            Assert.True(!joint.Depth.IsPositive && (shared is null || judgedClash(piece)), "let in: " + what);

        static bool judgedClash(Piece piece) =>
            piece.Warnings.Any(one => one.Text.Contains("same place", StringComparison.Ordinal));
    }
}

/// <summary>Whether a screw that stores carry stays inside both parts, worked out apart from the program's own choice.</summary>
internal static class Fasteners
{
    public static bool Holds(Joint joint, PartCopy from, PartCopy into)
    {
        var (near, far) = (from.Box.Extent(joint.Along), into.Box.Extent(joint.Along));
        if (joint.Kind == JointKind.Screwed)
            // From 1/2 in (#4) to 6 in screws, 1/8 in left: something thin on something with three diameters of wood behind it.
            return Length.Min(near, far) + Length.Max(near, far) >= Made.Inches(0.625m)
                && Length.Min(near, far) < Made.Inches(5.5m);
        // A pocket screw goes half its length into the far part, 1/16 in short of coming out.
        var stock = from.Box.Extent(from.Flat);
        var screw =
            stock <= Made.Inches(0.625m) ? 1m
            : stock <= Made.Inches(0.8125m) ? 1.25m
            : stock <= Made.Inches(1.125m) ? 1.5m
            : stock <= Made.Inches(1.375m) ? 2m
            : 2.5m;
        return stock >= Made.Inches(0.5m) && stock <= Made.Inches(1.625m) && Made.Inches((screw / 2) + 0.0625m) <= far;
    }
}
