using System.Diagnostics;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// Odd requests that are no faults, from document to document: read, planned, checked, written, read again and checked again. A board
/// is 2 1/2 in wide; prices are whole, so the cost tells what was bought.
/// </summary>
public sealed class OddRequestTests
{
    private const string Longer = "longer than any stock of this material";
    private const string NoRoom = "the stock is used up";

    // Name; saw; stock; parts; cost; pieces left out, each with the beginning of its reason.
    public static TheoryData<string, string, string, string, int, string?> Boards =>
        new()
        {
            {
                "inches and millimetres mixed",
                """ "kerf": "2.7 mm" """,
                B("\"8 ft\"", 6) + "," + B("\"2400 mm\"", 6),
                P("\"300.1 mm\"", 3) + "," + P("\"11 63/64\"", 4),
                6,
                null
            },
            {
                "sixty-fourths beside tenths of a millimetre",
                """ "kerf": "1/64" """,
                B("\"1000.1 mm\"", 5),
                P("\"500 mm\"", 2, "A") + "," + P("\"1/64\"", 2, "B"),
                10,
                null
            },
            { "one tick too much", """ "kerf": "0.1 mm" """, B("\"1000.1 mm\"", 5), P("\"500.003125 mm\"", 2), 10, null },
            { "not a tick too much", """ "kerf": "0.1 mm" """, B("\"1000.1 mm\"", 5), P("\"500 mm\"", 2), 5, null },
            { "stock of which there is none", "", B("96", 1, 0) + "," + B("97", 6), P("20", 1), 6, null },
            { "nothing but stock of which there is none", "", B("96", 1, 0), P("20", 2), 0, "2 no stock of this material" },
            {
                "equal parts under different ids",
                """ "kerf": "1/8" """,
                B("96", 6),
                P("23", 4, "A") + "," + P("23", 4, "B"),
                12,
                null
            },
            { "a part as long as the stock", """ "kerf": "1/8" """, B("96", 6), P("96", 2), 12, null },
            {
                "a part as long as the stock before it is squared",
                """ "kerf": "1/8", "boardEndTrim": "1/2" """,
                B("96", 6),
                P("96", 2),
                0,
                "2 " + Longer
            },
            {
                "a part as long as an offcut",
                """ "kerf": "1/8", "boardEndTrim": "1/2" """,
                B("96", 0, 2, offcut: true),
                P("96", 2),
                0,
                null
            },
            {
                "a part as long as the squared stock",
                """ "kerf": "1/8", "boardEndTrim": "1/2" """,
                B("96", 6),
                P("95 1/2", 2),
                12,
                null
            },
            { "a kerf as wide as what is left", """ "kerf": "1/8" """, B("48", 5), P("23 15/16", 2), 5, null },
            {
                "a kerf wider than what is left",
                """ "kerf": "1/4" """,
                B("48", 5),
                P("23 15/16", 1, "A") + "," + P("24", 1, "B"),
                10,
                null
            },
            { "a kerf that runs off the end", """ "kerf": "1/4" """, B("48", 5), P("23 7/8", 2, "A"), 5, null },
            { "a kerf as wide as the board", """ "kerf": "2 1/2" """, B("48", 5), P("2 1/2", 10), 5, null },
            {
                "a trim less than a kerf as wide as the board is long",
                """ "kerf": "2 1/2", "boardEndTrim": "1/2" """,
                B("2 1/2", 5),
                P("2", 1),
                5,
                null
            },
            { "no kerf at all", "", B("48", 5), P("1/64", 3072), 5, null },
            { "more than all boards hold", "", B("50", 0, 1, offcut: true), P("20", 5), 0, "3 " + NoRoom },
            { "a dear board rather than nothing", "", B("50", 999_999, 1), P("20", 3), 999_999, "1 " + NoRoom },
            { "no stock", "", "", P("20", 1), 0, "1 no stock of this material" },
            { "no parts", "", B("96", 6), "", 0, null },
            { "no parts and no stock", "", "", "", 0, null },
            {
                "ids of every sort",
                "",
                B("96", 6, id: "Ελιά \\\" 脚\\u0000"),
                P("40", 1, "a") + "," + P("40", 1, "A") + "," + P("1", 1, "__proto__") + "," + P("1", 1, "a b"),
                6,
                null
            },
            {
                "a hundred thousand pieces at the highest price",
                "",
                B("\"100 m\"", 1_000_000),
                P("\"60 m\"", 1000),
                1_000_000_000,
                null
            },
            { "a billion boards at hand", "", B("96", 6, 1_000_000_000), P("90", 500), 3000, null },
            { "the least length", "", B("\"1 mm\"", 6), P("\"0.003125 mm\"", 320), 6, null },
        };

    // The same of sheets, 8 ft by 4 ft at 60.
    public static TheoryData<string, string, string, string, int, string?> Sheets =>
        new()
        {
            { "a part as large as the sheet", """ "kerf": "1/8" """, S("96", "48"), R("96", "48", 2), 120, null },
            {
                "a part as large as the sheet before its margin",
                """ "sheetEdgeTrim": "1/64" """,
                S("96", "48"),
                R("96", "48", 1),
                0,
                "1 " + Longer
            },
            {
                "a part as large as what the margin leaves",
                """ "kerf": "1/8", "sheetEdgeTrim": "1/64" """,
                S("96", "48"),
                R("95 31/32", "47 31/32", 1),
                60,
                null
            },
            { "four quarters and their kerf", """ "kerf": "1/8" """, S("96", "48"), R("47 15/16", "23 15/16", 4), 60, null },
            {
                "four quarters without their kerf: three, laid across",
                """ "kerf": "1/8" """,
                S("96", "48"),
                R("48", "24", 4),
                120,
                null
            },
            { "more than all sheets hold", "", S("96", "48", 1), R("48", "24", 5), 60, "1 " + NoRoom },
            {
                "no common measure",
                """ "kerf": "2.7 mm" """,
                S("96", "48"),
                R("300.1 mm", "11 63/64", 9, "A") + "," + R("10 1/64", "457.3 mm", 3, "B"),
                60,
                null
            },
            { "a thread", """ "kerf": "1/8" """, S("96", "48"), R("96", "0.003125 mm", 3), 60, null },
            { "nothing there", "", S("96", "48", 0), R("10", "10", 1), 0, "1 no stock of this material" },
            { "a thousand sheets", "", S("96", "48"), R("90", "40", 1000), 60_000, null },
        };

    [Theory]
    [MemberData(nameof(Boards))]
    public void An_odd_request_of_boards_is_planned(
        string name,
        string saw,
        string stock,
        string parts,
        int cost,
        string? left
    ) => Check(name, """{ "id": "m", "form": "board", "width": "2 1/2" }""", saw, stock, parts, cost, left);

    [Theory]
    [MemberData(nameof(Sheets))]
    public void An_odd_request_of_sheets_is_planned(
        string name,
        string saw,
        string stock,
        string parts,
        int cost,
        string? left
    ) => Check(name, """{ "id": "m", "form": "sheet" }""", saw, stock, parts, cost, left);

    private static void Check(string name, string material, string saw, string stock, string parts, int cost, string? left)
    {
        var watch = Stopwatch.StartNew();
        var json = $$"""
            { "format": "shop-planner/cut-request", "version": 1, "unit": "in", "saw": { {{saw}} },
              "materials": [ {{material}} ], "stock": [ {{stock}} ], "parts": [ {{parts}} ], "limits": { "seconds": 3 } }
            """;
        var (request, faults) = CutRequestJson.Read(Encoding.UTF8.GetBytes(json));
        Assert.Empty(faults);
        var plan = Some.Planned(request!, new SearchControl());
        Assert.Equal((name, Money.From(cost), left), (name, plan.Cost, left is null ? null : Left(plan, left)));
        Assert.Equal(left is null ? PlanStatus.Proven : PlanStatus.Incomplete, plan.Status);
        var (back, wrong) = CutPlanJson.Read(Encoding.UTF8.GetBytes(CutPlanJson.Write(plan)));
        Assert.Empty(wrong);
        Assert.Empty(PlanVerifier.Check(request!, back!));
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 30);
    }

    private static string Left(CutPlan plan, string expected)
    {
        var one = Assert.Single(plan.Unplaced);
        var said = string.Create(CultureInfo.InvariantCulture, $"{one.Quantity} {one.Reason}");
        return said[..Math.Min(said.Length, expected.Length)];
    }

    private static string B(string length, int price, int? quantity = null, bool offcut = false, string? id = null) =>
        $$"""
            { "id": "{{id ?? length.Trim('"') + " board"}}", "material": "m", "length": {{Text(
                length
            )}}, "price": {{price}}, "quantity": {{Number(quantity)}}, "offcut": {{(offcut ? "true" : "false")}} }
            """;

    private static string P(string length, int quantity, string? id = null) =>
        $$"""
            { "id": "{{id ?? length.Trim('"')}}", "material": "m", "length": {{Text(length)}}, "quantity": {{quantity}} }
            """;

    private static string S(string length, string width, int? quantity = null) =>
        $$"""
            { "id": "sheet", "material": "m", "length": {{Text(length)}}, "width": {{Text(
                width
            )}}, "price": 60, "quantity": {{Number(quantity)}} }
            """;

    private static string R(string length, string width, int quantity, string id = "A") =>
        $$"""
            { "id": "{{id}}", "material": "m", "length": {{Text(length)}}, "width": {{Text(
                width
            )}}, "quantity": {{quantity}}, "grain": "any" }
            """;

    private static string Text(string length) => length.StartsWith('"') ? length : $"\"{length}\"";

    private static string Number(int? number) => number is { } there ? there.ToString(CultureInfo.InvariantCulture) : "null";
}
