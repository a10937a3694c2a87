using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class TurnMap : IEntityTypeConfiguration<StoredTurn>
{
    public void Configure(EntityTypeBuilder<StoredTurn> builder)
    {
        builder.ToTable("Turns");
        builder.HasKey(turn => new { turn.Sender, turn.Subject });
    }
}
