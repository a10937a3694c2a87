using Microsoft.Data.Sqlite;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Backups;

/// <summary>A backup that is none any longer.</summary>
internal static class SpoiledFile
{
    /// <summary>Spoils a backup in one of several ways.</summary>
    public static async Task MakeAsync(string copy, string kind)
    {
        switch (kind)
        {
            case "empty":
                await File.WriteAllTextAsync(copy, "", TestShop.Cancel);
                break;
            case "half":
                var bytes = await File.ReadAllBytesAsync(copy, TestShop.Cancel);
                await File.WriteAllBytesAsync(copy, bytes[..(bytes.Length / 2)], TestShop.Cancel);
                break;
            case "flipped":
                StrangeFileTests.Flip(copy, 2 * 4096, 30_000);
                break;
            case "text":
                await File.WriteAllTextAsync(copy, "Dear diary", TestShop.Cancel);
                break;
            case "missing":
                File.Delete(copy);
                break;
            default:
                await using (var connection = new SqliteConnection($"Data Source={copy};Pooling=False"))
                {
                    await connection.OpenAsync(TestShop.Cancel);
                    SqliteFacts.Ask(
                        connection,
                        "INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_Later', '30.0.0'); "
                            + "UPDATE Facts SET Value = '9.9.9' WHERE Name = 'written by'"
                    );
                }

                break;
        }
    }
}
