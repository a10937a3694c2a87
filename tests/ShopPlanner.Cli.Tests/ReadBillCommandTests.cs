using System.Text.Json;

namespace ShopPlanner.Cli.Tests;

/// <summary>The read-bill command of the built program.</summary>
public sealed class ReadBillCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task A_bill_becomes_a_list_of_parts()
    {
        var bill = scratch.Write("bill.txt", "4 posts, 1-3/4 by 1-3/4 by 30 in., S-4-S\n2 rails, 3/4 by 4 by 22-1/2 in.\n");
        var run = await ShopPlannerProgram.RunAsync("read-bill", bill, "-o", scratch["parts.json"]);
        Assert.Equal(new Run(0, "", ""), run);
        var parts = Parts(await File.ReadAllTextAsync(scratch["parts.json"], TestContext.Current.CancellationToken));
        Assert.Equal(["posts", "rails"], parts.Select(part => part.GetProperty("name").GetString()));
    }

    [Fact]
    public async Task What_is_not_certain_is_listed_beside_the_parts()
    {
        var run = await ShopPlannerProgram.RunWithInputAsync(
            "4 posts, 2 by 2 by 30 in.\nrails, 3/4 by 4 by 22 in.\n",
            "read-bill",
            "-"
        );
        Assert.Equal((0, "line 2: rails: No count is written.\n"), (run.Exit, run.Error));
        Assert.Equal(2, Parts(run.Output).Count);
    }

    [Theory]
    [InlineData("", "the document is empty")]
    [InlineData("Roses are red.", "has no part that can be read")]
    public async Task Where_nothing_is_a_part_nothing_is_written(string text, string says)
    {
        var run = await ShopPlannerProgram.RunAsync("read-bill", scratch.Write("bill.txt", text), "-o", scratch["parts.json"]);
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.Equal(["bill.txt"], scratch.Files);
    }

    private static List<JsonElement> Parts(string json) =>
        [.. JsonDocument.Parse(json).RootElement.GetProperty("parts").EnumerateArray()];
}
