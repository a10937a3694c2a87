using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class ProjectMap : IEntityTypeConfiguration<StoredProject>
{
    public void Configure(EntityTypeBuilder<StoredProject> builder)
    {
        builder.ToTable("Projects");
        builder.Property(project => project.Id).ValueGeneratedNever();
        builder.HasIndex(project => project.Code).IsUnique();
        builder.HasIndex(project => project.Number).IsUnique();
        builder.Property(project => project.Version).IsConcurrencyToken();
        builder.HasQueryFilter(project => project.DeletedUtc == null);
    }
}
