using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>A cabinet of square posts with sides flush or inset, a planted back, a low shelf of slats, a bottom on cleats and
/// door stops.</summary>
public sealed class PostCabinetTests
{
    private const string Bottom = """{ "kind": "drop-in-bottom", "material": "case", "cleat": "cleat" }""";

    // 30 in wide, posts 1 1/2 in: 27 in between them; 16 in deep less the back of 1/4 in, less two posts: 12 3/4 in between
    // those.
    [Fact]
    public void Flush_sides_lie_in_the_plane_of_the_posts_inner_faces()
    {
        var piece = Made.Piece(Cabinet(""));
        var (left, right) = Two(piece, "Side");
        Assert.Equal((Made.Inches(1.5m), Made.Inches(28.5m)), (left.EndX, right.X));
        Assert.Equal((Made.Inches(12.75m), Made.Inches(24)), (left.Dy, left.Dz));
        var back = piece.Copies("Back").Single().Box;
        Assert.Equal((Made.Inches(30), Made.Inches(24), Made.Inches(15.75m)), (back.Dx, back.Dz, back.Y));
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // Between rails 2 1/2 in wide at 10 in and under the top of 34 in: 19 in clear, plus 2 x (3/8 - 1/32) in of tongue.
    [Fact]
    public void Inset_sides_stand_in_grooves_of_posts_and_rails()
    {
        var piece = Made.Piece(Cabinet("", """ "side": "thin", "side_fit": "inset" """));
        var panel = piece.Parts.Single(part => part.Name == "Side panel");
        Assert.Equal((Made.Inches(19.6875m), Made.Inches(13.4375m)), (panel.Length.Value, panel.Width.Value));
        Assert.Equal(
            8,
            piece.Joints.Count(joint => joint.Kind == JointKind.Groove && Made.NameOf(piece, joint.From) == "Side panel")
        );
    }

    // Rails at 3 in, 2 1/2 in wide; five slats of 2 1/2 in leave 14 1/2 in for six gaps.
    [Fact]
    public void Slats_of_the_low_shelf_have_equal_gaps_and_lie_on_the_low_rails()
    {
        var piece = Made.Piece(Cabinet(""));
        var slats = piece.Copies("Slat").Select(copy => copy.Box).OrderBy(box => box.X).ToList();
        Assert.Equal(5, slats.Count);
        Assert.All(slats, slat => Assert.Equal(Made.Inches(5.5m), slat.Z));
        var gap = Made.Inches(14.5m / 6);
        var edges = slats
            .Select(slat => slat.X)
            .Append(Made.Inches(28.5m))
            .Zip(slats.Select(slat => slat.EndX).Prepend(Made.Inches(1.5m)));
        Assert.All(edges, edge => Assert.InRange((edge.First - edge.Second - gap).Ticks, -1, 1));
        Assert.All(
            piece.Joints.Where(joint => Made.NameOf(piece, joint.Into) == "Slat"),
            joint => Assert.Equal((JointKind.PocketScrew, "Low rail"), (joint.Kind, Made.NameOf(piece, joint.From)))
        );
    }

    // Flush with the rails' upper edges at 12 1/2 in; 3/4 in bottom, then 1 1/2 in of cleat.
    [Fact]
    public void The_bottom_drops_in_between_the_rails_on_two_cleats()
    {
        var piece = Made.Piece(Cabinet(Bottom));
        var bottom = piece.Copies("Bottom").Single().Box;
        Assert.Equal((Made.Inches(12.5m), Made.Inches(26.875m)), (bottom.EndZ, bottom.Dx));
        Assert.All(
            piece.Copies("Bottom cleat"),
            cleat => Assert.Equal((Made.Inches(11.75m), Made.Inches(1.5m)), (cleat.Box.EndZ, cleat.Box.Dz))
        );
        Assert.Equal(
            ["Back rail", "Front rail"],
            piece
                .Joints.Where(one => Made.NameOf(piece, one.From) == "Bottom cleat")
                .Select(one => Made.NameOf(piece, one.Into))
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_divider_stands_on_the_bottom_and_is_held_by_the_upper_rails()
    {
        var json = Cabinet(Bottom)
            .Replace(
                "] },",
                """], "split": { "kind": "divider", "material": "case" }, "bays": [ {}, {} ] },""",
                StringComparison.Ordinal
            );
        var piece = Made.Piece(json);
        Assert.Equal(
            ["Back rail", "Bottom", "Front rail"],
            piece
                .Joints.Where(one => Made.NameOf(piece, one.From) == "Divider")
                .Select(one => Made.NameOf(piece, one.Into))
                .Order(StringComparer.Ordinal)
        );
    }

    // The rail is as thick as the door: the upper strip lies on its back, 3/8 in in the opening; the lower one stands on the
    // bottom.
    [Fact]
    public void Doors_close_against_stops_behind_them()
    {
        const string Doors = """
            { "kind": "doors", "material": "rail", "panel": "thin", "leaves": 2, "fit": "inset" },
            { "kind": "door-stops", "material": "cleat", "door": "rail" }
            """;
        var piece = Made.Piece(Cabinet(Bottom + ", " + Doors));
        var stops = piece.Copies("Door stop").Select(copy => copy.Box).OrderBy(box => box.Z).ToList();
        Assert.All(stops, stop => Assert.Equal(Made.Inches(0.75m), stop.Y));
        Assert.Equal((Made.Inches(12.5m), Made.Inches(0.375m)), (stops[0].Z, stops[0].Dz));
        Assert.Equal((Made.Inches(31.125m), Made.Inches(1.5m)), (stops[1].Z, stops[1].Dz));
        Assert.Empty(HeldByDoors(piece));
    }

    [Theory]
    [InlineData("\"slats\": 5", "\"slats\": 11", "frame.slats", "slats are wider in total than the space between the legs")]
    [InlineData("\"side\": \"case\"", "\"side\": \"case\", \"side_fit\": \"inset\"", "frame.side", "is as thick as the rails")]
    public void What_does_not_go_together_is_told_at_its_option(string from, string to, string field, string said)
    {
        var json = Cabinet(Bottom).Replace(from, to, StringComparison.Ordinal);
        var fault = Assert.Single(Made.Evaluate(json).Faults);
        Assert.Equal(field, fault.Field);
        Assert.Contains(said, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bottom_that_finds_no_room_between_rails_is_told()
    {
        var tight = Made.Piece(Cabinet(Bottom.Replace("\"cleat\": \"cleat\"", "\"cleat\": \"rail\"", StringComparison.Ordinal)));
        Told(tight, "below the upper edge of the lower rails, which have 2 ½″");
        Told(
            Made.Piece(Made.Carcass("30", "14", "30", """{ "kind": "drop-in-bottom", "material": "case", "cleat": "stile" }""")),
            "There are no lower rails"
        );

        static void Told(Piece piece, string said)
        {
            var told = PieceJudge.Of(piece).First(one => one.Severity == Severity.Fails);
            Assert.Contains(said, told.Text, StringComparison.Ordinal);
            Assert.Equal("bays.fills.0", told.Place);
        }
    }

    // A door between rails stands before a divider and touches it: it moves, and holds nothing.
    [Theory, MemberData(nameof(JointPropertyTests.Names), MemberType = typeof(JointPropertyTests))]
    public void Nothing_is_fastened_to_a_door(string name) =>
        Assert.Empty(HeldByDoors(Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)))));

    private static IEnumerable<Joint> HeldByDoors(Piece piece)
    {
        var moving = piece
            .Parts.Where(part => part.Assembly == "Door")
            .SelectMany(part => part.Copies)
            .Select(copy => copy.Mark)
            .ToHashSet();
        return piece.Joints.Where(joint => moving.Contains(joint.Into) && !moving.Contains(joint.From));
    }

    private static (Box Left, Box Right) Two(Piece piece, string name)
    {
        var boxes = piece.Copies(name).Select(copy => copy.Box).OrderBy(box => box.X).ToList();
        return (boxes[0], boxes[1]);
    }

    private static string Cabinet(string fills, string side = """ "side": "case" """) =>
        $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Cabinet",
              "dimensions": [ { "name": "width", "value": "30" }, { "name": "depth", "value": "16" }, { "name": "height", "value": "34" } ],
              "materials": [
                { "role": "leg", "name": "2x2", "form": "board", "thickness": "1 1/2", "width": "1 1/2" },
                { "role": "rail", "name": "1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" },
                { "role": "cleat", "name": "1x2", "form": "board", "thickness": "3/4", "width": "1 1/2" },
                { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "1/4" }
              ],
              "frame": {
                "kind": "post-cabinet", "leg": "leg", "rail": "rail", {{side}}, "back": "thin", "foot": "10 in",
                "low_rail": "rail", "low_height": "3 in", "slat": "rail", "slats": 5
              },
              "bays": { "fills": [ {{fills}} ] },
              "parts": []
            }
            """;
}
