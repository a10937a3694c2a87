using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class LeftOutMap : IEntityTypeConfiguration<StoredLeftOut>
{
    public void Configure(EntityTypeBuilder<StoredLeftOut> builder)
    {
        builder.ToTable("LeftOut");
        builder.HasKey(left => new { left.FinishId, left.RowId });
        builder.HasOne<StoredFinish>().WithMany().HasForeignKey(left => left.FinishId).OnDelete(DeleteBehavior.Cascade);
        builder.HasIndex(left => left.PlanId);
    }
}
