using System.IO.Compression;
using Microsoft.Data.Sqlite;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Tests.Documents;

/// <summary>A shop of an earlier program is turned over once, beside a copy; what cannot be read is kept and named.</summary>
public sealed class UpgradeTests : IDisposable
{
    private readonly string folder = TestShop.NewFolder();

    public UpgradeTests()
    {
        TestShop.NeedsFile();
        ZipFile.ExtractToDirectory(Path.Combine(AppContext.BaseDirectory, "Golden", "shop-1.zip"), folder);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("Plans", "OrderJson", "RequestJson", "PlanJson", "NamesJson")]
    [InlineData("PlanJobs", "OrderJson", "FaultsJson")]
    [InlineData("PartSteps", "Before", "After")]
    [InlineData("ProjectIdeas", "Document", "Changed", "Made")]
    [InlineData("IdeaSteps", "DocumentBefore", "ChangedBefore", "DocumentAfter", "ChangedAfter")]
    [InlineData("ProjectWorkings", "Given")]
    public async Task Every_stored_text_becomes_a_document(string table, params string[] columns)
    {
        await using (await TestShop.OpenAsync(folder: folder)) { }
        foreach (var column in columns)
        {
            Assert.NotEqual("0", Ask($"SELECT COUNT(*) FROM \"{table}\""));
            Assert.Equal("0", Ask($"SELECT COUNT(*) FROM \"{table}\" WHERE \"{column}\" NOT LIKE '%\"format\"%shop-planner/%'"));
        }
    }

    [Fact]
    public async Task A_copy_keeps_the_texts_as_they_were()
    {
        var before = Ask("SELECT OrderJson FROM Plans ORDER BY Number LIMIT 1");
        await using (await TestShop.OpenAsync(folder: folder)) { }
        var copy = Assert.Single(Directory.EnumerateFiles(Path.Combine(folder, "backups"), "*before-*"));
        Assert.Equal(before, Ask("SELECT OrderJson FROM Plans ORDER BY Number LIMIT 1", copy));
        Assert.NotEqual(before, Ask("SELECT OrderJson FROM Plans ORDER BY Number LIMIT 1"));
    }

    [Theory]
    [InlineData("RequestJson")]
    [InlineData("PlanJson")]
    [InlineData("NamesJson")]
    [InlineData("OrderJson")]
    public async Task A_damaged_text_stays_as_it_is_and_the_shop_opens(string column)
    {
        var id = Guid.Parse(Ask("SELECT Id FROM Plans ORDER BY Number LIMIT 1"));
        Ask($"UPDATE Plans SET \"{column}\" = '{{\"torn' WHERE Number = (SELECT MIN(Number) FROM Plans)");
        await using var shop = await TestShop.OpenAsync(folder: folder);
        Assert.Equal("{\"torn", Ask($"SELECT \"{column}\" FROM Plans ORDER BY Number LIMIT 1"));
        var refusal = await Assert.ThrowsAsync<StoredDocumentException>(() => shop.Plans.GetAsync(id, TestShop.Cancel));
        Assert.Contains("is damaged", refusal.Message);
        Assert.NotEmpty(await shop.Stock.ListAsync(TestShop.Cancel));
    }

    [Theory]
    [InlineData("OrderJson", """{"format":"shop-planner/plan-order","version":9}""")]
    [InlineData("RequestJson", """{"format":"shop-planner/cut-request","version":9}""")]
    [InlineData("PlanJson", """{"format":"shop-planner/cut-plan","version":9}""")]
    public async Task A_newer_document_is_kept_and_named(string column, string newer)
    {
        await using (await TestShop.OpenAsync(folder: folder)) { }
        var id = Guid.Parse(Ask("SELECT Id FROM Plans ORDER BY Number LIMIT 1"));
        Ask($"UPDATE Plans SET \"{column}\" = '{newer}' WHERE Number = (SELECT MIN(Number) FROM Plans)");
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var refusal = await Assert.ThrowsAsync<StoredDocumentException>(() => shop.Plans.GetAsync(id, TestShop.Cancel));
        Assert.Contains("9", refusal.Message);
        Assert.Equal(newer, Ask($"SELECT \"{column}\" FROM Plans ORDER BY Number LIMIT 1"));
    }

    [Fact]
    public async Task The_plan_page_may_say_that_an_older_planner_made_it()
    {
        await using var shop = await TestShop.OpenAsync(folder: folder);
        var id = (await shop.Plans.ListAsync(cancel: TestShop.Cancel))[0].Id;
        Ask($"UPDATE Plans SET PlannerVersion = '{CutPlanner.Version}'");
        Assert.False((await shop.Plans.GetAsync(id, TestShop.Cancel))!.ByOlderPlanner);
        Ask("UPDATE Plans SET PlannerVersion = '0'");
        Assert.True((await shop.Plans.GetAsync(id, TestShop.Cancel))!.ByOlderPlanner);
    }

    private string Ask(string sql, string? file = null)
    {
        using var connection = new SqliteConnection($"Data Source={file ?? Path.Combine(folder, "shop.db")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture) ?? "";
    }
}
