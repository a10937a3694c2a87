using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>How the sizes were worked out: every figure once with its number, by which later ones refer to it.</summary>
internal static class WorkingsSection
{
    private const int Columns = 2;

    /// <summary>Adds the workings of all pieces.</summary>
    public static void Add(PageFlow flow, PacketModel model, string title)
    {
        var width = flow.ColumnWidth(Columns);
        flow.Section(title, [.. model.Pieces.SelectMany(piece => Of(piece, width, model.Pieces.Length > 1))], Columns);
    }

    private static IEnumerable<Block> Of(PacketPiece piece, double width, bool isNamed)
    {
        if (isNamed)
            yield return Blocks.Subheading(piece.Name, width);
        foreach (var one in piece.Workings)
            yield return Blocks.Stack([
                Blocks.Paragraph($"{Words.Of(one.Number)}. {one.Name}: {one.Value}", width, weight: Weight.Medium),
                .. Lines(one).Select(line => Blocks.Paragraph(line, width, tone: Tone.Faded)),
            ]) with
            {
                Before = 3,
            };
    }

    private static IEnumerable<string> Lines(PacketWorking one)
    {
        if (one.How.Length > 0)
            yield return one.How + (one.From.IsEmpty ? "" : $" (from {string.Join(", ", one.From.Select(Words.Of))})");
        if (one.Source.Length > 0)
            yield return one.Source;
    }
}
