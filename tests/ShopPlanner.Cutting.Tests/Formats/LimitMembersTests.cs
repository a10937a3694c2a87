using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Tests.Limits;
using ShopPlanner.Cutting.Tests.Planner;
using static ShopPlanner.Cutting.Tests.Formats.Documents;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>The members of both formats that say what saw, car and store allow, and how parts are trimmed and practised for.</summary>
public sealed class LimitMembersTests
{
    private const string Saw = "\"sheetEdgeTrim\": \"1/4\" },";
    private const string Part = "\"grain\": \"length\" }";

    private static readonly string Full = Request
        .With(
            Saw,
            """
            "sheetEdgeTrim": "1/4", "widestRip": 24, "longestCrosscut": "12 1/4" },
            "store": { "cuts": 2, "tolerance": "1/8" },
            "carry": { "longest": "5 ft", "widest": 30 },
            """
        )
        .With(
            Part,
            """
            "grain": "length", "finishedLength": "26 1/2", "finishedWidth": 13 },
            { "id": "X", "material": "birch-18", "length": 6, "width": 4, "practiceFor": "P" }
            """
        );

    [Fact]
    public void Each_member_reads_to_what_it_says()
    {
        var (request, faults) = ReadRequest(Full);
        Assert.Empty(faults);
        Assert.Equal((In(24), In(12.25m)), (request!.Saw.WidestRip, request.Saw.LongestCrosscut));
        Assert.Equal(new StoreCuts(2, In(0.125m)), request.Store);
        Assert.Equal(new CarryLimit(In(60), In(30)), request.Carry);
        Assert.Equal(
            (In(26.5m), In(13), null),
            (request.Parts[1].FinishedLength, request.Parts[1].FinishedWidth, request.Parts[1].PracticeFor)
        );
        Assert.Equal("P", request.Parts[2].PracticeFor);
    }

    [Fact]
    public void What_is_written_reads_back_equal()
    {
        var request = ReadRequest(Full).Request!;
        var again = ReadRequest(CutRequestJson.Write(request)).Request!;
        Assert.Equal((request.Saw, request.Store, request.Carry), (again.Saw, again.Store, again.Carry));
        Assert.Equal(request.Parts, again.Parts);
    }

    [Fact]
    public void Stock_that_is_sold_uncut_says_so_and_other_stock_says_nothing()
    {
        var request = ReadRequest(Full).Request!;
        Assert.NotEmpty(request.Stock);
        Assert.All(request.Stock, stock => Assert.False(stock.SoldUncut));
        Assert.DoesNotContain("storeCuts", CutRequestJson.Write(request), StringComparison.Ordinal);
        var uncut = request with { Stock = [.. request.Stock.Select(stock => stock with { SoldUncut = !stock.Offcut })] };
        Assert.Equal(uncut.Stock, ReadRequest(CutRequestJson.Write(uncut)).Request!.Stock);
    }

    [Fact]
    public void A_document_without_them_is_written_without_them()
    {
        var written = CutRequestJson.Write(ReadRequest(Request).Request!);
        foreach (var name in new[] { "widestRip", "longestCrosscut", "store\"", "carry", "finished", "practiceFor" })
            Assert.DoesNotContain(name, written.Replace("\"stock\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("\"by\"", CutPlanJson.Write(ReadPlan(Plan).Plan!), StringComparison.Ordinal);
    }

    [Fact]
    public void No_tolerance_is_none()
    {
        var request = ReadRequest(Request.With(Saw, Saw + "\"store\": { \"cuts\": 1 },")).Request!;
        Assert.Equal(new StoreCuts(1, Length.Zero), request.Store);
    }

    [Theory]
    [InlineData("\"widestRip\": 24", "\"widestRip\": 0", "saw.widestRip", "must be more than zero")]
    [InlineData("\"12 1/4\"", "true", "saw.longestCrosscut", "is not a length")]
    [InlineData("\"cuts\": 2", "\"cuts\": 0", "store.cuts", "is too few")]
    [InlineData("\"cuts\": 2", "\"cuts\": 101", "store.cuts", "is too many")]
    [InlineData("\"cuts\": 2, ", "", "store.cuts", "is missing")]
    [InlineData("\"tolerance\": \"1/8\"", "\"tolerance\": -1", "store.tolerance", "is less than zero")]
    [InlineData("\"longest\": \"5 ft\", ", "", "carry.longest", "is missing")]
    [InlineData("\"widest\": 30", "\"widest\": 0", "carry.widest", "must be more than zero")]
    [InlineData("\"widest\": 30", "\"widest\": 61", "carry.widest", "is more than carry.longest, 60 in")]
    [InlineData("{ \"cuts\": 2, \"tolerance\": \"1/8\" }", "2", "store", "is not an object")]
    [InlineData("\"26 1/2\"", "\"27 1/64\"", "parts[1].finishedLength", "is more than its length, 27 in")]
    [InlineData("\"finishedWidth\": 13", "\"finishedWidth\": 14", "parts[1].finishedWidth", "is more than its width, 13 1/4 in")]
    [InlineData(
        "\"practiceFor\": \"P\"",
        "\"practiceFor\": \"Q\"",
        "parts[2].practiceFor",
        "is not the id of a part of this request"
    )]
    [InlineData("\"practiceFor\": \"P\"", "\"practiceFor\": \"X\"", "parts[2].practiceFor", "is the part itself")]
    public void A_fault_names_the_member(string right, string wrong, string path, string message)
    {
        var (request, faults) = ReadRequest(Full.With(right, wrong));
        Assert.Null(request);
        var fault = Assert.Single(faults);
        Assert.Equal(path, fault.Field);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_full_width_board_part_is_finished_no_wider_than_its_material()
    {
        var fault = Assert.Single(
            ReadRequest(Request.With("\"34 1/2\", \"quantity\"", "\"34 1/2\", \"finishedWidth\": 3, \"quantity\"")).Faults
        );
        Assert.Equal("parts[0].finishedWidth", fault.Field);
    }

    [Fact]
    public void A_store_cut_is_written_and_read_back()
    {
        var request = Limited.Sheets([Limited.Panel("A", "20", "15", 12)]).By(3, "1/8", "60", "30");
        var plan = Some.Planned(request);
        var again = ReadPlan(CutPlanJson.Write(plan)).Plan!;
        Assert.Equal(plan.Layouts[0].Cuts, again.Layouts[0].Cuts);
        Assert.Equal(3, again.Layouts[0].Cuts.Count(cut => cut.ByStore));
        var fault = Assert.Single(ReadPlan(Plan.With("\"at\": 27.375", "\"at\": 27.375, \"by\": \"me\"")).Faults);
        Assert.Equal(("layouts[0].cuts[0].by", "me"), (fault.Field, fault.Value));
    }
}
