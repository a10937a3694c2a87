using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PurchaseMap : IEntityTypeConfiguration<StoredPurchase>
{
    public void Configure(EntityTypeBuilder<StoredPurchase> builder)
    {
        builder.ToTable("Purchases");
        builder.Property(purchase => purchase.Id).ValueGeneratedNever();
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(purchase => purchase.PlanId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<StoredPiece>().WithMany().HasForeignKey(purchase => purchase.PieceId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<StoredFinish>().WithMany().HasForeignKey(purchase => purchase.FinishId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(purchase => purchase.PieceId).IsUnique();

        // Nothing is bought twice, held by the database whatever the program does.
        builder
            .HasIndex(purchase => new
            {
                purchase.PlanId,
                purchase.Stock,
                purchase.Place,
            })
            .IsUnique()
            .HasFilter("\"Standing\" = 1");
    }
}
