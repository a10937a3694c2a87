using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage.Maps;

internal sealed class FactMap : IEntityTypeConfiguration<StoredFact>
{
    public void Configure(EntityTypeBuilder<StoredFact> builder)
    {
        builder.ToTable("Facts");
        builder.HasKey(fact => fact.Name);
    }
}
