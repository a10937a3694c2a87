using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Packets;

/// <summary>Keeps the choice as a fact: the keys of the sections, so that a section that is new, or gone, harms nobody.</summary>
internal sealed class PacketChoice(ShopWork work) : IPacketChoice
{
    private const string Fact = "packet sections";

    public Task<ImmutableArray<PacketSection>?> GetAsync(CancellationToken cancel = default) =>
        work.ReadAsync(db => ReadAsync(db, cancel), cancel);

    public Task<Outcome<Done>> SetAsync(PacketSection section, bool isIn, int projects, CancellationToken cancel = default) =>
        work.WriteAsync(
            async db =>
            {
                var chosen = await ReadAsync(db, cancel) ?? PacketSections.Usual(projects);
                var others = chosen.Remove(section);
                return await SaveAsync(db, isIn ? others.Add(section) : others, cancel);
            },
            cancel
        );

    public Task<Outcome<Done>> ForgetAsync(CancellationToken cancel = default) =>
        work.WriteAsync(db => SaveAsync(db, [], cancel), cancel);

    /// <summary>The sections chosen; null where nobody chose.</summary>
    internal static async Task<ImmutableArray<PacketSection>?> ReadAsync(ShopContext db, CancellationToken cancel)
    {
        var fact = await db.Facts.AsNoTracking().SingleOrDefaultAsync(one => one.Name == Fact, cancel);
        var known = PacketSections.All.Select(one => one.Key).ToHashSet(StringComparer.Ordinal);
        var keys = fact?.Value.Split(',').Where(known.Contains) ?? [];
        return PacketSections.Read(string.Join(',', keys), out _);
    }

    private static async Task<Outcome<Done>> SaveAsync(
        ShopContext db,
        ImmutableArray<PacketSection> sections,
        CancellationToken cancel
    )
    {
        var fact = await db.Facts.SingleOrDefaultAsync(one => one.Name == Fact, cancel);
        var keys = PacketSections.Write(sections);
        if (fact is null)
            db.Facts.Add(new StoredFact { Name = Fact, Value = keys });
        else
            fact.Value = keys;
        await db.SaveChangesAsync(cancel);
        return Done.Value;
    }
}
