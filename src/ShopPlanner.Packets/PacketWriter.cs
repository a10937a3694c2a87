using System.Collections.Immutable;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Pdf;
using ShopPlanner.Packets.Sections;

namespace ShopPlanner.Packets;

/// <summary>Prints a project's packet: title, shopping list, what the store cuts, the pieces with their drawings, cut list,
/// cautions, every layout with its cuts, like cuts at one setting, the steps of building and finish.</summary>
public static class PacketWriter
{
    /// <summary>Writes a PDF. The same model gives the same bytes.</summary>
    /// <param name="model">What to print.</param>
    /// <param name="stream">Receives the file; left open.</param>
    public static void Write(PacketModel model, Stream stream)
    {
        var pages = Pages(model);
        PdfFile.Write(new(string.Join(", ", model.Projects), model.Date, model.Plan.Id), pages, stream);
    }

    /// <summary>The pages as drawings in points, before they become a file.</summary>
    public static ImmutableArray<Page> Pages(PacketModel model)
    {
        var flow = new PageFlow(model.Paper);
        TitleBlock.Add(flow, model);
        ShoppingSection.Add(flow, model);
        StoreSawSection.Add(flow, model);
        PieceSection.Add(flow, model);
        CutListSection.Add(flow, model);
        CautionSection.Add(flow, model);
        LayoutSection.Add(flow, model);
        SettingSection.Add(flow, model);
        WorkSection.Add(flow, model);
        return PageFrame.Finish(flow, model);
    }
}
