using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class FinishMap : IEntityTypeConfiguration<StoredFinish>
{
    public void Configure(EntityTypeBuilder<StoredFinish> builder)
    {
        builder.ToTable("Finishes");
        builder.Property(finish => finish.Id).ValueGeneratedNever();
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(finish => finish.PlanId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<StoredWrongCut>().WithMany().HasForeignKey(one => one.WrongCutId).OnDelete(DeleteBehavior.Restrict);
        builder
            .HasIndex(finish => new
            {
                finish.PlanId,
                finish.Layout,
                finish.Copy,
            })
            .IsUnique()
            .HasFilter("\"Standing\" = 1");
    }
}
