using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class SupplyMap : IEntityTypeConfiguration<StoredSupply>
{
    public void Configure(EntityTypeBuilder<StoredSupply> builder)
    {
        builder.ToTable("ProjectSupplies");
        builder.HasKey(supply => new { supply.ProjectId, supply.Key });
        builder.HasOne<StoredProject>().WithMany().HasForeignKey(supply => supply.ProjectId).OnDelete(DeleteBehavior.Restrict);
    }
}
