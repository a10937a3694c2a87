using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class ComparisonMap : IEntityTypeConfiguration<StoredComparison>
{
    public void Configure(EntityTypeBuilder<StoredComparison> builder)
    {
        builder.ToTable("PlanComparisons");
        builder.HasKey(comparison => comparison.PlanId);
        builder.Property(comparison => comparison.PlanId).ValueGeneratedNever();
        builder
            .HasOne<StoredPlan>()
            .WithOne()
            .HasForeignKey<StoredComparison>(comparison => comparison.PlanId)
            .OnDelete(DeleteBehavior.Cascade);
    }
}
