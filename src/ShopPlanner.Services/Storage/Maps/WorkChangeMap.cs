using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class WorkChangeMap : IEntityTypeConfiguration<StoredWorkChange>
{
    public void Configure(EntityTypeBuilder<StoredWorkChange> builder)
    {
        builder.ToTable("WorkChanges");
        builder.Property(change => change.Id).ValueGeneratedNever();
        builder.HasOne<StoredProject>().WithMany().HasForeignKey(change => change.ProjectId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(change => new { change.ProjectId, change.Number }).IsUnique();
    }
}
