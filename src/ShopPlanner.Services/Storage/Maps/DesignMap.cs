using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class DesignMap : IEntityTypeConfiguration<StoredDesign>
{
    public void Configure(EntityTypeBuilder<StoredDesign> builder)
    {
        builder.ToTable("OwnDesigns");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
    }
}
