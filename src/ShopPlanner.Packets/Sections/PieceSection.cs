using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Packets.Flow;

namespace ShopPlanner.Packets.Sections;

/// <summary>Pieces that were worked out from designs: from all sides, drawn apart, what else to buy, how it goes together.</summary>
internal static class PieceSection
{
    private const double Between = 10, Note = 9.5;

    /// <summary>Adds them; nothing where no project has a design.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        foreach (var piece in model.Pieces) AddPiece(flow, piece);
    }

    private static void AddPiece(PageFlow flow, PacketPiece piece)
    {
        var title = "The piece: " + TextFit.Clean(piece.Name, Weight.Bold);
        flow.Heading(TextFit.Shorten(title, Weight.Bold, 15, flow.Width), piece.Views.IsEmpty ? 40 : piece.Views[0].Height + 20);
        foreach (var view in piece.Views)
        {
            flow.Need(Math.Min(view.Height + 20, flow.Height));
            flow.Paragraph(view.Title, Note, Weight.Medium);
            flow.Add(view);
            flow.Space(Between);
        }

        List(flow, "Beside wood", piece.Hardware);
        List(flow, "How it goes together", piece.Steps);
    }

    private static void List(PageFlow flow, string title, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0) return;
        flow.Paragraph(title, 11, Weight.Bold);
        for (var i = 0; i < lines.Count; i++) flow.Paragraph($"{i + 1}. {TextFit.Clean(lines[i], Weight.Regular)}", Note);
        flow.Space(Between);
    }
}
