using System.Collections.Immutable;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Packets;

/// <summary>Remembers for the shop which sections its packets have.</summary>
public interface IPacketChoice
{
    /// <summary>The sections chosen; null where nobody chose.</summary>
    Task<ImmutableArray<PacketSection>?> GetAsync(CancellationToken cancel = default);

    /// <summary>Takes a section in or out, whatever else was chosen meanwhile. Nobody chose yet: from the usual sections of a packet.
    /// No section at all is no choice: the packet would be its title alone.</summary>
    /// <param name="section">The section.</param>
    /// <param name="isIn">Whether packets have it.</param>
    /// <param name="projects">How many pieces of furniture the packet is for that is looked at.</param>
    /// <param name="cancel">Stops it before it is stored.</param>
    Task<Outcome<Done>> SetAsync(PacketSection section, bool isIn, int projects, CancellationToken cancel = default);

    /// <summary>Goes back to the usual sections, which depend on the packet.</summary>
    Task<Outcome<Done>> ForgetAsync(CancellationToken cancel = default);
}
