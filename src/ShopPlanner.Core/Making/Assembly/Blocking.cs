using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>
/// Which copy is stopped by which when it moves straight in one of six directions, however far: the blocking graphs of
/// translational disassembly planning. Assembly is the reverse: what leaves without a hit goes in without one.
/// </summary>
internal sealed class Blocking
{
    private readonly Solids solids;
    private readonly byte[] masks;
    private readonly int count;

    public Blocking(Solids solids)
    {
        this.solids = solids;
        count = solids.All.Length;
        masks = new byte[count * count];
        for (var one = 0; one < count; one++)
        for (var other = one + 1; other < count; other++)
        {
            var mask = Mask(one, other);
            masks[(one * count) + other] = mask;
            masks[(other * count) + one] = Turned(mask);
        }
    }

    /// <summary>The directions in which the first is stopped by the second: a bit for each, by <see cref="Way.Index"/>.</summary>
    public int Ways(int one, int other) => masks[(one * count) + other];

    private byte Mask(int one, int other)
    {
        var (box, beside) = (solids.Box(one), solids.Box(other));
        var links = solids.Between(one, other);
        if (links.FirstOrDefault(link => link.Kind == JointKind.SlidingGroove) is { } groove)
            return Lifted(groove.From == one);
        var shared = box.Shared(beside);
        var mask = 0;
        foreach (var way in Way.All)
            if (shared is { } wood ? IsHeld(links, one, way, wood) : IsPegged(links, one, way) || IsAhead(box, beside, way))
                mask |= 1 << way.Index;
        return (byte)mask;
    }

    // A sliding door is lifted into the deep groove above and swings out to the front at its foot.
    private static byte Lifted(bool isDoor) =>
        (byte)Way.All.Where(way => way != new Way(Axis.Y, !isDoor)).Sum(way => 1 << way.Index);

    private bool IsHeld(IReadOnlyList<Link> links, int mover, Way way, Box wood)
    {
        var let = links.Where(link => link.IsLet).ToList();
        return let.Count == 0 || let.Exists(link => !Cavity.Lets(solids, link, Of(link, mover, way), wood));
    }

    private bool IsPegged(IReadOnlyList<Link> links, int mover, Way way) =>
        links.Any(link => Cavity.IsPegged(link.Kind) && !Cavity.IsAway(solids, link, Of(link, mover, way)));

    // What the mover does, seen from the part that is let in.
    private static Way Of(Link link, int mover, Way way) => link.From == mover ? way : way.Turned();

    private static bool IsAhead(Box mover, Box other, Way way) =>
        way.Behind(other) >= way.Ahead(mover) && way.Beside(mover, other);

    // Whatever stops one stops the other when that moves the other way.
    private static byte Turned(byte mask)
    {
        var turned = 0;
        foreach (var way in Way.All)
            if ((mask & (1 << way.Index)) != 0)
                turned |= 1 << way.Turned().Index;
        return (byte)turned;
    }
}
