using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class CutMap : IEntityTypeConfiguration<StoredCut>
{
    public void Configure(EntityTypeBuilder<StoredCut> builder)
    {
        builder.ToTable("CutTicks");
        builder.HasKey(cut => new
        {
            cut.PlanId,
            cut.Layout,
            cut.Copy,
            cut.Cut,
        });
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(cut => cut.PlanId).OnDelete(DeleteBehavior.Restrict);
    }
}
