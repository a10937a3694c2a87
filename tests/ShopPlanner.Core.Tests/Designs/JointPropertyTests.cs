using System.Globalization;
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
    ];

    public static TheoryData<string> Frames => ["sheet-carcass", "post-and-rail", "leg-and-apron", "open-rack"];

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

/// <summary>Documents of any frame, split, fill and top, at sizes that a hand might try.</summary>
internal static class RandomDesigns
{
    /// <summary>What lies between a drawer or a door and what carries it, at most.</summary>
    public static readonly Length MostGap = Made.Inches(0.5625m);

    public static string Next(string frame, Random chance) =>
        $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Made up",
              "dimensions": [
                { "name": "width", "value": "{{Size(chance, 14, 60)}}" }, { "name": "depth", "value": "{{Size(chance, 9, 30)}}" },
                { "name": "height", "value": "{{Size(chance, 16, 72)}}" }
              ],
              "materials": [
                { "role": "square", "name": "Square", "form": "board", "thickness": "{{Pick(
                chance,
                "1 1/2",
                "2",
                "3 1/2"
            )}}", "width": "3 1/2" },
                { "role": "two", "name": "2x4", "form": "board", "thickness": "1 1/2", "width": "3 1/2" },
                { "role": "board", "name": "1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" },
                { "role": "sheet", "name": "Plywood", "form": "sheet", "thickness": "{{Pick(chance, "23/32", "3/4", "15/32")}}" },
                { "role": "half", "name": "Half plywood", "form": "sheet", "thickness": "15/32" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "7/32" }
              ],
              "frame": {{Frame(frame, chance)}},
              "bays": {{Bay(chance, 2)}}{{Top(chance)}}
            }
            """;

    private static string Frame(string kind, Random chance) =>
        kind switch
        {
            "sheet-carcass" => $$"""
                { "kind": "sheet-carcass", "case": "sheet", "back": "{{Pick(chance, "", "thin", "half")}}",
                  "back_fit": "{{Pick(chance, "planted", "rabbet", "let-in")}}", "back_setback": "{{Pick(
                    chance,
                    "1/2 in",
                    "3/4 in",
                    "0 in"
                )}}",
                  "over": "{{Pick(chance, "panel", "stretchers")}}", "let_in": "{{Pick(chance, "0 in", "1/8 in", "1/4 in")}}",
                  "toe": "{{Pick(chance, "0 in", "3 in")}}", "toe_setback": "{{Pick(chance, "0 in", "2 in")}}", "face": "{{Pick(
                    chance,
                    "",
                    "board"
                )}}" }
                """,
            "post-and-rail" => $$"""
                { "kind": "post-and-rail", "leg": "square", "wide_face": "{{Pick(chance, "front", "side")}}", "rail": "board",
                  "panel": "{{Pick(chance, "", "thin")}}", "panel_fit": "{{Pick(chance, "inset", "flush")}}", "joint": "{{Pick(
                    chance,
                    "pocket",
                    "mortise",
                    "dowel"
                )}}" }
                """,
            "leg-and-apron" => $$"""
                { "kind": "leg-and-apron", "leg": "square", "wide_face": "{{Pick(chance, "front", "side")}}", "apron": "{{Pick(
                    chance,
                    "board",
                    "two"
                )}}",
                  "setback": "{{Pick(chance, "0 in", "1/4 in")}}", "joint": "{{Pick(chance, "pocket", "mortise", "dowel")}}",
                  "stretcher": "{{Pick(chance, "", "board")}}", "stretchers": "{{Pick(chance, "all", "ends")}}" }
                """,
            _ => $$"""
                { "kind": "open-rack", "post": "two", "beam": "{{Pick(chance, "two", "board")}}", "deck": "{{Pick(
                    chance,
                    "",
                    "sheet"
                )}}",
                  "levels": {{chance.Next(1, 4)}} }
                """,
        };

    private static string Bay(Random chance, int deep)
    {
        var fills = string.Join(", ", Enumerable.Range(0, chance.Next(0, 3)).Select(_ => Fill(chance)));
        if (deep == 0 || chance.Next(2) == 0)
            return $$"""{ "fills": [ {{fills}} ] }""";
        var split = Pick(chance, "divider", "fixed-shelf");
        var letIn = Pick(chance, "0 in", "1/8 in", "1/4 in");
        var bays = string.Join(", ", Enumerable.Range(0, chance.Next(2, 4)).Select(_ => Bay(chance, deep - 1)));
        return $$"""
            { "fills": [ {{fills}} ], "split": { "kind": "{{split}}", "material": "sheet", "let_in": "{{letIn}}" }, "bays": [ {{bays}} ] }
            """;
    }

    private static string Fill(Random chance) =>
        chance.Next(9) switch
        {
            0 =>
                $$"""{ "kind": "doors", "material": "board", "panel": "thin", "leaves": {{chance.Next(1, 3)}}, "fit": "{{Fit(chance)}}", "overlay": "3/8 in" }""",
            1 =>
                $$"""{ "kind": "doors", "make": "slab", "material": "sheet", "leaves": {{chance.Next(1, 3)}}, "fit": "{{Fit(chance)}}", "overlay": "1/4 in" }""",
            2 => $$"""
                { "kind": "drawers", "count": {{chance.Next(
                    1,
                    4
                )}}, "front": "sheet", "box": "half", "bottom": "thin", "fit": "{{Fit(chance)}}",
                  "overlay": "1/4 in", "joint": "{{Pick(chance, "rabbet", "butt", "dado", "dovetail")}}", "heights": "{{Pick(
                    chance,
                    "equal",
                    "graded"
                )}}" }
                """,
            3 => $$"""{ "kind": "adjustable-shelves", "material": "sheet", "count": {{chance.Next(0, 4)}} }""",
            4 =>
                $$"""{ "kind": "cleat-shelf", "material": "sheet", "cleat": "{{Pick(chance, "board", "sheet")}}", "height": "{{chance.Next(0, 6)}} in" }""",
            5 => $$"""{ "kind": "back", "material": "{{Pick(chance, "thin", "half", "sheet")}}" }""",
            6 => """{ "kind": "hanging-rail", "material": "board" }""",
            7 => """{ "kind": "anti-tip" }""",
            _ =>
                $$"""{ "kind": "slats", "material": "board", "count": {{chance.Next(1, 6)}}, "lie": "{{Pick(chance, "lengthways", "across", "upright")}}" }""",
        };

    private static string Top(Random chance) =>
        chance.Next(4) switch
        {
            0 => "",
            1 => """, "top": { "kind": "solid-top", "material": "board", "overhang_ends": "1 in", "overhang_front": "1 in" }""",
            2 =>
                """, "top": { "kind": "sheet-top", "material": "sheet", "layers": "2", "overhang_ends": "1 in", "overhang_front": "1 in" }""",
            _ => """, "top": { "kind": "sheet-top", "material": "sheet", "edging": "board", "overhang_ends": "1/2 in" }""",
        };

    private static string Fit(Random chance) => Pick(chance, "inset", "overlay");

    private static string Pick(Random chance, params string[] words) => words[chance.Next(words.Length)];

    private static string Size(Random chance, int least, int most) =>
        (chance.Next(least * 64, (most * 64) + 1) / 64m).ToString("0.######", CultureInfo.InvariantCulture);
}
