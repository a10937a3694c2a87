using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Storage;

public sealed class HardTimesTests
{
    // max_page_count stands in for a full disk: SQLite answers the same way.
    [Fact]
    public async Task A_full_disk_is_told_nothing_is_half_saved_and_reading_goes_on()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        var rows = shop.CountRows();
        var outcome = await shop.Work.WriteAsync<Done>(
            async db =>
            {
                await db.Database.ExecuteSqlRawAsync("PRAGMA max_page_count = 1", TestShop.Cancel);
                for (var i = 0; i < 2_000; i++)
                    db.Parts.Add(
                        new()
                        {
                            Id = Guid.CreateVersion7(),
                            ProjectId = project.Id,
                            Note = new string('x', 1_000),
                        }
                    );
                await db.SaveChangesAsync(TestShop.Cancel);
                return Done.Value;
            },
            TestShop.Cancel
        );
        Assert.Equal((OutcomeKind.Faulty, "storage"), (outcome.Kind, outcome.Faults.Single().Field));
        Assert.Contains("full", outcome.Faults.Single().Message);
        Assert.Equal(rows, shop.CountRows());
        Assert.NotNull(await shop.Projects.GetAsync(project.Id, TestShop.Cancel));
    }
}
