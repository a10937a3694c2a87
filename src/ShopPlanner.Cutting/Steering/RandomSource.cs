namespace ShopPlanner.Cutting.Steering;

/// <summary>
/// Random numbers that are the same on every machine and runtime for a seed: splitmix64 (Steele, Lea, Flood 2014, "Fast
/// splittable pseudorandom number generators").
/// </summary>
internal sealed class RandomSource(long seed)
{
    private ulong state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL + 0x1234567UL);

    public ulong Next()
    {
        var z = state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }

    /// <summary>From 0 to below <paramref name="limit"/>.</summary>
    public int Below(int limit) => (int)((Next() >> 32) * (ulong)limit >> 32);

    /// <summary>From 0 to below 1.</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    public bool Happens(double probability) => Unit() < probability;
}
