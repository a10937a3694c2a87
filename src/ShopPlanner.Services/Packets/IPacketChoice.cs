using System.Collections.Immutable;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Services.Packets;

/// <summary>Remembers for the shop which sections its packets have.</summary>
public interface IPacketChoice
{
    /// <summary>The sections chosen; null where nobody chose.</summary>
    Task<ImmutableArray<PacketSection>?> GetAsync(CancellationToken cancel = default);

    /// <summary>Remembers a choice; null goes back to the usual sections, which depend on the packet.</summary>
    Task SaveAsync(ImmutableArray<PacketSection>? sections, CancellationToken cancel = default);
}
