using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Screws that are sold, that hold, and that leave their wood whole.</summary>
public sealed class ScrewSoldTests
{
    // Common practice: what stores carry of each gauge.
    private static readonly Dictionary<int, string[]> Sold = new()
    {
        [4] = ["1/2", "5/8", "3/4", "1"],
        [6] = ["1/2", "5/8", "3/4", "1", "1 1/4", "1 1/2", "1 5/8", "2"],
        [8] = ["1/2", "5/8", "3/4", "1", "1 1/4", "1 1/2", "1 5/8", "1 3/4", "2", "2 1/4", "2 1/2", "3"],
        [10] = ["3/4", "1", "1 1/4", "1 1/2", "1 3/4", "2", "2 1/4", "2 1/2", "3", "3 1/2"],
        [12] = ["1", "1 1/4", "1 1/2", "1 3/4", "2", "2 1/4", "2 1/2", "3", "3 1/2", "4"],
        [14] = ["1 1/2", "2", "2 1/2", "3", "3 1/2", "4"],
    };

    [Fact]
    public void Every_screw_is_one_that_is_sold_and_stops_an_eighth_short()
    {
        var chosen = 0;
        foreach (var joint in new[] { "face", "edge" })
            for (var near = 2; near <= 96; near++)
            for (var into = 2; into <= 96; into += 3)
            {
                string[] given = ["thickness=" + near + "/16", "into=" + into + "/16", "joint=" + joint];
                if (Asked.Run("screws", given).Answer is not { } answer)
                    continue;
                chosen++;
                var length = ((Working<Length>)answer.Results.Single(one => one.Name == "Screw length")).Value;
                var gauge = (int)((Working<double>)answer.Results.Single(one => one.Name == "Gauge")).Value;
                Assert.True(
                    Sold[gauge].Select(Asked.Inch).Contains(length),
                    $"#{gauge} × {length.ToInches()} in through {near}/16 into {into}/16"
                );
                Assert.True(length + Asked.Inch("1/8") <= Core.Measures.Length.FromInches((near + into) / 16m));
            }

        Assert.InRange(chosen, 2500, int.MaxValue);
    }

    [Fact]
    public void Of_two_that_are_as_near_the_longer_holds_more() =>
        Assert.Equal(Asked.Inch("3 1/2"), Asked.Length("screws", "Screw length", "thickness=2", "into=3"));

    [Theory]
    [InlineData("3 1/2", "11", "thickness", "4 in")]
    [InlineData("6", "24", "thickness", "4 in")]
    [InlineData("3/4", "1/4", "into", "at least")]
    public void A_refusal_says_what_is_really_wrong(string near, string into, string key, string said)
    {
        var fault = Assert.Single(Asked.Run("screws", "thickness=" + near, "into=" + into).Faults);
        Assert.Equal(key, fault.Field);
        Assert.Contains(said, fault.Message, StringComparison.Ordinal);
    }

    // An association of European MDF makers: screws into a face 12 mm from the edge and 25 mm from the corner, into an edge 70
    // mm from the corner; pilots of 85 to 95 % of the core: 3/32, 7/64, 1/8 in for #6, #8, #10.
    [Fact]
    public void MDF_gets_its_own_pilot_and_distances()
    {
        string[] given = ["thickness=3/4", "into=3", "wood=mdf", "width=24"];
        Assert.Equal(Asked.Inch("7/64"), Asked.Length("screws", "Pilot bit, far piece", given));
        var edge = Places([.. given, "joint=edge"]);
        Assert.True(edge[0].ToMillimetres() >= 70 && (Asked.Inch("24") - edge[^1]).ToMillimetres() >= 70);
        var face = Places([.. given, "joint=face"]);
        Assert.True(face[0].ToMillimetres() >= 25);
    }

    [Fact]
    public void Screws_keep_their_distance_from_edges_ends_and_each_other()
    {
        for (var eighths = 4; eighths <= 96 * 8; eighths += 3)
        {
            var width = Core.Measures.Length.FromInches(eighths / 8m);
            var places = Places("thickness=3/4", "into=1 1/2", "width=" + eighths + "/8");
            Assert.Equal(
                places.Length,
                (int)Asked.Number("screws", "Screws in the joint", "thickness=3/4", "into=1 1/2", "width=" + eighths + "/8")
            );
            Assert.Equal(places[0], width - places[^1]);
            // Four diameters of a #8 are 0.656 in.
            if (places.Length > 1)
                Assert.True(places[0] >= Asked.Inch("0.656"), $"{eighths}/8");
            Assert.All(
                places.Zip(places.Skip(1)),
                pair => Assert.InRange((double)(pair.Second - pair.First).ToInches(), 0.655, 6.001)
            );
        }
    }

    [Fact]
    public void A_pocket_joint_of_the_usual_stock_is_not_called_loadless() =>
        Assert.DoesNotContain(
            Asked.Answer("screws", "thickness=3/4", "into=3/4", "joint=pocket").Verdicts,
            verdict => verdict.Text.Contains("no load", StringComparison.Ordinal)
        );

    private static ImmutableArray<Length> Places(params string[] given) =>
        ((Working<ImmutableArray<Length>>)Asked.Result("screws", "Screw positions from one end", given)).Value;
}
