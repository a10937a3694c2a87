using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class EntryMap : IEntityTypeConfiguration<StoredEntry>
{
    public void Configure(EntityTypeBuilder<StoredEntry> builder)
    {
        builder.ToTable("StockLedger");
        builder.Property(entry => entry.Id).ValueGeneratedNever();
        builder.HasOne<StoredPiece>().WithMany().HasForeignKey(entry => entry.PieceId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<StoredFinish>().WithMany().HasForeignKey(entry => entry.FinishId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(entry => entry.Number).IsUnique();
        builder.HasIndex(entry => entry.Undoes).IsUnique();
    }
}
