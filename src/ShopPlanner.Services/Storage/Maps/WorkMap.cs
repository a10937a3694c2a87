using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class WorkMap : IEntityTypeConfiguration<StoredWork>
{
    public void Configure(EntityTypeBuilder<StoredWork> builder)
    {
        builder.ToTable("ProjectWork");
        builder.HasKey(row => row.ProjectId);
        builder.Property(row => row.ProjectId).ValueGeneratedNever();
        builder.HasOne<StoredProject>().WithMany().HasForeignKey(row => row.ProjectId).OnDelete(DeleteBehavior.Restrict);
        builder.Property(row => row.Version).IsConcurrencyToken();
    }
}
