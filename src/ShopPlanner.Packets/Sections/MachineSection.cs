using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>What is set at router, drill, jigs and saw for the work on single parts: grooves, pocket holes, cups, pins, with
/// places measured from an end, and a drawing of the parts. What to do with them is told by the steps.</summary>
internal static class MachineSection
{
    private const int Columns = 2;

    /// <summary>Whether a piece has such work.</summary>
    public static bool Has(PacketWork work) => work.Build.Any(IsSet);

    /// <summary>A step as it stands among the others: what is printed here left out.</summary>
    public static PacketStep Without(PacketStep step) =>
        IsSet(step) ? step with { Picture = null, Figures = [], Setup = ["Settings: under Machine settings."] } : step;

    /// <summary>Adds the settings of all pieces.</summary>
    public static void Add(PageFlow flow, PacketModel model, string title)
    {
        var width = flow.ColumnWidth(Columns);
        var works = model.Work.Where(Has).ToList();
        flow.Section(
            title,
            [
                .. works.SelectMany(work => Of(work, width, works.Count > 1)),
                .. model.Sections.Contains(PacketSection.Steps) ? [] : Safety(works, width),
            ],
            Columns
        );
    }

    private static bool IsSet(PacketStep step) => step.IsOnParts && !step.Figures.IsEmpty;

    private static IEnumerable<Block> Of(PacketWork work, double width, bool isNamed)
    {
        if (isNamed)
            yield return Blocks.Subheading(work.Name, width, Words.Title("Machine settings: " + work.Name));
        foreach (var step in work.Build.Where(IsSet))
        foreach (var block in StepBlocks.Of(Only(step), width, []))
            yield return block;
    }

    private static PacketStep Only(PacketStep step) => step with { Says = [], Facts = [], Check = "", Cautions = [] };

    // Without the steps, which tell each at its place, they stand together.
    private static IEnumerable<Block> Safety(List<PacketWork> works, double width)
    {
        var cautions = works.SelectMany(work => work.Build.Where(IsSet)).SelectMany(step => step.Cautions).Distinct().ToList();
        return cautions.Count == 0
            ? []
            : [Blocks.Subheading("Safety at the machines", width), .. cautions.Select(words => Blocks.Item(words, width))];
    }
}
