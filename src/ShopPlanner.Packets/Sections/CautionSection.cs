using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Safety at the saw and after; short, and always second to the makers' instructions and local rules.</summary>
internal static class CautionSection
{
    private static readonly string[] Always =
    [
        "Read your saw's manual first. Where it disagrees with this paper, follow the manual. Keep the guard, riving knife and "
            + "anti-kickback parts on. A spreader must be thinner than the kerf (US: 29 CFR 1910.213).",
        // Common practice, and what most saws' manuals ask for.
        "Support long and wide pieces before and behind the blade. A cutoff caught between blade and fence is thrown back at "
            + "you: leave it free. Never use the fence as a stop for a crosscut, and never cut freehand on a table saw.",
        "Where the guard has to come off for a groove or rabbet, use featherboards or a jig, and put it back afterward "
            + "(California Title 8 §4296).",
        "Wear eye protection, and hearing protection near saws and routers. No gloves or loose clothes near spinning tools.",
        "Collect dust at the tool and wear a respirator that fits. Oak and beech dust is known to cause cancer; birch, "
            + "mahogany, teak and walnut dust is suspected to (ACGIH, quoted by OSHA).",
        "Measure your own stock before the first cut. Boards and sheets differ from the size on the label and from each other.",
        "Check the first piece of each setting with a ruler before you cut the rest.",
        "Anchor tall pieces and pieces with drawers to the wall: a homemade piece has not been tested for tipping, as factory-"
            + "made clothing storage must be in the US (16 CFR 1261).",
        "Buy sheets marked TSCA Title VI, or your country's equivalent, for low formaldehyde (US: 40 CFR 770).",
        "Rags with drying oil can catch fire in a heap. Spread them flat outdoors to dry, or keep them under water in a closed "
            + "metal can. Follow the can's label and your fire department.",
    ];

    /// <summary>Adds the cautions.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        var cautions = SmallPieces(model).Concat(Practice(model)).Concat(Always);
        flow.Section("Before you cut", [.. cautions.Select(caution => Blocks.Item(caution, flow.ColumnWidth(2)))], 2);
    }

    private static IEnumerable<string> SmallPieces(PacketModel model)
    {
        // Common practice for when a hand comes too near the blade.
        var (shortest, narrowest) =
            model.Unit == LengthUnit.Inch
                ? (Length.FromInches(12), Length.FromInches(3))
                : (Length.FromMillimetres(300), Length.FromMillimetres(75));
        var small = model
            .Parts.Where(p => p.Length < shortest || (p.Ripped && p.Width < narrowest))
            .SelectMany(p => p.Marks)
            .ToList();
        if (small.Count == 0)
            yield break;
        yield return $"Small pieces: {Words.All(small)}. Pieces shorter than {LengthFormat.WithUnit(shortest, model.Unit)} or "
            + $"ripped narrower than {LengthFormat.WithUnit(narrowest, model.Unit)} bring your fingers near the blade. Use "
            + "a jig, a sled or a push block, and cut them from longer stock, to length last.";
    }

    private static IEnumerable<string> Practice(PacketModel model)
    {
        var practice = model.Parts.Where(p => p.IsPractice).SelectMany(p => p.Marks).ToList();
        if (practice.Count > 0)
            yield return $"Test pieces: {Words.All(practice)}. Try each new joint setting on them until the joint fits. Then "
                + "cut the parts.";
    }
}
