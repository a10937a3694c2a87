using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>How a piece is finished: the steps with their waits, what they take, and which area of each part they
/// cover.</summary>
internal static class FinishSection
{
    private const int Columns = 2;

    /// <summary>Whether it is finished at all.</summary>
    public static bool Has(PacketWork work) => !work.Finish.IsEmpty || !work.Areas.IsEmpty || !work.Buy.IsEmpty;

    /// <summary>Adds the finish of one piece.</summary>
    public static void Add(PageFlow flow, PacketModel model, PacketWork work, string title)
    {
        var width = flow.ColumnWidth(Columns);
        flow.Section(
            title,
            [.. StepSection.Steps(work.Finish, width), .. Buy(work, model, width), .. Areas(work, width)],
            Columns
        );
    }

    // With a shopping list in the packet it stands there.
    private static IEnumerable<Block> Buy(PacketWork work, PacketModel model, double width)
    {
        if (work.Buy.IsEmpty || model.Sections.Contains(PacketSection.Shopping) && !model.Supplies.IsEmpty)
            return [];
        var table = new Table(
            [new("", 0.5), new("Number", 1.4, Anchor.End), new("For the finish", 8.5)],
            [
                .. work.Buy.Select(one =>
                    ImmutableArray.Create<Cell>(
                        new TickCell(),
                        new TextCell(Words.Of(one.Quantity), 10, Weight.Bold),
                        new TextCell(one.Name)
                    )
                ),
            ]
        );
        return [Blocks.Subheading("What the finish takes", width), .. table.Blocks(width)];
    }

    private static IEnumerable<Block> Areas(PacketWork work, double width)
    {
        if (work.Areas.IsEmpty)
            return [];
        var words = work.Areas.Select(area =>
            $"{area.Part} {area.Name} {area.Area}"
            + (area.BeforeAssembly.Length > 0 ? $" ({area.BeforeAssembly} before assembly)" : "")
        );
        return [Blocks.Subheading("Areas to finish", width), .. Blocks.Text(string.Join("; ", words) + ".", width)];
    }
}
