using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage;

/// <summary>The shop's database. One context lives for one operation.</summary>
internal class ShopContext : DbContext
{
    public ShopContext(DbContextOptions<ShopContext> options)
        : base(options) { }

    /// <summary>For a context of another database.</summary>
    protected ShopContext(DbContextOptions options)
        : base(options) { }

    public DbSet<StoredShop> Shops => Set<StoredShop>();

    public DbSet<StoredMaterial> Materials => Set<StoredMaterial>();

    public DbSet<StoredProject> Projects => Set<StoredProject>();

    public DbSet<StoredPart> Parts => Set<StoredPart>();

    public DbSet<StoredPartStep> PartSteps => Set<StoredPartStep>();

    public DbSet<StoredWorking> Workings => Set<StoredWorking>();

    public DbSet<StoredDesign> Designs => Set<StoredDesign>();

    public DbSet<StoredIdea> Ideas => Set<StoredIdea>();

    public DbSet<StoredIdeaStep> IdeaSteps => Set<StoredIdeaStep>();

    public DbSet<StoredWork> Works => Set<StoredWork>();

    public DbSet<StoredWorkChange> WorkChanges => Set<StoredWorkChange>();

    public DbSet<StoredWeekends> Weekends => Set<StoredWeekends>();

    public DbSet<StoredStore> Stores => Set<StoredStore>();

    public DbSet<StoredPrice> Prices => Set<StoredPrice>();

    public DbSet<StoredPiece> Pieces => Set<StoredPiece>();

    public DbSet<StoredEntry> Entries => Set<StoredEntry>();

    public DbSet<StoredPromise> Promises => Set<StoredPromise>();

    public DbSet<StoredPurchase> Purchases => Set<StoredPurchase>();

    public DbSet<StoredSupply> Supplies => Set<StoredSupply>();

    public DbSet<StoredPlan> Plans => Set<StoredPlan>();

    public DbSet<StoredComparison> Comparisons => Set<StoredComparison>();

    public DbSet<StoredPlanProject> PlanProjects => Set<StoredPlanProject>();

    public DbSet<StoredPlanPart> PlanParts => Set<StoredPlanPart>();

    public DbSet<StoredJob> Jobs => Set<StoredJob>();

    public DbSet<StoredCut> Cuts => Set<StoredCut>();

    public DbSet<StoredFinish> Finishes => Set<StoredFinish>();

    public DbSet<StoredLeftOut> LeftOut => Set<StoredLeftOut>();

    public DbSet<StoredWrongCut> WrongCuts => Set<StoredWrongCut>();

    public DbSet<StoredWrongPiece> WrongPieces => Set<StoredWrongPiece>();

    public DbSet<StoredCommand> Commands => Set<StoredCommand>();

    public DbSet<StoredTurn> Turns => Set<StoredTurn>();

    public DbSet<StoredCounter> Counters => Set<StoredCounter>();

    public DbSet<StoredFact> Facts => Set<StoredFact>();

    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        PrepareRows();
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        PrepareRows();
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder) =>
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(ShopContext).Assembly);

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<Length>().HaveConversion<LengthConverter>();
        configurationBuilder.Properties<Money>().HaveConversion<MoneyConverter>();
        configurationBuilder.Properties<DateTime>().HaveConversion<UtcConverter>();
    }

    private void PrepareRows()
    {
        foreach (var entry in ChangeTracker.Entries())
        {
            if (entry is { Entity: StoredEntry, State: EntityState.Modified or EntityState.Deleted })
                throw new InvalidOperationException(
                    "a line of the stock ledger is never changed or removed: add one that takes it back"
                );
            if (entry is { Entity: IVersioned row })
                CountVersion(entry, row);
        }
    }

    // A part that only moved keeps its version: the others' texts are not touched by a row put between them. So does an idea
    // whose parts were made: what is set for it stays.
    private static void CountVersion(EntityEntry entry, IVersioned row)
    {
        if (entry.State == EntityState.Added && row.Version == 0)
            row.Version = 1;
        if (entry.State != EntityState.Modified)
            return;
        var changed = entry.Properties.Where(p => p.IsModified).Select(p => p.Metadata.Name);
        if (
            changed.Any(name =>
                name is not (nameof(StoredPart.Position) or nameof(StoredIdea.Made) or nameof(IVersioned.Version))
            )
        )
            row.Version++;
    }
}
