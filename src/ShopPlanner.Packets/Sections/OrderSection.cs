using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The work as a list: a line a step with a box, and how long to wait before the next.</summary>
internal static class OrderSection
{
    private const int Columns = 3;
    private const double Side = 8.5,
        Indent = 14;

    /// <summary>Whether there is any step.</summary>
    public static bool Has(PacketWork work) => !work.Build.IsEmpty || !work.Finish.IsEmpty;

    /// <summary>Adds the list of one piece.</summary>
    public static void Add(PageFlow flow, PacketModel model, PacketWork work, string title)
    {
        var width = flow.ColumnWidth(Columns);
        flow.Section(title, [.. Lines(work.Build, width), .. Lines(work.Finish, width)], Columns);
    }

    private static IEnumerable<Block> Lines(IEnumerable<PacketStep> steps, double width)
    {
        var phase = "";
        foreach (var step in steps)
        {
            if (step.Phase != phase)
                yield return Blocks.Paragraph(step.Phase, width, 4, weight: Weight.Medium, tone: Tone.Faded) with
                {
                    Keep = true,
                };
            phase = step.Phase;
            yield return Line(step, width);
        }
    }

    private static Block Line(PacketStep step, double width)
    {
        var words = $"{Words.Of(step.Number)}. {step.Title}" + (step.Wait.Length > 0 ? $" ({step.Wait})" : "");
        var text = Blocks.Paragraph(words.Length > 300 ? words[..300] : words, width - Indent);
        return new(
            text.Height + 1,
            at => [new Frame(Stroke.Ring, new(at.X, at.Y + 1, Side, Side), 1), .. text.Draw(at with { X = at.X + Indent })]
        );
    }
}
