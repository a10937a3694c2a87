using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PromiseMap : IEntityTypeConfiguration<StoredPromise>
{
    public void Configure(EntityTypeBuilder<StoredPromise> builder)
    {
        builder.ToTable("Promises");
        builder.Property(promise => promise.Id).ValueGeneratedNever();
        builder.HasOne<StoredPiece>().WithMany().HasForeignKey(promise => promise.PieceId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<StoredPlan>().WithMany().HasForeignKey(promise => promise.PlanId).OnDelete(DeleteBehavior.Restrict);

        // One active promise per piece, held by the database whatever the program does.
        builder.HasIndex(promise => promise.PieceId).IsUnique().HasFilter("\"Active\" = 1");
        builder.HasIndex(promise => promise.PlanId);
    }
}
