using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class WrongPieceMap : IEntityTypeConfiguration<StoredWrongPiece>
{
    public void Configure(EntityTypeBuilder<StoredWrongPiece> builder)
    {
        builder.ToTable("WrongPieces");
        builder.HasKey(piece => new { piece.WrongCutId, piece.Piece });
        builder.HasOne<StoredWrongCut>().WithMany().HasForeignKey(piece => piece.WrongCutId).OnDelete(DeleteBehavior.Cascade);
        builder.HasOne<StoredPiece>().WithMany().HasForeignKey(piece => piece.LeftPieceId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(piece => piece.RowId);
    }
}
