using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PlanPartMap : IEntityTypeConfiguration<StoredPlanPart>
{
    public void Configure(EntityTypeBuilder<StoredPlanPart> builder)
    {
        builder.ToTable("PlanParts");
        builder.HasKey(part => new { part.PlanId, part.RowId });
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(part => part.PlanId).OnDelete(DeleteBehavior.Cascade);
    }
}
