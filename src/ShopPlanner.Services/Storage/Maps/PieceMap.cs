using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PieceMap : IEntityTypeConfiguration<StoredPiece>
{
    public void Configure(EntityTypeBuilder<StoredPiece> builder)
    {
        builder.ToTable("Pieces");
        builder.Property(piece => piece.Id).ValueGeneratedNever();
        builder.HasOne<StoredMaterial>().WithMany().HasForeignKey(piece => piece.MaterialId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(piece => piece.Tag).IsUnique();
        builder.Property(piece => piece.Version).IsConcurrencyToken();
    }
}
