using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>How a piece is built, step by step in two columns: a box, the picture, what to do. Work on single parts whose
/// settings are printed with the machines is named here by its numbers.</summary>
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
                .. Steps([.. work.Build], width, step => hasMachines && MachineSection.IsSet(step)),
            ],
            Columns
        );
    }

    /// <summary>Steps in their order, each phase under its name.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="width">Of the column.</param>
    /// <param name="isElsewhere">Whether a step is printed in another section.</param>
    internal static IEnumerable<Block> Steps(IReadOnlyList<PacketStep> steps, double width, Func<PacketStep, bool> isElsewhere)
    {
        var (phase, said) = ("", new Dictionary<string, int>(StringComparer.Ordinal));
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].Phase != phase)
                yield return Phase(phase = steps[i].Phase, width);
            var first = i;
            while (i < steps.Count && isElsewhere(steps[i]) && steps[i].Phase == phase)
                i++;
            if (i > first)
                yield return Elsewhere(steps[first], steps[--i], width);
            else
                foreach (var block in StepBlocks.Of(steps[i], width, said))
                    yield return block;
        }
    }

    private static Block Phase(string words, double width) =>
        Blocks.Paragraph(words, width, 8, 10, Weight.Medium, Tone.Faded) with
        {
            Keep = true,
        };

    private static Block Elsewhere(PacketStep first, PacketStep last, double width)
    {
        var which = first == last ? $"Step {Words.Of(first.Number)} is" : $"Steps {Words.Of(first.Number)}–{Words.Of(last.Number)} are";
        return Blocks.Paragraph($"{which} under Machine settings.", width, 4);
    }
}
