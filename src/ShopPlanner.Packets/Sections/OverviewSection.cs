using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>All boards and sheets small and at one scale, on one page.</summary>
internal static class OverviewSection
{
    // In as few columns as leave the most of a page to what follows.
    private static readonly int[] Columns = [3, 4, 5, 6, 8];
    private const double Share = 0.36;

    /// <summary>Adds the overview.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        var columns = Columns
            .Where(count => HeightOf(Thumbs(flow, model, count), count) <= flow.Height * Share)
            .FirstOrDefault(Columns[^1]);
        flow.Section("All boards and sheets", Thumbs(flow, model, columns), columns);
    }

    private static double HeightOf(List<Block> blocks, int columns) =>
        new ColumnFill(blocks, columns).Balanced(0, double.MaxValue / 4, isWholePage: false)!.Height;

    private static List<Block> Thumbs(PageFlow flow, PacketModel model, int columns)
    {
        var width = flow.ColumnWidth(columns);
        var pictures = model.Layouts.Select(layout => new ThumbPicture(layout.Picture, layout.IsBoard)).ToList();
        var drawings = new LayoutThumbs(pictures, width).Draw();
        return
        [
            .. model.Layouts.SelectMany(
                (layout, i) =>
                    new[]
                    {
                        Blocks.Stack([
                            .. Blocks.Text(TextFit.Shorten(Title(layout), Weight.Regular, Blocks.TextSize, width), width).Take(1),
                        ]) with
                        {
                            Before = 4,
                            Keep = true,
                        },
                        Blocks.Figure(drawings[i]),
                    }
            ),
        ];
    }

    private static string Title(PacketLayout layout)
    {
        var name = layout.Picture.Title;
        var copies = layout.Copies > 1 ? $"{Words.Of(layout.Copies)} × " : "";
        return TextFit.Clean(copies + (name.Length > 200 ? name[..200] : name));
    }
}
