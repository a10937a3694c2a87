using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using static ShopPlanner.Cutting.Tests.Formats.Documents;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>Version 2 of the request: stock with bad places and edges that are still to be trimmed.</summary>
public sealed class PlaceMembersTests
{
    private const string Bin = "\"offcut\": true, \"quantity\": 1 }";

    /// <summary>The request of the format's description with a knot and a split end in the offcut, both its ends to square.</summary>
    internal static readonly string Second = Request
        .With("\"version\": 1", "\"version\": 2")
        .With(
            Bin,
            """
            "offcut": true, "quantity": 1, "untrimmed": ["near", "far"],
              "badPlaces": [ { "x": 20, "y": "1/2", "dx": "1 1/4", "dy": 1 }, { "x": "3 ft", "dx": "5 3/8" } ] }
            """
        );

    [Fact]
    public void Each_member_reads_to_what_it_says()
    {
        var (request, faults) = ReadRequest(Second);
        Assert.Empty(faults);
        var bin = request!.Stock[1];
        Assert.Equal(StockEdges.Ends, bin.Untrimmed);
        Assert.Equal(
            [new(In(20), In(0.5m), In(1.25m), In(1)), new(In(36), Length.Zero, In(5.375m), In(2.5m))],
            bin.BadPlaces.ToArray()
        );
        Assert.All(
            [request.Stock[0], request.Stock[2]],
            stock => Assert.True(stock.BadPlaces.IsEmpty && stock.Untrimmed is null)
        );
    }

    [Fact]
    public void What_is_written_reads_back_equal()
    {
        var request = ReadRequest(Second).Request!;
        var written = CutRequestJson.Write(request);
        Assert.Contains("\"version\": 2,", written, StringComparison.Ordinal);
        Assert.Equal(request.Stock, ReadRequest(written).Request!.Stock);
    }

    [Fact]
    public void No_edge_to_trim_is_told_from_nothing_said()
    {
        var request = ReadRequest(Second.With("[\"near\", \"far\"]", "[]")).Request!;
        Assert.Equal(StockEdges.None, request.Stock[1].Untrimmed);
        Assert.Equal(request.Stock, ReadRequest(CutRequestJson.Write(request)).Request!.Stock);
    }

    [Fact]
    public void A_request_without_them_stays_at_the_first_version()
    {
        var written = CutRequestJson.Write(ReadRequest(Request).Request!);
        Assert.Contains("\"version\": 1,", written, StringComparison.Ordinal);
        Assert.DoesNotContain("badPlaces", written, StringComparison.Ordinal);
        Assert.DoesNotContain("untrimmed", written, StringComparison.Ordinal);
        var second = Request.With("\"version\": 1", "\"version\": 2");
        Assert.Equal(written, CutRequestJson.Write(ReadRequest(second).Request!));
    }

    [Theory]
    [InlineData("\"version\": 2", "\"version\": 3", "version", "it reads versions 1 to 2")]
    [InlineData("\"far\"]", "\"left\"]", "stock[1].untrimmed[1]", "is unknown: write one of near, far, front, back")]
    [InlineData("\"far\"]", "\"near\"]", "stock[1].untrimmed[1]", "is given twice")]
    [InlineData("\"far\"]", "\"back\"]", "stock[1].untrimmed", "is for sheets")]
    [InlineData("[\"near\", \"far\"]", "\"near\"", "stock[1].untrimmed", "is not a list")]
    [InlineData("\"x\": 20, ", "\"x\": -1, ", "stock[1].badPlaces[0].x", "is less than zero")]
    [InlineData("\"x\": 20, ", "\"x\": 42, ", "stock[1].badPlaces[0].x", "is outside: the stock is 41 3/8 in long")]
    [InlineData("\"y\": \"1/2\", ", "\"y\": \"2 1/2\", ", "stock[1].badPlaces[0].y", "is outside: the stock is 2 1/2 in wide")]
    [InlineData("\"dx\": \"1 1/4\"", "\"dx\": 0", "stock[1].badPlaces[0].dx", "must be more than zero")]
    [InlineData("\"dx\": \"1 1/4\"", "\"dx\": 22", "stock[1].badPlaces[0].dx", "at most 21 3/8 in from there")]
    [InlineData("\"dy\": 1 ", "\"dy\": 3 ", "stock[1].badPlaces[0].dy", "reaches beyond the stock, 2 1/2 in wide")]
    [InlineData(", \"dx\": \"5 3/8\"", "", "stock[1].badPlaces[1].dx", "is missing")]
    [InlineData("\"dx\": \"5 3/8\"", "\"dx\": \"5 1/2\"", "stock[1].badPlaces[1].dx", "at most 5 3/8 in from there")]
    [InlineData("\"quantity\": 1, \"untrimmed\"", "\"untrimmed\"", "stock[1].quantity", "is missing: write 1")]
    [InlineData("\"quantity\": 1, \"untrimmed\"", "\"quantity\": 2, \"untrimmed\"", "stock[1].quantity", "must be 1")]
    public void A_fault_names_the_member(string right, string wrong, string path, string message)
    {
        var (request, faults) = ReadRequest(Second.With(right, wrong));
        Assert.Null(request);
        var fault = Assert.Single(faults);
        Assert.Equal(path, fault.Field);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_members_of_version_2_are_refused_in_version_1()
    {
        var faults = ReadRequest(Second.With("\"version\": 2", "\"version\": 1")).Faults;
        Assert.Equal(["stock[1].untrimmed", "stock[1].badPlaces"], faults.Select(fault => fault.Field));
        Assert.All(faults, fault => Assert.Contains("belongs to version 2", fault.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Too_many_bad_places_are_counted()
    {
        var places = string.Join(",", Enumerable.Repeat("{ \"x\": 1, \"dx\": 1 }", CutStock.MostBadPlaces + 1));
        var fault = Assert.Single(ReadRequest(Second.With("{ \"x\": \"3 ft\", \"dx\": \"5 3/8\" }", places)).Faults);
        Assert.Equal(("stock[1].badPlaces", "22"), (fault.Field, fault.Value));
        Assert.Contains("at most 20", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_of_version_2_is_later_than_any() =>
        Assert.Equal("version", Assert.Single(ReadPlan(Plan.With("\"version\": 1", "\"version\": 2")).Faults).Field);

    [Fact]
    public void A_short_offcut_that_the_trims_use_up_is_no_fault()
    {
        var json = Second.With("\"41 3/8\"", "\"3/4\"");
        var places = json[
            json.IndexOf(",\n  \"badPlaces\"", StringComparison.Ordinal)..(json.IndexOf("] }", StringComparison.Ordinal) + 1)
        ];
        Assert.Empty(ReadRequest(json.With(places, "")).Faults);
    }

    [Fact]
    public void A_new_board_that_the_trims_use_up_is_a_fault()
    {
        var json = Second
            .With("\"price\": 6.48 }", "\"price\": 6.48, \"untrimmed\": [\"near\", \"far\"] }")
            .With("\"boardEndTrim\": \"1/2\"", "\"boardEndTrim\": 48");
        Assert.Equal("saw.boardEndTrim", Assert.Single(ReadRequest(json).Faults).Field);
    }
}
