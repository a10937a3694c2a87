using System.Globalization;
using CsCheck;
using Microsoft.Data.Sqlite;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Buying;

/// <summary>Whatever is bought, returned, planned, cut, cut wrong, undone, reopened, canceled and restored, in any order: the
/// ledger and the money agree.</summary>
public sealed class HistoryTests
{
    private const int Histories = 2_000,
        LongestHistory = 12,
        Shops = 2;

    // Each line counts what must not be; said with its name where it is there.
    private const string Wrong = """
        SELECT group_concat(What, ', ') FROM (
          SELECT 'a piece is there twice, or less than not at all' What FROM (
            SELECT 1 FROM StockLedger GROUP BY PieceId HAVING SUM(Count) NOT IN (0, 1) LIMIT 1)
          UNION ALL SELECT 'a piece is promised twice' FROM (
            SELECT 1 FROM Promises WHERE Active = 1 GROUP BY PieceId HAVING COUNT(*) > 1 LIMIT 1)
          UNION ALL SELECT 'a plan that is over holds a promise' FROM (
            SELECT 1 FROM Promises p JOIN Plans l ON l.Id = p.PlanId WHERE p.Active = 1 AND l.State NOT IN (0, 1) LIMIT 1)
          UNION ALL SELECT 'one piece of a line is bought twice' FROM (
            SELECT 1 FROM Purchases WHERE Standing = 1 GROUP BY PlanId, Stock, Place HAVING COUNT(*) > 1 LIMIT 1)
          UNION ALL SELECT 'money and ledger differ' FROM (
            SELECT 1 FROM Purchases p WHERE p.Standing <> (
              EXISTS (SELECT 1 FROM StockLedger e WHERE e.PieceId = p.PieceId AND e.Kind = 0
                AND NOT EXISTS (SELECT 1 FROM StockLedger u WHERE u.Undoes = e.Id))
              AND NOT EXISTS (SELECT 1 FROM StockLedger e WHERE e.PieceId = p.PieceId AND e.Kind = 7
                AND NOT EXISTS (SELECT 1 FROM StockLedger u WHERE u.Undoes = e.Id))) LIMIT 1)
          UNION ALL SELECT 'a board was bought without money' FROM (
            SELECT 1 FROM StockLedger e WHERE e.Kind = 0 AND NOT EXISTS (
              SELECT 1 FROM Purchases p WHERE p.PieceId = e.PieceId) LIMIT 1)
          UNION ALL SELECT 'a piece is cut twice' FROM (
            SELECT 1 FROM StockLedger e JOIN Finishes f ON f.Id = e.FinishId AND f.Standing = 1
            WHERE e.Kind = 4 GROUP BY e.PieceId HAVING COUNT(*) > 1 LIMIT 1)
          UNION ALL SELECT 'a finished board was cut from nothing, or from two' FROM (
            SELECT 1 FROM Finishes f WHERE f.Standing = 1 AND (
              SELECT COUNT(*) FROM StockLedger e WHERE e.FinishId = f.Id AND e.Kind = 4) <> 1 LIMIT 1)
          UNION ALL SELECT 'what is promised was cut or is gone' FROM (
            SELECT 1 FROM Promises p WHERE p.Active = 1
              AND EXISTS (SELECT 1 FROM Purchases b WHERE b.PieceId = p.PieceId AND b.Standing = 0) LIMIT 1)
        )
        """;

    // Two shops beside each other, each with its half.
    [Fact]
    public Task Nothing_is_bought_promised_or_cut_twice_and_the_money_is_the_sum_of_what_was_bought() =>
        Task.WhenAll(Enumerable.Range(0, Shops).Select(_ => Task.Run(() => LiveAsync(Histories / Shops), TestShop.Cancel)));

    private static async Task LiveAsync(int histories)
    {
        TestShop.NeedsFile();
        var folder = Directory.CreateDirectory(Path.Combine(Memory(), $"shop-planner-histories-{Guid.NewGuid():N}"));
        await using (var given = await BuyingShop.OpenAsync(folder: folder.FullName))
        using (var file = Open(folder.FullName))
        using (var kept = new SqliteConnection("Data Source=:memory:"))
        {
            kept.Open();
            file.BackupDatabase(kept);
            var step = Gen.Select(Gen.Int[0, Steps.Kinds - 1], Gen.Int[0, 10_000]);
            await step.Array[1, LongestHistory]
                .SampleAsync(
                    async steps =>
                    {
                        kept.BackupDatabase(file);
                        await LiveAsync(given, file, steps);
                    },
                    iter: histories,
                    threads: 1
                );
        }

        folder.Delete(recursive: true);
    }

    private static async Task LiveAsync(BuyingShop given, SqliteConnection file, (int Kind, int Pick)[] steps)
    {
        var life = new Steps(given);
        foreach (var (kind, pick) in steps)
        {
            await life.TakeAsync(kind, pick);
            Assert.Equal("", SqliteFacts.Ask(file, Wrong));
        }

        foreach (var plan in await given.Shop.Plans.ListAsync(cancel: TestShop.Cancel))
            await CheckAsync(given, file, plan.Id);
    }

    // What the list says is what the purchases say, and what is left to buy is just what is missing.
    private static async Task CheckAsync(BuyingShop given, SqliteConnection file, Guid plan)
    {
        var list = await given.ListAsync(plan);
        Assert.Equal(Sum(file, plan), list.Totals.Spent.Count);
        foreach (var line in list.Lines.Where(line => line.Left > 0))
        {
            var taken = line.Bought.Select(one => one.Place).ToHashSet();
            var free = Enumerable.Range(1, taken.Count + line.Left).Where(place => !taken.Contains(place)).Take(line.Left);
            var after = BuyingShop.Sure(
                await given.Buying.BuyAsync(
                    plan,
                    new PiecesBought(line.Stock, [.. free], "5"),
                    Some.Device,
                    CommandId.New(),
                    TestShop.Cancel
                )
            );
            Assert.Equal(0, after.Lines.Single(one => one.Stock == line.Stock).Left);
            Assert.Equal(list.Totals.Spent + (Core.Measures.Money.From(5) * line.Left), after.Totals.Spent);
        }

        Assert.Equal("", SqliteFacts.Ask(file, Wrong));
    }

    private static long Sum(SqliteConnection file, Guid plan)
    {
        var of = plan.ToString().ToUpperInvariant();
        var sum = $"SELECT COALESCE(SUM(Price), 0) FROM Purchases WHERE Standing = 1 AND PlanId = '{of}'";
        return long.Parse(SqliteFacts.Ask(file, sum), CultureInfo.InvariantCulture);
    }

    private static SqliteConnection Open(string folder)
    {
        var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "shop.db")};Pooling=False");
        connection.Open();
        return connection;
    }

    // Memory where the system lends it as a folder: nothing here is about the disk.
    private static string Memory() => Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath();
}
