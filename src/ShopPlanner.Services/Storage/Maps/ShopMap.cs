using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class ShopMap : IEntityTypeConfiguration<StoredShop>
{
    public void Configure(EntityTypeBuilder<StoredShop> builder)
    {
        builder.ToTable("Shop");
        builder.HasKey(shop => shop.Id);
        builder.Property(shop => shop.Id).ValueGeneratedNever();
        builder.Property(shop => shop.Version).IsConcurrencyToken();
    }
}
