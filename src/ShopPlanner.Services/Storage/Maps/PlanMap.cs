using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PlanMap : IEntityTypeConfiguration<StoredPlan>
{
    public void Configure(EntityTypeBuilder<StoredPlan> builder)
    {
        builder.ToTable("Plans");
        builder.Property(plan => plan.Id).ValueGeneratedNever();
        builder.HasIndex(plan => plan.Number).IsUnique();
        builder.Property(plan => plan.Version).IsConcurrencyToken();
    }
}
