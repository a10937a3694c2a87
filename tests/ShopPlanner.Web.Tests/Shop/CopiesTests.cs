using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;
using ShopPlanner.Web.Features.Shop;
using ShopPlanner.Web.Frame;

namespace ShopPlanner.Web.Tests.Shop;

/// <summary>Backups in Setup, and what every page says of the shop's data.</summary>
public sealed class CopiesTests : PageContext
{
    private static readonly BackupView Daily = new("/b/shop-2026-05-02T093000.000Z-daily.db", 1_250_000, Some, "daily");

    private static DateTime Some => new(2026, 5, 2, 9, 30, 0, DateTimeKind.Utc);

    private readonly FakeBackups backups = new();
    private readonly FakeHealth health = new();
    private readonly FakeLifetime lifetime = new();

    public CopiesTests()
    {
        Services.AddSingleton<IBackupService>(backups);
        Services.AddSingleton<IRestoreService>(backups);
        Services.AddSingleton<IShopHealth>(health);
        Services.AddSingleton<IHostApplicationLifetime>(lifetime);
    }

    [Fact]
    public void Backups_are_listed_and_files_that_are_none_are_named()
    {
        var page = Render<Copies>();
        Assert.Contains("1.3 MB", page.Find("tbody tr").TextContent, StringComparison.Ordinal);
        Assert.Contains("shop-x.db is empty", page.Find("li").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_restore_shows_what_it_gives_and_stops_the_program_for_it()
    {
        var page = Render<Copies>();
        await page.Find("tbody button").ClickAsync(new());
        var row = page.Find("[aria-label='Restore a backup'] tbody tr");
        Assert.Equal(["Projects", "3", "5"], row.Children.Select(cell => cell.TextContent));
        Assert.False(lifetime.IsStopped);
        await page.FindAll("button").Single(button => button.TextContent.Contains("Restore this backup")).PressAsync();
        Assert.Equal((Path.GetFileName(Daily.File), true), (backups.Asked, lifetime.IsStopped));
    }

    [Fact]
    public void What_is_wrong_with_the_data_is_on_the_page_as_long_as_it_is()
    {
        var lines = Render<HealthLines>();
        Assert.Empty(lines.FindAll("p"));
        health.Notices = [new(HealthTopic.Backups, "The last backup could not be made.", Some)];
        health.Raise();
        Assert.Contains("could not be made", lines.Find("[data-health=Backups]").TextContent, StringComparison.Ordinal);
        health.Notices = [];
        health.Raise();
        Assert.Empty(lines.FindAll("p"));
    }

    [Fact]
    public void At_the_saw_only_what_touches_the_figures_and_marks_is_told()
    {
        health.Notices =
        [
            new(HealthTopic.Damage, "The shop's database is damaged.", Some),
            new(HealthTopic.SecondFolder, "Backups do not reach the second folder.", Some),
        ];
        var lines = Render<HealthLines>(given => given.Add(one => one.OnlyGrave, true));
        Assert.Equal("Damage", Assert.Single(lines.FindAll("p")).GetAttribute("data-health"));
    }

    private sealed class FakeHealth : IShopHealth
    {
        public event Action? Changed;

        public IReadOnlyList<HealthNotice> Notices { get; set; } = [];

        public void Raise() => Changed?.Invoke();
    }

    private sealed class FakeBackups : IBackupService, IRestoreService
    {
        public string? Asked { get; private set; }

        public SecondFolderView Second => new("", false);

        public bool IsAsked => Asked is not null;

        public Task<Outcome<BackupView>> CreateAsync(CommandId command, CancellationToken cancel = default) =>
            Task.FromResult<Outcome<BackupView>>(Daily);

        public IReadOnlyList<BackupView> List() => [Daily];

        public IReadOnlyList<StrangeFile> Strange() => [new("/b/shop-x.db", "is empty")];

        public Outcome<Done> ChooseSecond(string folder) =>
            Outcome.Faulty<Done>(new Fault("second-folder", folder, "isn't there"));

        public Task<Outcome<RestorePreview>> PreviewAsync(string name, CancellationToken cancel = default) =>
            Task.FromResult<Outcome<RestorePreview>>(new RestorePreview(Daily, "0.1.0", new(3, 1, 8, 20), new(5, 2, 9, 30)));

        public Outcome<Done> Ask(string name)
        {
            Asked = name;
            return Done.Value;
        }
    }

    private sealed class FakeLifetime : IHostApplicationLifetime
    {
        public bool IsStopped { get; private set; }

        public CancellationToken ApplicationStarted => CancellationToken.None;

        public CancellationToken ApplicationStopping => CancellationToken.None;

        public CancellationToken ApplicationStopped => CancellationToken.None;

        public void StopApplication() => IsStopped = true;
    }
}
