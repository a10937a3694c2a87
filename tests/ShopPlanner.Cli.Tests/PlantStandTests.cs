using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cli.Tests;

/// <summary>
/// A real stock bill, from bill to verified plan: the mission plant stand of H. H. Windsor, Mission Furniture: How to Make It,
/// Part 1 (Popular Mechanics Company, Chicago 1909), p. 109, in the public domain. The sizes and counts are the book's; the
/// stock is ours: boards of two lengths and a small sheet for the top, each priced at its length in feet.
/// </summary>
public sealed class PlantStandTests : IDisposable
{
    private const string Bill = """
        { "format": "shop-planner/cut-request", "version": 1, "unit": "in",
          "saw": { "kerf": "1/8", "boardEndTrim": "1/2", "sheetEdgeTrim": "1/4" },
          "keep": { "boardLength": 10, "sheetLength": 12, "sheetWidth": 6 },
          "materials": [
            { "id": "oak-1x8", "form": "board", "thickness": "3/4", "width": "7 1/4" },
            { "id": "oak-post", "form": "board", "thickness": "1 1/4", "width": "1 1/4" },
            { "id": "oak-slat", "form": "board", "thickness": "1/4", "width": 2 },
            { "id": "oak-panel", "form": "sheet", "thickness": "3/4" } ],
          "stock": [
            { "id": "1x8-6ft", "material": "oak-1x8", "length": "6 ft", "price": 6 },
            { "id": "1x8-8ft", "material": "oak-1x8", "length": "8 ft", "price": 8 },
            { "id": "post-6ft", "material": "oak-post", "length": "6 ft", "price": 6 },
            { "id": "post-8ft", "material": "oak-post", "length": "8 ft", "price": 8 },
            { "id": "slat-6ft", "material": "oak-slat", "length": "6 ft", "price": 6 },
            { "id": "slat-8ft", "material": "oak-slat", "length": "8 ft", "price": 8 },
            { "id": "panel-4ft", "material": "oak-panel", "length": "4 ft", "width": "2 ft", "price": 4 } ],
          "parts": [
            { "id": "A", "name": "Top", "material": "oak-panel", "length": "15-1/2", "width": "15-1/2" },
            { "id": "B", "name": "Post", "material": "oak-post", "length": 20, "quantity": 4 },
            { "id": "C", "name": "Wide rail", "material": "oak-1x8", "length": 11, "width": 3, "quantity": 4 },
            { "id": "D", "name": "Narrow rail", "material": "oak-1x8", "length": 11, "width": 2, "quantity": 2 },
            { "id": "E", "name": "Shelf", "material": "oak-1x8", "length": 10, "width": 6 },
            { "id": "F", "name": "Slat", "material": "oak-slat", "length": "12-1/4", "quantity": 4 },
            { "id": "G", "name": "Long slat", "material": "oak-slat", "length": "12-3/4", "quantity": 2 } ],
          "limits": { "seconds": 10 } }
        """;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    // By hand: the posts take 4 × 20 in. and the slats 74 1/2 in., each more than 6 ft and, with cuts and trim, less than 8 ft,
    // so a board of 8 ft each; the rest of the solid oak fits one board of 6 ft, and the top one panel: 8 + 8 + 6 + 4.
    [Fact]
    public async Task The_bill_is_bought_for_the_least_and_can_be_cut()
    {
        var plan = await Cut();
        Assert.Equal((PlanStatus.Proven, Money.From(26)), (plan.Status, plan.Cost));
        Assert.Equal(["1x8-6ft", "panel-4ft", "post-8ft", "slat-8ft"], plan.Buy.Select(purchase => purchase.Stock).Order());
        Assert.Empty(PlanVerifier.Check(CutRequestJson.Read(Encoding.UTF8.GetBytes(Bill)).Request!, plan));
    }

    [Fact]
    public async Task A_checker_that_shares_no_code_agrees()
    {
        var checker = ShopPlannerProgram.FindAbove(Path.Combine("shared", "tools", "verify_plan.py"));
        Assert.SkipWhen(checker is null, "needs shared/tools/verify_plan.py in a folder beside the repository");
        Assert.SkipUnless(await HasPython(), "needs python3 on the path");
        await Cut();
        var check = await ShopPlannerProgram.StartAsync("python3", "", checker, scratch["r.json"], scratch["p.json"]);
        Assert.Equal((0, ""), (check.Exit, check.Error));
        Assert.StartsWith("cuttable: cost 26.00", check.Output, StringComparison.Ordinal);
    }

    private static async Task<bool> HasPython() =>
        OperatingSystem.IsLinux() && (await ShopPlannerProgram.StartAsync("sh", "", "-c", "command -v python3")).Exit == 0;

    private async Task<CutPlan> Cut()
    {
        var run = await ShopPlannerProgram.RunAsync("cut", scratch.Write("r.json", Bill), "-o", scratch["p.json"]);
        Assert.Equal(new Run(0, "", ""), run);
        return CutPlanJson.Read(await File.ReadAllBytesAsync(scratch["p.json"], TestContext.Current.CancellationToken)).Plan!;
    }
}
