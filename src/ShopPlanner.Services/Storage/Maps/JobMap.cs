using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class JobMap : IEntityTypeConfiguration<StoredJob>
{
    public void Configure(EntityTypeBuilder<StoredJob> builder)
    {
        builder.ToTable("PlanJobs");
        builder.Property(job => job.Id).ValueGeneratedNever();
        builder.HasIndex(job => job.Number).IsUnique();
    }
}
