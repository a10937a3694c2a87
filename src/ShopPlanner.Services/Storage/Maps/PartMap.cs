using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class PartMap : IEntityTypeConfiguration<StoredPart>
{
    public void Configure(EntityTypeBuilder<StoredPart> builder)
    {
        builder.ToTable("Parts");
        builder.Property(part => part.Id).ValueGeneratedNever();
        builder.HasOne<StoredProject>().WithMany().HasForeignKey(part => part.ProjectId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(part => new { part.ProjectId, part.Position });
        builder.Property(part => part.Version).IsConcurrencyToken();
    }
}
