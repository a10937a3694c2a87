using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Every board and sheet: the drawing to scale, and under it the cuts to tick off beside the pieces they give.</summary>
internal static class LayoutSection
{
    private const double TitleSize = 11.5,
        TitleHeight = 19,
        DrawingShare = 0.5,
        Legend = 16,
        Gap = 10;

    /// <summary>Adds the layouts.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        var first = true;
        foreach (var layout in model.Layouts)
        {
            var drawing = Draw(layout, flow);
            var table = LayoutTable.Of(layout, model.Unit);
            var together = TitleHeight + drawing.Height + 4 + (table.Rows.IsEmpty ? 0 : table.Beginning(flow.Width));
            if (first)
                flow.Heading("Cut the boards and sheets", Legend + Gap + together);
            if (first)
                AddLegend(flow, model.Layouts.Any(one => !one.Picture.BadPlaces.IsEmpty));
            first = false;
            AddLayout(flow, layout, drawing, table, together);
        }
    }

    private static LineDrawing Draw(PacketLayout layout, PageFlow flow)
    {
        var room = DrawingRoom.Paper(flow.Width, flow.Height * DrawingShare);
        var picture = Planned(layout.Picture);
        return layout.IsBoard ? LayoutDrawing.Board(picture, room) : LayoutDrawing.Sheet(picture, room);
    }

    // Paper shows the plan, not how far somebody has come with it.
    private static LayoutPicture Planned(LayoutPicture picture) =>
        picture with
        {
            Pieces = [.. picture.Pieces.Select(p => p with { Done = false })],
            Cuts = [.. picture.Cuts.Select(c => c with { State = CutState.Planned })],
        };

    private static void AddLayout(PageFlow flow, PacketLayout layout, LineDrawing drawing, Table table, double together)
    {
        flow.Space(Gap);
        flow.Need(Math.Min(together, flow.Height));
        flow.Add(TitleHeight, y => Title(flow, layout, y));
        flow.Add(drawing);
        flow.Space(4);
        table.AddTo(flow);
    }

    private static Caption[] Title(PageFlow flow, PacketLayout layout, double y)
    {
        var copies = layout.Copies > 1 ? $"cut {Words.Of(layout.Copies)} like this" : "";
        var room = flow.Width - Typeface.Width(copies, Weight.Bold, TitleSize) - 10;
        var name = layout.Picture.Title;
        var title = TextFit.Clean(name.Length > 300 ? name[..300] : name, Weight.Bold);
        return
        [
            new(new(flow.Left, y + 9), TextFit.Shorten(title, Weight.Bold, TitleSize, room), TitleSize, Weight: Weight.Bold),
            new(new(flow.Left + flow.Width, y + 9), copies, TitleSize, Anchor.End, Weight.Bold, Tone.Chalk),
        ];
    }

    private static void AddLegend(PageFlow flow, bool hasBadPlaces) =>
        flow.Add(
            Legend,
            y =>
            {
                const double size = 8.5,
                    side = 9;
                var (x, middle) = (flow.Left, y + 5);
                return
                [
                    new Hatch(Stroke.Waste, new(x, y, side * 2, side), 4),
                    new Frame(Stroke.Thin, new(x, y, side * 2, side)),
                    new Caption(new(x + 23, middle), "scrap", size),
                    new Frame(Stroke.Keep, new(x + 62, y, side * 2, side)),
                    new Caption(new(x + 85, middle), "for the bin", size),
                    new Patch(Fill.Kerf, new(x + 157, y, 1.5, side)),
                    new Caption(new(x + 163, middle), "cut and its number; kerf to scale", size),
                    .. hasBadPlaces ? BadPlace(new(x + 317, y, side * 2, side), size) : [],
                ];
            }
        );

    private static Shape[] BadPlace(Box box, double size) =>
        [new CrossHatch(Stroke.BadPlace, box, 4.5), new Caption(new(box.Right + 5, box.Y + 5), BadPlaceNote.Legend, size)];
}
