using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class CounterMap : IEntityTypeConfiguration<StoredCounter>
{
    public void Configure(EntityTypeBuilder<StoredCounter> builder)
    {
        builder.ToTable("Counters");
        builder.HasKey(counter => counter.Name);
    }
}
