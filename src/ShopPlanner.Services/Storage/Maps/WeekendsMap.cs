using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class WeekendsMap : IEntityTypeConfiguration<StoredWeekends>
{
    public void Configure(EntityTypeBuilder<StoredWeekends> builder)
    {
        builder.ToTable("Weekends");
        builder.HasKey(row => row.Id);
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
    }
}
