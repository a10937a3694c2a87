using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>What is set at router, drill, jigs and saw for the work on single parts: grooves, pocket holes, cups, pins, with
/// places measured from an end, and a drawing of the parts.</summary>
internal static class MachineSection
{
    private const int Columns = 2;

    /// <summary>Whether a piece has such work.</summary>
    public static bool Has(PacketWork work) => work.Build.Any(IsSet);

    /// <summary>Whether a step is printed here.</summary>
    public static bool IsSet(PacketStep step) => step.IsOnParts && !step.Figures.IsEmpty;

    /// <summary>Adds the work on the parts of one piece.</summary>
    public static void Add(PageFlow flow, PacketModel model, PacketWork work, string title)
    {
        var said = new Dictionary<string, int>(StringComparer.Ordinal);
        var width = flow.ColumnWidth(Columns);
        flow.Section(title, [.. work.Build.Where(IsSet).SelectMany(step => StepBlocks.Of(step, width, said))], Columns);
    }
}
