using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class WrongCutMap : IEntityTypeConfiguration<StoredWrongCut>
{
    public void Configure(EntityTypeBuilder<StoredWrongCut> builder)
    {
        builder.ToTable("WrongCuts");
        builder.Property(wrong => wrong.Id).ValueGeneratedNever();
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(wrong => wrong.PlanId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(wrong => wrong.RestPlanId).OnDelete(DeleteBehavior.Restrict);
    }
}
