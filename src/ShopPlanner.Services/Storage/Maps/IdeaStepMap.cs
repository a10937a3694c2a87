using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class IdeaStepMap : IEntityTypeConfiguration<StoredIdeaStep>
{
    public void Configure(EntityTypeBuilder<StoredIdeaStep> builder)
    {
        builder.ToTable("IdeaSteps");
        builder.Property(step => step.Id).ValueGeneratedNever();
        builder.HasOne<StoredProject>().WithMany().HasForeignKey(step => step.ProjectId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(step => new { step.ProjectId, step.Number }).IsUnique();
    }
}
