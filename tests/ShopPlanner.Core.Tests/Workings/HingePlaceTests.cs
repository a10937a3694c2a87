using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Where hinges sit on doors of every height.</summary>
public sealed class HingePlaceTests
{
    // A cup of 35 mm with its screws 45 mm apart takes about 2 1/2 in of the edge, and as much wood as its half to the end.
    [Fact]
    public void Every_cup_has_its_own_room_on_every_door_that_is_answered()
    {
        var answered = 0;
        for (var quarters = 4 * 4; quarters <= 100 * 4; quarters++)
            foreach (var weight in new[] { "2 lb", "20 lb", "35 lb", "50 lb" })
            {
                var height = quarters / 4m;
                var outcome = Asked.Run(
                    "hinges",
                    "height=" + height.ToString(CultureInfo.InvariantCulture),
                    "width=12",
                    "weight=" + weight
                );
                if (outcome.Answer is not { } answer)
                    continue;
                answered++;
                var places = ((Working<ImmutableArray<Length>>)answer.Results[1]).Value;
                Assert.True(places[0] >= Asked.Inch("1 1/4"), $"{height} in: {places[0]}");
                Assert.True(Core.Measures.Length.FromInches(height) - places[^1] >= Asked.Inch("1 1/4"), $"{height} in");
                foreach (var (below, above) in places.Zip(places.Skip(1)))
                    Assert.True(above - below >= Asked.Inch("2 1/2"), $"{height} in, {weight}: {below} and {above}");
            }

        Assert.InRange(answered, 1300, int.MaxValue);
    }

    [Theory]
    [InlineData("4")]
    [InlineData("4 1/2")]
    public void A_door_too_low_for_two_cups_is_refused_with_what_to_use_instead(string height)
    {
        var fault = Assert.Single(Asked.Run("hinges", "height=" + height, "width=12", "weight=1 lb").Faults);
        Assert.Equal("height", fault.Field);
        Assert.Contains("butt hinges", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("7")]
    [InlineData("8")]
    public void A_low_door_has_its_hinges_nearer_to_the_ends(string height)
    {
        var places = (
            (Working<ImmutableArray<Length>>)Asked.Answer("hinges", "height=" + height, "width=12", "weight=1 lb").Results[1]
        ).Value;
        Assert.Equal(2, places.Length);
        Assert.Equal(Asked.Inch(height) - places[1], places[0]);
        Assert.True(places[1] - places[0] >= Asked.Inch("2 1/2"));
    }

    [Fact]
    public void Cups_and_their_bits_are_in_millimetres_whatever_the_door_is_measured_in()
    {
        var answer = Asked.Answer("hinges", "height=30", "width=12");
        Assert.Equal("35 mm", Text(answer.Results.Single(one => one.Name == "Cup")));
        Assert.Equal("13 mm", Text(answer.Results.Single(one => one.Name == "Deepest cup hole")));
        Assert.Equal("22.5 mm", Text(answer.Results.Single(one => one.Name == "Cup center from the door's edge")));
    }

    [Fact]
    public void The_screws_are_told_from_the_cups_center_with_their_pilot()
    {
        var answer = Asked.Answer("hinges", "height=30", "width=12");
        var screws = Text(answer.Results.Single(one => one.Name == "Screws"));
        Assert.Contains("from the cup's center", screws, StringComparison.Ordinal);
        Assert.DoesNotContain("behind the cup", screws, StringComparison.Ordinal);
        Assert.Equal("³⁄₃₂″", Text(answer.Results.Single(one => one.Name == "Pilot bit for the screws")));
    }

    private static string Text(Working working) => working.Figure.Text(LengthUnit.Inch);
}
