using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Every piece: its views with dimensions, and beside them its parts apart, with their marks.</summary>
internal static class PieceSection
{
    /// <summary>Adds the drawings.</summary>
    public static void Add(PageFlow flow, PacketModel model) =>
        flow.Section("Drawings", [.. model.Pieces.SelectMany(piece => Of(piece, flow, model.Pieces.Length > 1))]);

    private static IEnumerable<Block> Of(PacketPiece piece, PageFlow flow, bool isNamed)
    {
        if (isNamed)
            yield return Blocks.Subheading(piece.Name, flow.Width, Words.Title(piece.Name));
        yield return Blocks.Beside(
            PageFlow.Gutter,
            [
                (Titled("Front, right side and top", piece.Views, toScale: true), piece.Views.Width),
                (Titled("Apart", piece.Apart, toScale: false), piece.Apart.Width),
            ]
        );
    }

    private static Block Titled(string words, Drawing.LineDrawing drawing, bool toScale) =>
        Blocks.Stack([
            Blocks.Paragraph(words, drawing.Width, weight: Weight.Medium, tone: Tone.Faded),
            Blocks.Figure(drawing),
        ]) with
        {
            ToScale = toScale,
        };
}
