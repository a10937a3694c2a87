using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Dowels that fit their joint and don't come through a face.</summary>
public sealed class DowelHoleTests
{
    [Theory]
    [InlineData("1/64")]
    [InlineData("1/4")]
    [InlineData("9/16")]
    public void A_joint_narrower_than_two_dowels_is_refused(string width)
    {
        var fault = Assert.Single(Asked.Run("dowels", "thickness=3/4", "width=" + width).Faults);
        Assert.Equal("width", fault.Field);
        Assert.Contains("⅝″", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_stays_around_each_dowel()
    {
        for (var width = 10; width <= 200; width++)
        {
            string[] given = ["thickness=3/4", "width=" + width + "/16"];
            var dowel = Asked.Length("dowels", "Diameter", given);
            var places = (
                (Working<System.Collections.Immutable.ImmutableArray<Length>>)
                    Asked.Result("dowels", "Centers from one end", given)
            ).Value;
            Assert.True(places[0] >= dowel);
            Assert.All(places.Zip(places.Skip(1)), pair => Assert.True(pair.Second - pair.First >= dowel * 2));
        }
    }

    [Fact]
    public void A_hole_in_a_face_leaves_an_eighth_of_it_and_the_dowel_fits_both_holes()
    {
        for (var thick = 8; thick <= 40; thick++)
        for (var face = 8; face <= 40; face += 4)
        {
            string[] given = [$"thickness={thick}/16", "width=4", "joint=face", $"face={face}/16"];
            if (Asked.Run("dowels", given).Answer is null)
                continue;
            var (flat, edge) = (
                Asked.Length("dowels", "Hole in the face, deep", given),
                Asked.Length("dowels", "Hole in the edge or end, deep", given)
            );
            Assert.True(flat + Asked.Inch("1/8") <= Core.Measures.Length.FromInches(face / 16m), string.Join(' ', given));
            var dowel = Asked.Length("dowels", "Length of the dowel", given);
            Assert.True(flat + edge >= dowel + Asked.Inch("1/16"), string.Join(' ', given));
            // At least its diameter on each side holds (common practice).
            Assert.True(flat - Asked.Inch("1/16") >= Asked.Length("dowels", "Diameter", given), string.Join(' ', given));
        }
    }

    [Fact]
    public void Holes_for_edges_come_with_a_word_on_faces()
    {
        var answer = Asked.Answer("dowels", "thickness=3/4", "width=4");
        Assert.Contains(
            answer.Verdicts,
            verdict => verdict.Severity >= Severity.Watch && verdict.Text.Contains("face", StringComparison.Ordinal)
        );
    }
}
