using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>How a piece is built, step by step in two columns: a box, the picture, what to do. The settings of work on single
/// parts are printed with the machines, where the packet has those.</summary>
internal static class StepSection
{
    private const int Columns = 2;

    /// <summary>Whether there is anything to build.</summary>
    public static bool Has(PacketWork work) => !work.Build.IsEmpty;

    /// <summary>Adds the building of one piece.</summary>
    public static void Add(PageFlow flow, PacketModel model, PacketWork work, string title)
    {
        var width = flow.ColumnWidth(Columns);
        var hasMachines = model.Sections.Contains(PacketSection.Machines);
        flow.Section(
            title,
            [
                .. work.AnyOrder.Select(words => Blocks.Paragraph(words, width, 3, weight: Weight.Medium)),
                .. Steps(work.Build.Select(step => hasMachines ? MachineSection.Without(step) : step), width),
            ],
            Columns
        );
    }

    /// <summary>Steps in their order, each phase under its name where there are several.</summary>
    internal static IEnumerable<Block> Steps(IEnumerable<PacketStep> all, double width)
    {
        var steps = all.ToList();
        var isSeveral = steps.Select(step => step.Phase).Distinct().Count() > 1;
        var (phase, marks, said) = ("", "", new Dictionary<string, int>(StringComparer.Ordinal));
        foreach (var step in steps)
        {
            if (step.Phase != phase && isSeveral)
                yield return Phase(step.Phase, width);
            phase = step.Phase;
            var own = string.Join(' ', step.Marks);
            // The same parts as in the step before need not be named again, where no picture shows them.
            var isAgain = own == marks && step.Picture is null;
            marks = own;
            foreach (var block in StepBlocks.Of(isAgain ? step with { Marks = [] } : step, width, said))
                yield return block;
        }
    }

    private static Block Phase(string words, double width) =>
        Blocks.Paragraph(words, width, 8, 10, Weight.Medium, Tone.Faded) with
        {
            Keep = true,
        };
}
