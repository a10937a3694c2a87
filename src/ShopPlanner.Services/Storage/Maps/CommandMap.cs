using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class CommandMap : IEntityTypeConfiguration<StoredCommand>
{
    public void Configure(EntityTypeBuilder<StoredCommand> builder)
    {
        builder.ToTable("Commands");
        builder.Property(command => command.Id).ValueGeneratedNever();
    }
}
