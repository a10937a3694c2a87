using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class WorkingMap : IEntityTypeConfiguration<StoredWorking>
{
    public void Configure(EntityTypeBuilder<StoredWorking> builder)
    {
        builder.ToTable("ProjectWorkings");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.HasOne<StoredProject>().WithMany().HasForeignKey(row => row.ProjectId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(row => new { row.ProjectId, row.KeptUtc });
    }
}
