using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class StoreMap : IEntityTypeConfiguration<StoredStore>
{
    public void Configure(EntityTypeBuilder<StoredStore> builder)
    {
        builder.ToTable("Stores");
        builder.Property(store => store.Id).ValueGeneratedNever();
        builder.HasIndex(store => store.NameKey).IsUnique();
        builder.Property(store => store.Version).IsConcurrencyToken();
    }
}
