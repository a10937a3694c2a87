using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace ShopPlanner.Services.Storage.Postgres;

/// <summary>The shop's database where a PostgreSQL server keeps it: the same rows, with a schema of its own.</summary>
internal sealed class PostgresShopContext(DbContextOptions<PostgresShopContext> options) : ShopContext(options)
{
    // Order and equality by the texts' bytes, as in a file: the server's own language would sort otherwise.
    private const string Bytewise = "C";

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        base.OnModelCreating(modelBuilder);
        // The filters compare with 1, which is how a file keeps a yes.
        foreach (var index in modelBuilder.Model.GetEntityTypes().SelectMany(type => type.GetIndexes()))
            if (index.GetFilter() is { } filter)
                index.SetFilter(filter.Replace(" = 1", "", StringComparison.Ordinal));
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);
        configurationBuilder.Properties<DateTime>().HaveConversion<TicksConverter>();
        configurationBuilder.Properties<string>().UseCollation(Bytewise);
    }
}

/// <summary>Times as counts of 100 ns: the server's own type would round them, and a shop that moves must stay the
/// same.</summary>
internal sealed class TicksConverter()
    : ValueConverter<DateTime, long>(time => time.Ticks, ticks => new DateTime(ticks, DateTimeKind.Utc));
