using System.Collections.Immutable;

namespace ShopPlanner.Packets.Model;

/// <summary>A section of a packet, in the order in which they are printed.</summary>
public enum PacketSection
{
    /// <summary>What it is, what it takes, cautions, contents.</summary>
    Cover,

    /// <summary>What to buy by store and aisle, and what to take from the rack and the bin.</summary>
    Shopping,

    /// <summary>What to ask for at the store's saw.</summary>
    StoreCuts,

    /// <summary>All boards and sheets small.</summary>
    Overview,

    /// <summary>The pieces from all sides and apart.</summary>
    Drawings,

    /// <summary>Every part with its marks and sizes.</summary>
    CutList,

    /// <summary>Each board and sheet with its cuts in order.</summary>
    Layouts,

    /// <summary>Like cuts together.</summary>
    CutsBySetting,

    /// <summary>What is set at router, drill and jigs, apart from the steps, which else tell it.</summary>
    Machines,

    /// <summary>Joints, spacers and test pieces.</summary>
    Joints,

    /// <summary>The work as a list, a line a step.</summary>
    Order,

    /// <summary>The work step by step with pictures.</summary>
    Steps,

    /// <summary>Coats, waits and areas.</summary>
    Finish,

    /// <summary>What each piece costs.</summary>
    Cost,

    /// <summary>How the figures were worked out.</summary>
    Workings,
}

/// <summary>A section as people choose it.</summary>
/// <param name="Section">The section.</param>
/// <param name="Key">As it is written on a command line and stored.</param>
/// <param name="Name">As it is shown.</param>
public sealed record SectionChoice(PacketSection Section, string Key, string Name);

/// <summary>The sections that a packet can have.</summary>
public static class PacketSections
{
    /// <summary>All of them, as they are printed.</summary>
    public static ImmutableArray<SectionChoice> All { get; } =
    [
        new(PacketSection.Cover, "cover", "Cover"),
        new(PacketSection.Shopping, "shopping", "Shopping list"),
        new(PacketSection.StoreCuts, "store-cuts", "Cuts at the store"),
        new(PacketSection.Overview, "overview", "All boards and sheets on one page"),
        new(PacketSection.Drawings, "drawings", "Drawings"),
        new(PacketSection.CutList, "cut-list", "Cut list"),
        new(PacketSection.Layouts, "layouts", "Boards and sheets with their cuts"),
        new(PacketSection.CutsBySetting, "cuts-by-setting", "Cuts by setting"),
        new(PacketSection.Machines, "machines", "Machine settings"),
        new(PacketSection.Joints, "joints", "Joints, spacers and test pieces"),
        new(PacketSection.Order, "order", "Order of work, a line a step"),
        new(PacketSection.Steps, "steps", "Building steps with pictures"),
        new(PacketSection.Finish, "finish", "Finish plan"),
        new(PacketSection.Cost, "cost", "Cost sheet"),
        new(PacketSection.Workings, "workings", "How sizes were worked out"),
    ];

    /// <summary>What is printed where nobody chose: all that is needed in the store and the shop. Several pieces that are planned
    /// together are bought and cut by their packet, so their work is a list there; one piece is built by it.</summary>
    /// <param name="projects">How many pieces of furniture the packet is for.</param>
    public static ImmutableArray<PacketSection> Usual(int projects) =>
        [
            .. All.Select(one => one.Section)
                .Where(one => !OnRequest.Contains(one) && !(projects > 1 ? OfOne : OfSeveral).Contains(one)),
        ];

    /// <summary>The sections of a list of keys, with commas between them; null where one is not known.</summary>
    /// <param name="keys">The list.</param>
    /// <param name="unknown">The key that is not known, or an empty text.</param>
    public static ImmutableArray<PacketSection>? Read(string keys, out string unknown)
    {
        ArgumentNullException.ThrowIfNull(keys);
        var asked = keys.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        unknown = asked.FirstOrDefault(key => All.All(one => one.Key != key)) ?? "";
        return unknown.Length > 0 || asked.Length == 0
            ? null
            : [.. All.Where(one => asked.Contains(one.Key)).Select(one => one.Section)];
    }

    /// <summary>The keys of sections, with commas between them.</summary>
    public static string Write(IEnumerable<PacketSection> sections)
    {
        var wanted = sections.ToHashSet();
        return string.Join(',', All.Where(one => wanted.Contains(one.Section)).Select(one => one.Key));
    }

    private static readonly ImmutableArray<PacketSection> OfOne = [PacketSection.Steps, PacketSection.Finish];
    private static readonly ImmutableArray<PacketSection> OfSeveral = [PacketSection.Order];

    private static readonly ImmutableArray<PacketSection> OnRequest =
    [
        PacketSection.CutsBySetting,
        PacketSection.Machines,
        PacketSection.Joints,
        PacketSection.Cost,
        PacketSection.Workings,
    ];
}
