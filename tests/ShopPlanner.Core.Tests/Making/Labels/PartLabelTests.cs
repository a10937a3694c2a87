using System.Globalization;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Tests.Making.Operations;

namespace ShopPlanner.Core.Tests.Making.Labels;

/// <summary>What labels tell of the parts that they are stuck on.</summary>
public sealed class PartLabelTests
{
    public static TheoryData<string> Designs => [.. DesignFiles.Names];

    /// <summary>Oracle: vectors. Right, up and toward the eye make a right-handed set, as x to the right, y away and z up do, so
    /// that nothing is mirrored on a label.</summary>
    [Theory]
    [MemberData(nameof(Designs))]
    public void A_label_is_turned_and_never_mirrored(string design)
    {
        foreach (var (said, piece) in Worked.BuiltIn(design, 2))
            Assert.All(
                PartLabels.Of(piece),
                label =>
                {
                    var (right, up, eye) = (Way(label.View.Right), Way(label.View.Top), Way(label.View.Face));
                    int[] cross =
                    [
                        (right[1] * up[2]) - (right[2] * up[1]),
                        (right[2] * up[0]) - (right[0] * up[2]),
                        (right[0] * up[1]) - (right[1] * up[0]),
                    ];
                    Assert.True(cross.SequenceEqual(eye), $"{said}, {label.Mark}");
                }
            );
    }

    /// <summary>Oracle: the pocket screws that the hardware list counts, from the same joints by another way.</summary>
    [Theory]
    [MemberData(nameof(Designs))]
    public void Pocket_holes_are_as_many_as_pocket_screws_to_buy(string design)
    {
        foreach (var (said, piece) in Worked.BuiltIn(design, 2))
        {
            var told = PartLabels
                .Of(piece)
                .SelectMany(label => All(label.Hints))
                .Where(one => one.Contains("pocket hole"))
                .Sum(Count);
            var bought = Fastenings.Of(piece).Where(one => one.Name.StartsWith("Pocket screws", StringComparison.Ordinal));
            Assert.True(bought.Sum(one => one.Quantity) == told, said);
        }
    }

    [Fact]
    public void Hints_stand_at_the_edges_where_the_work_is()
    {
        var labels = PartLabels.Of(Piece("bookcase")).ToDictionary(label => label.Mark);
        // The sides: the bottom's dado low, the top's rabbet high, the back's rabbet at the rear, which is up on the left side seen
        // from outside and down on the right one; the fixed shelf's dado in the midst of the face.
        Assert.Equal("dado | rabbet | rabbet | glue", Told(labels["A1L"].Hints));
        Assert.Equal("dado | rabbet | glue | rabbet", Told(labels["A2R"].Hints));
        Assert.Equal("dado", string.Join(", ", labels["A1L"].Hints.Faces));
        Assert.Equal(("outside face", "upper end"), (labels["A1L"].FaceWords, labels["A1L"].RightWords));
        Assert.Equal("in dado | in dado |  | band", Told(labels["H1"].Hints));
        Assert.Equal("2 pocket holes | 2 pocket holes |  | ", Told(labels["E1"].Hints));
    }

    // Left, right, top, bottom.
    private static string Told(EdgeHints hints) =>
        string.Join(" | ", new[] { hints.Left, hints.Right, hints.Top, hints.Bottom }.Select(one => string.Join(", ", one)));

    [Theory]
    [MemberData(nameof(Designs))]
    public void A_triangle_lies_across_the_parts_that_belong_together(string design)
    {
        var piece = Piece(design);
        var labels = PartLabels.Of(piece);
        Assert.All(
            labels.Where(label => label.Triangle is not null),
            label =>
            {
                var (whole, copy) = (label.Triangle!.Whole, label.Triangle.Copy);
                Assert.True(copy.X >= Length.Zero && copy.X + copy.Wide <= whole.Wide, label.Mark);
                Assert.True(copy.Y >= Length.Zero && copy.Y + copy.High <= whole.High, label.Mark);
                // Its length lies along the label.
                Assert.True(label.Triangle.IsUpright || copy.Wide == label.View.Wide, label.Mark);
            }
        );
        Assert.All(
            labels.Where(label => label.Part.Assembly is "Carcass" or "Door"),
            label => Assert.True(label.Triangle is not null || labels.Count(one => one.Part.Assembly == label.Part.Assembly) == 1)
        );
    }

    [Fact]
    public void Stiles_carry_the_two_sides_of_the_triangle_and_the_lower_rail_its_base()
    {
        var labels = PartLabels.Of(Piece("pantry-cupboard")).Where(label => label.Part.Assembly == "Door").ToList();
        var stiles = labels.Where(label => label.Part.Name == "Door stile").Take(2).Select(label => label.Triangle!).ToList();
        var rails = labels.Where(label => label.Part.Name == "Door rail").Take(2).Select(label => label.Triangle!).ToList();
        // Turned with the stile, its upper end at the right: the left stile lies at the top, the right one at the bottom.
        Assert.All(stiles, stile => Assert.False(stile.IsUpright));
        Assert.Equal(Length.Zero, stiles.Min(stile => stile.Copy.Y));
        Assert.Equal(stiles[0].Whole.High, stiles.Max(stile => stile.Copy.Y + stile.Copy.High));
        Assert.All(rails, rail => Assert.True(rail.IsUpright));
        Assert.Equal(Length.Zero, rails.Min(rail => rail.Copy.Y));
        Assert.Equal(rails[0].Whole.High, rails.Max(rail => rail.Copy.Y + rail.Copy.High));
    }

    private static Piece Piece(string design) => Worked.BuiltIn(design, 0).First().Piece;

    private static IEnumerable<string> All(EdgeHints hints) =>
        [.. hints.Left, .. hints.Right, .. hints.Top, .. hints.Bottom, .. hints.Faces];

    private static int Count(string hint) =>
        char.IsAsciiDigit(hint[0]) ? int.Parse(hint.Split(' ')[0], CultureInfo.InvariantCulture) : 1;

    private static int[] Way(BoxSide side)
    {
        var way = new int[3];
        way[(int)side.Axis()] = side.IsFar() ? 1 : -1;
        return way;
    }
}
