using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PriceMap : IEntityTypeConfiguration<StoredPrice>
{
    public void Configure(EntityTypeBuilder<StoredPrice> builder)
    {
        builder.ToTable("Prices");
        builder.Property(price => price.Id).ValueGeneratedNever();
        builder.HasOne<StoredStore>().WithMany().HasForeignKey(price => price.StoreId).OnDelete(DeleteBehavior.Cascade);
        builder.HasOne<StoredMaterial>().WithMany().HasForeignKey(price => price.MaterialId).OnDelete(DeleteBehavior.Restrict);
        builder
            .HasIndex(price => new
            {
                price.StoreId,
                price.MaterialId,
                price.Length,
                price.Width,
            })
            .IsUnique();
        builder.Property(price => price.Version).IsConcurrencyToken();
    }
}
