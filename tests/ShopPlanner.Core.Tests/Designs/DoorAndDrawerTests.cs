using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Doors and drawers at random sizes: with their gaps they fill their opening to the tick, and everything that moves has
/// its
/// room.</summary>
public sealed class DoorAndDrawerTests
{
    private const int Trials = 200;

    private static readonly Length Sheet = Length.FromInches(0.75m);
    private static readonly Length Half = Length.FromInches(0.5m);

    [Theory]
    [InlineData("slab")]
    [InlineData("frame")]
    public void Inset_doors_and_gaps_fill_the_opening(string make) =>
        Repeat(chance =>
        {
            var (leaves, gap) = (chance.Next(1, 3), Tick(chance, 0.03m, 0.25m));
            var (width, height) = (Tick(chance, 16, 40), Tick(chance, 16, 80));
            var piece = Made.Piece(
                Made.Carcass(Text(width), "14", Text(height), Doors(make, leaves, "inset", gap) + ", " + Shelves)
            );
            var doors = Leaves(piece, make);
            Assert.Equal(leaves, doors.Count);
            Assert.Equal(Sheet + gap, doors[0].X);
            Assert.Equal(width - Sheet - gap, doors[^1].EndX);
            Assert.All(doors, door => Assert.Equal((Sheet + gap, height - Sheet - gap), (door.Z, door.EndZ)));
            Assert.Equal(doors[0].Dx, doors[^1].Dx);
            if (leaves == 2)
                Assert.InRange((doors[1].X - doors[0].EndX - gap).Ticks, 0, 1);
            Assert.All(piece.Copies("Shelf"), shelf => Assert.True(shelf.Box.Y >= doors[0].EndY));
            Assert.Equal(
                leaves * HingesWanted(doors[0].Dz),
                piece.Hardware.Single(item => item.Name == "Hinge for an inset door").Quantity
            );
        });

    [Theory]
    [InlineData("slab")]
    [InlineData("frame")]
    public void Overlay_doors_cover_what_they_are_told(string make) =>
        Repeat(chance =>
        {
            var (leaves, gap, overlay) = (chance.Next(1, 3), Tick(chance, 0.03m, 0.25m), Tick(chance, 0.125m, 0.75m));
            var (width, height) = (Tick(chance, 16, 40), Tick(chance, 16, 80));
            var piece = Made.Piece(Made.Carcass(Text(width), "14", Text(height), Doors(make, leaves, "overlay", gap, overlay)));
            var doors = Leaves(piece, make);
            Assert.Equal((Sheet - overlay, width - Sheet + overlay), (doors[0].X, doors[^1].EndX));
            Assert.All(doors, door => Assert.Equal((Length.Zero, Sheet, Sheet - overlay), (door.Y, door.EndY, door.Z)));
            if (leaves == 2)
                Assert.InRange((doors[1].X - doors[0].EndX - gap).Ticks, 0, 1);
            Assert.All(piece.Copies("Side"), side => Assert.Equal(Sheet, side.Box.Y));
        });

    // A leaf is stile, clear panel, stile; rails reach into both stiles, the panel stands free in its groove.
    [Fact]
    public void Members_of_a_door_add_up_to_it() =>
        Repeat(chance =>
        {
            var (groove, clearance) = (Tick(chance, 0.25m, 0.5m), Tick(chance, 0, 0.125m));
            var frame = $$""", "groove": "{{Text(groove)}}", "clearance": "{{Text(clearance)}}" }""";
            var doors = Doors("frame", 2, "inset", Length.FromInches(0.125m)).TrimEnd('}', ' ') + frame;
            var piece = Made.Piece(Made.Carcass(Text(Tick(chance, 20, 40)), "14", Text(Tick(chance, 20, 70)), doors));
            var leaf = Leaves(piece, "frame")[0];
            var (stile, rail, panel) = (Part(piece, "Door stile"), Part(piece, "Door rail"), Part(piece, "Door panel"));
            Assert.Equal(leaf.Dz, stile.Length.Value);
            Assert.Equal(leaf.Dx, (stile.Width.Value * 2) + rail.Length.Value - (groove * 2));
            Assert.Equal(leaf.Dx, (stile.Width.Value * 2) + panel.Width.Value - ((groove - clearance) * 2));
            Assert.InRange((leaf.Dz - (rail.Width.Value * 2) - panel.Length.Value + (groove * 2) - clearance).Ticks, -1, 0);
            Assert.Equal(Part(piece, "Test piece for groove and tongue").PracticeFor, rail.Id);
        });

    [Theory]
    [InlineData("inset")]
    [InlineData("overlay")]
    public void Drawers_have_their_slides_and_gaps(string fit) =>
        Repeat(chance =>
        {
            var (count, gap, slide, room) = (
                chance.Next(1, 5),
                Tick(chance, 0.0625m, 0.25m),
                Tick(chance, 0.5m, 0.5625m),
                Tick(chance, 0.75m, 1.5m)
            );
            var (width, height) = (Tick(chance, 16, 36), Tick(chance, 24, 48));
            var piece = Made.Piece(
                Made.Carcass(
                    Text(width),
                    "20",
                    Text(height),
                    $$"""
                    { "kind": "drawers", "count": {{count}}, "heights": "{{(
                        chance.Next(2) == 0 ? "equal" : "graded"
                    )}}", "front": "case", "box": "box", "bottom": "thin",
                      "fit": "{{fit}}", "gap": "{{Text(gap)}}", "slide": "{{Text(slide)}}", "room": "{{Text(room)}}" }
                    """
                )
            );
            var fronts = piece.Copies("Drawer front").Select(copy => copy.Box).OrderBy(box => box.Z).ToList();
            var sides = piece.Copies("Drawer side").Select(copy => copy.Box).OrderBy(box => box.Z).ThenBy(box => box.X).ToList();
            var edge = fit == "inset" ? Sheet + gap : Sheet - Half;
            Assert.Equal((count, count * 2), (fronts.Count, sides.Count));
            Assert.Equal((edge, height - edge), (fronts[0].Z, fronts[^1].EndZ));
            Assert.All(fronts, front => Assert.Equal((edge, width - edge), (front.X, front.EndX)));
            Assert.All(fronts.Zip(fronts.Skip(1)), pair => Assert.Equal(gap, pair.Second.Z - pair.First.EndZ));
            for (var i = 0; i < count; i++)
                Clears(sides[i * 2], sides[(i * 2) + 1], fronts[i], width, slide, room);
        });

    private static void Clears(Box left, Box right, Box front, Length width, Length slide, Length room)
    {
        Assert.Equal((Sheet + slide, width - Sheet - slide), (left.X, right.EndX));
        Assert.Equal(front.Dz - room, left.Dz);
        Assert.True(left.Z >= front.Z && left.EndZ <= front.EndZ && left.Y >= front.EndY && left.EndY <= Length.FromInches(20));
    }

    // Common practice, reckoned here anew: two hinges up to 40 in, one more for each 20 in after.
    private static int HingesWanted(Length height)
    {
        var count = 2;
        for (var limit = Length.FromInches(40); height > limit; limit += Length.FromInches(20))
            count++;
        return count;
    }

    private static List<Box> Leaves(Piece piece, string make)
    {
        var name = make == "slab" ? "Door" : "Door stile";
        var boxes = piece.Copies(name).Select(copy => copy.Box).OrderBy(box => box.X).ToList();
        return make == "slab" ? boxes : [.. boxes.Chunk(2).Select(pair => pair[0].Around(pair[1]))];
    }

    private static PiecePart Part(Piece piece, string name) => piece.Parts.First(part => part.Name == name);

    private static string Doors(string make, int leaves, string fit, Length gap, Length? overlay = null) =>
        $$"""
            { "kind": "doors", "make": "{{make}}", "material": "{{(make == "slab" ? "case" : "stile")}}", "panel": "{{(
                make == "slab" ? "" : "thin"
            )}}",
              "leaves": {{leaves}}, "fit": "{{fit}}", "gap": "{{Text(gap)}}", "overlay": "{{Text(overlay ?? Half)}}" }
            """;

    private const string Shelves = """{ "kind": "adjustable-shelves", "material": "case", "count": 1, "setback": "0 in" }""";

    // Any tick between the two, not only what a rule shows.
    private static Length Tick(Random chance, decimal least, decimal most) =>
        Length.FromTicks(chance.NextInt64(Length.FromInches(least).Ticks, Length.FromInches(most).Ticks + 1));

    // Millimetres hold every tick exactly in nine digits after the point.
    private static string Text(Length length) =>
        length.ToMillimetres().ToString("0.#########", CultureInfo.InvariantCulture) + " mm";

    private static void Repeat(Action<Random> trial)
    {
        var chance = new Random(20261128);
        for (var i = 0; i < Trials; i++)
            trial(chance);
    }
}
