using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>
/// Hidden lines disappear since a nearer part is painted later. Checked against rays: two boxes that one line of sight meets are
/// painted
/// in the order in which it meets them, the farther first.
/// </summary>
public sealed class PaintOrderTests
{
    private static readonly RoleMaterial Pine = new(
        "case",
        null,
        "Pine",
        MaterialForm.Board,
        Length.FromInches(1),
        null,
        "pine-sugar"
    );

    [Theory]
    [InlineData(1, 12), InlineData(2, 40), InlineData(3, 40), InlineData(4, 90), InlineData(5, 90)]
    public void A_nearer_box_is_painted_later(int seed, int boxes)
    {
        var chance = new Random(seed);
        var piece = PieceOf(Split(chance, boxes));
        var painted = PieceDrawings.Isometric(piece, 600, 500).Shapes.OfType<Marked>().Select(one => one.Mark).ToList();
        var at = piece.Parts[0].Copies.ToDictionary(copy => copy.Mark, copy => copy.Box);
        Assert.Equal(at.Count, painted.Count);
        for (var ray = 0; ray < 4000; ray++)
        {
            var (x, y, z) = (chance.NextDouble() * 1000, chance.NextDouble() * 1000, chance.NextDouble() * 1000);
            var met = painted
                .Select((mark, i) => (Order: i, Mark: mark, Near: Meets(at[mark], x, y, z)))
                .Where(one => one.Near is not null)
                .ToList();
            Assert.True(
                met.Zip(met.Skip(1)).All(two => two.First.Near < two.Second.Near),
                $"seed {seed}: {string.Join(", ", met.Select(one => $"{one.Mark} at {one.Near:0.#}"))}"
            );
        }
    }

    [Fact]
    public void A_door_is_painted_after_the_back()
    {
        var piece = BuiltInPieces.Read("pantry-cupboard");
        var order = PieceDrawings.Isometric(piece, 600, 500).Shapes.OfType<Marked>().Select(one => one.Mark).ToList();
        var door = piece.Parts.Single(part => part.Name == "Door panel").Copies[0].Mark;
        var back = piece.Parts.Single(part => part.Name == "Back").Copies[0].Mark;
        Assert.True(order.IndexOf(back) < order.IndexOf(door));
    }

    // A line of sight runs to the front, the right and above alike; how far along it the box is left again, if it is met well
    // inside.
    private static double? Meets(Solid box, double x, double y, double z)
    {
        double Mm(Length length) => (double)length.Ticks / Length.TicksPerMillimetre;
        var enter = Math.Max(Math.Max(Mm(box.X) - x, y - Mm(box.EndY)), Mm(box.Z) - z);
        var leave = Math.Min(Math.Min(Mm(box.EndX) - x, y - Mm(box.Y)), Mm(box.EndZ) - z);
        return leave - enter > 0.5 ? leave : null;
    }

    // A cube split again and again along planes: boxes that never lie over one another in a circle. Some are taken out, so that
    // one sees in.
    private static List<Solid> Split(Random chance, int boxes)
    {
        var edge = Length.FromMillimetres(1000);
        List<Solid> all = [new(Length.Zero, Length.Zero, Length.Zero, edge, edge, edge)];
        while (all.Count < boxes)
        {
            var box = all.MaxBy(one => chance.NextDouble() * one.Dx.Ticks * one.Dy.Ticks * one.Dz.Ticks);
            var axis = (Axis)chance.Next(3);
            if (box.Extent(axis) < Length.FromMillimetres(30))
                continue;
            var cut = box.Start(axis) + Length.FromTicks(box.Extent(axis).Ticks * chance.Next(20, 80) / 100);
            all.Remove(box);
            all.AddRange([box.With(axis, box.Start(axis), cut), box.With(axis, cut, box.End(axis))]);
        }

        return [.. all.Where(_ => chance.Next(4) > 0)];
    }

    private static Piece PieceOf(List<Solid> boxes)
    {
        ImmutableArray<PartCopy> copies =
        [
            .. boxes.Select((box, i) => new PartCopy($"A{i + 1}", box, Hand.Either, Axis.X, Axis.Z)),
        ];
        var (size, length) = (Working.Given("Length", Length.FromInches(1)), Length.FromInches(1));
        var part = new PiecePart(
            "A",
            "Block",
            "Blocks",
            Pine,
            size,
            size,
            size,
            length,
            length,
            true,
            PartPurpose.Member,
            "",
            copies,
            copies.Length
        );
        var edge = Length.FromMillimetres(1000);
        return new(
            "Blocks",
            LengthUnit.Inch,
            new(Length.Zero, Length.Zero, Length.Zero, edge, edge, edge),
            [part],
            [],
            [],
            [],
            [],
            []
        );
    }
}
