using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class MaterialMap : IEntityTypeConfiguration<StoredMaterial>
{
    public void Configure(EntityTypeBuilder<StoredMaterial> builder)
    {
        builder.ToTable("Materials");
        builder.HasIndex(material => material.NameKey).IsUnique();
        builder.Property(material => material.Version).IsConcurrencyToken();
    }
}
