using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cli.Tests;

/// <summary>Wrong and odd requests, each given to the built program as a file: what it says, how it ends, what it leaves behind.</summary>
public sealed class OddRequestTests : IDisposable
{
    private const string Pine = """ "material": "pine", "length": """;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("\"8 ft\"", "1e400", "stock[0].length: '1e400' ")]
    [InlineData("\"8 ft\"", "NaN", "stock[0].length: 'NaN' ")]
    [InlineData("\"8 ft\"", "-8", "stock[0].length: '-8' ")]
    [InlineData("\"8 ft\"", "0", "stock[0].length: '0' ")]
    [InlineData("\"8 ft\"", "99999999999999999999", "stock[0].length: '99999999999999999999' ")]
    [InlineData("\"quantity\": 2", "\"quantity\": 4294967298", "parts[0].quantity: '4294967298' ")]
    [InlineData("\"quantity\": 2", "\"quantity\": -2", "parts[0].quantity: '-2' ")]
    [InlineData("\"price\": 8", "\"price\": \"dear\"", "stock[0].price: 'dear' ")]
    [InlineData(
        "\"material\": \"pine\", \"length\": \"34 1/2\"",
        "\"material\": \"oak\", \"length\": \"34 1/2\"",
        "parts[0].material: 'oak' "
    )]
    [InlineData("\"parts\": [", "\"parts\": [ { \"id\": \"A\", \"material\": \"pine\", \"length\": 9 }, ", "parts[1].id: 'A' ")]
    [InlineData("\"version\": 1", "\"version\": 3", "version: '3' ")]
    [InlineData("\"version\": 1", "\"version\": \"one\"", "version: 'one' ")]
    [InlineData("\"parts\": [", "\"parts\": 7, \"others\": [", "parts: '7' ")]
    [InlineData("\"kerf\": \"1/8\"", "\"kerf\": \"9 ft\"", "saw.kerf: '9 ft' ")]
    public async Task A_wrong_request_is_one_line_and_no_plan(string old, string replacement, string said)
    {
        Assert.Equal(2, Requests.Small.Split(old).Length);
        var run = await Refused(Requests.Small.Replace(old, replacement, StringComparison.Ordinal));
        Assert.StartsWith(said, run, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Half_a_document_is_refused() =>
        Assert.Contains(
            "ends the document too early",
            await Refused(Requests.Small[..(Requests.Small.Length / 2)]),
            StringComparison.Ordinal
        );

    [Fact]
    public async Task A_bottomless_document_is_refused() =>
        Assert.Contains(
            "is nested more than 64 deep",
            await Refused("{\"parts\": " + new string('[', 100_000)),
            StringComparison.Ordinal
        );

    [Fact]
    public async Task More_than_all_stock_holds_gives_3_and_says_what_is_left_over()
    {
        var plan = await Planned(
            3,
            Boards(
                $$"""{ "id": "B1", {{Pine}}50, "offcut": true, "quantity": 1 }""",
                $$"""{ "id": "A", {{Pine}}20, "quantity": 5 }"""
            )
        );
        var left = Assert.Single(plan.Unplaced);
        Assert.Equal(
            (PlanStatus.Incomplete, "A", 3, "the stock is used up"),
            (plan.Status, left.Part, left.Quantity, left.Reason)
        );
    }

    [Fact]
    public async Task Stock_of_which_there_is_none_gives_3()
    {
        var plan = await Planned(3, Boards($$"""{ "id": "S", {{Pine}}96, "quantity": 0 }""", $$"""{ "id": "A", {{Pine}}20 }"""));
        Assert.Equal("no stock of this material to cut from", Assert.Single(plan.Unplaced).Reason);
    }

    [Fact]
    public async Task Nothing_wanted_is_a_plan_of_nothing()
    {
        var plan = await Planned(0, Boards($$"""{ "id": "S", {{Pine}}96, "price": 6 }""", ""));
        Assert.Equal((PlanStatus.Proven, Money.Zero), (plan.Status, plan.Cost));
        Assert.Empty(plan.Layouts);
    }

    // Lengths without a common measure: the plan's six decimals of an inch must still say each of them exactly.
    [Fact]
    public async Task Sixty_fourths_beside_tenths_of_a_millimetre_survive_the_file()
    {
        var plan = await Planned(
            0,
            Boards(
                $$"""{ "id": "S", {{Pine}}"8 ft", "price": 6 }, { "id": "M", {{Pine}}"2400.1 mm", "price": 6 }""",
                $$"""{ "id": "A", {{Pine}}"300.1 mm", "quantity": 3 }, { "id": "B", {{Pine}}"11 63/64", "quantity": 4 }"""
            )
        );
        Assert.Equal((PlanStatus.Proven, Money.From(6)), (plan.Status, plan.Cost));
        Assert.Equal(
            3,
            plan.Layouts.Sum(layout => layout.Copies * layout.Pieces.Count(piece => piece.Dx == Length.FromMillimetres(300.1m)))
        );
    }

    private async Task<string> Refused(string request)
    {
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", request), "-o", scratch["p.json"]);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Equal(["r.json"], scratch.Files);
        return Assert.Single(run.Error.TrimEnd().Split(Environment.NewLine));
    }

    private async Task<CutPlan> Planned(int exit, string request)
    {
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", request), "-o", scratch["p.json"]);
        Assert.Equal(new Run(exit, "", ""), run);
        var plan = CutPlanJson.Read(await File.ReadAllBytesAsync(scratch["p.json"], TestContext.Current.CancellationToken)).Plan!;
        Assert.Empty(PlanVerifier.Check(CutRequestJson.Read(Encoding.UTF8.GetBytes(request)).Request!, plan));
        return plan;
    }

    private static string Boards(string stock, string parts) =>
        $$"""
            { "format": "shop-planner/cut-request", "version": 1, "unit": "in", "saw": { "kerf": "2.7 mm" },
              "materials": [ { "id": "pine", "form": "board", "width": "2 1/2" } ], "stock": [ {{stock}} ], "parts": [ {{parts}} ] }
            """;
}
