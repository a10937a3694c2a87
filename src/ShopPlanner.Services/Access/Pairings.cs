using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Access;

/// <summary>The codes that pair a browser each. They live in memory: a restart ends them.</summary>
internal sealed class Pairings(TimeProvider clock)
{
    private const int MostWrong = 5,
        MostOpen = 10;

    private static readonly TimeSpan Life = TimeSpan.FromMinutes(5);

    private readonly Lock gate = new();
    private readonly List<PairingOffer> open = [];
    private int wrong;

    /// <summary>Opens a code.</summary>
    public PairingOffer Offer(AccessRole role, string name)
    {
        lock (gate)
        {
            Sweep();
            if (open.Count == MostOpen)
                open.RemoveAt(0);
            var offer = new PairingOffer(Secrets.Code(), role, name, (clock.GetUtcNow() + Life).UtcDateTime);
            open.Add(offer);
            return offer;
        }
    }

    /// <summary>Takes the offer of a code, which ends with it; null where there is none. Five wrong codes end all.</summary>
    public PairingOffer? Take(string code)
    {
        var plain = Secrets.Plain(code);
        lock (gate)
        {
            Sweep();
            var offer = open.Find(one => Secrets.AreSame(Secrets.Plain(one.Code), plain));
            if (offer is not null)
                open.Remove(offer);
            else if (++wrong >= MostWrong)
                open.Clear();
            if (open.Count == 0)
                wrong = 0;
            return offer;
        }
    }

    private void Sweep()
    {
        var now = clock.GetUtcNow().UtcDateTime;
        open.RemoveAll(one => one.EndsUtc <= now);
    }
}
