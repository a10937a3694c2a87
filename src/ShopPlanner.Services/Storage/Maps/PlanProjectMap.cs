using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PlanProjectMap : IEntityTypeConfiguration<StoredPlanProject>
{
    public void Configure(EntityTypeBuilder<StoredPlanProject> builder)
    {
        builder.ToTable("PlanProjects");
        builder.HasKey(own => new { own.PlanId, own.ProjectId });
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(own => own.PlanId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<StoredProject>().WithMany().HasForeignKey(own => own.ProjectId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(own => own.ProjectId);
    }
}
