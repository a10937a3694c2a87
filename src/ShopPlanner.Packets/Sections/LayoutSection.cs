using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Every board and sheet in two columns: the drawing, boards at one scale and sheets at one, and under it the cuts to
/// check off.</summary>
internal static class LayoutSection
{
    /// <summary>Its title.</summary>
    public const string Title = "Boards and sheets with their cuts";

    private const int Columns = 2;
    private const double TitleSize = 10,
        SheetHeight = 200,
        Legend = 15,
        LegendSize = 8,
        LeastDrawing = 92,
        NarrowShare = 0.46;
    private const int MostBeside = 4;

    /// <summary>Adds the layouts.</summary>
    public static void Add(PageFlow flow, PacketModel model)
    {
        var width = flow.ColumnWidth(Columns);
        var hasBadPlaces = model.Layouts.Any(one => !one.Picture.BadPlaces.IsEmpty);
        var rooms = model
            .Layouts.GroupBy(layout => layout.IsBoard)
            .ToDictionary(same => same.Key, same => RoomOf([.. same.Select(one => one.Picture)], width, same.Key));
        flow.Section(
            Title,
            [
                new Block(Legend, at => DrawLegend(at, hasBadPlaces)) { Keep = true },
                .. model.Layouts.SelectMany(layout => Of(layout, rooms[layout.IsBoard], width, model)),
            ],
            Columns
        );
    }

    // All at the scale of the one that needs the smallest.
    private static DrawingRoom RoomOf(IReadOnlyList<LayoutPicture> pictures, double width, bool isBoard)
    {
        var room = DrawingRoom.Paper(width, SheetHeight);
        return room with { Scale = pictures.Max(picture => LayoutDrawing.ScaleOf(picture, room, isBoard)), IsScaleTold = true };
    }

    private static IEnumerable<Block> Of(PacketLayout layout, DrawingRoom room, double width, PacketModel model)
    {
        yield return new Block(TitleSize * 1.45, at => Heading(layout, room, at, width, model.Unit)) { Before = 7, Keep = true };
        var narrow = Math.Max(LeastDrawing, LayoutDrawing.WidthOf(layout.Picture, room));
        if (layout.IsBoard && narrow <= width * NarrowShare && layout.Cuts.Length <= MostBeside)
        {
            yield return Beside(
                Draw(layout, room with { Width = narrow }),
                LayoutTable.Of(layout, model.Unit, isNarrow: true),
                width
            );
            yield break;
        }

        var rows = LayoutTable.Of(layout, model.Unit, isNarrow: false).Blocks(width);
        yield return Blocks.Figure(Draw(layout, room), toScale: true) with
        {
            Keep = rows.Count > 0,
        };
        foreach (var row in rows)
            yield return row;
    }

    // A short board stands beside its few cuts.
    private static Block Beside(LineDrawing drawing, Table table, double width)
    {
        const double gap = 4;
        var rest = width - drawing.Width - gap;
        return Blocks.Beside(
            gap,
            [(Blocks.Figure(drawing, toScale: true), drawing.Width), (Blocks.Stack(table.Blocks(rest)), rest)]
        );
    }

    private static LineDrawing Draw(PacketLayout layout, DrawingRoom room)
    {
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

    private static Shape[] Heading(PacketLayout layout, DrawingRoom scale, Spot at, double width, LengthUnit packet)
    {
        var unit = layout.Picture.Unit == packet ? "" : ", in " + Figures.UnitName(layout.Picture.Unit);
        var told = layout.IsBoard ? $"scale 1 : {Words.Of(scale.Scale ?? 1)}{unit}" : "";
        var copies = layout.Copies > 1 ? $"cut {Words.Of(layout.Copies)} like this" : "";
        var side = Typeface.Width(told, Weight.Regular, LegendSize);
        var room = width - Typeface.Width(copies, Weight.Bold, TitleSize) - side - 14;
        var name = layout.Picture.Title;
        var title = TextFit.Clean(name.Length > 300 ? name[..300] : name, Weight.Bold);
        var y = at.Y + 7;
        return
        [
            new Caption(new(at.X, y), TextFit.Shorten(title, Weight.Bold, TitleSize, room), TitleSize, Weight: Weight.Bold),
            new Caption(new(at.X + width - side - 6, y), copies, TitleSize, Anchor.End, Weight.Bold, Tone.Chalk),
            new Caption(new(at.X + width, y), told, LegendSize, Anchor.End, Tone: Tone.Faded),
        ];
    }

    private static IEnumerable<Shape> DrawLegend(Spot at, bool hasBadPlaces)
    {
        const double side = 8;
        var (x, y, middle) = (at.X, at.Y, at.Y + 4.5);
        return
        [
            new Hatch(Stroke.Waste, new(x, y, side * 2, side), 4),
            new Frame(Stroke.Thin, new(x, y, side * 2, side)),
            new Caption(new(x + 20, middle), "scrap", LegendSize),
            new Frame(Stroke.Keep, new(x + 46, y, side * 2, side)),
            new Caption(new(x + 66, middle), "for the bin", LegendSize),
            new Patch(Fill.Kerf, new(x + 110, y, 1.5, side)),
            new Caption(new(x + 115, middle), "cut; widths of boards enlarged", LegendSize),
            .. hasBadPlaces ? BadPlace(new(x + 226, y, side * 2, side)) : [],
        ];
    }

    private static Shape[] BadPlace(Box box) =>
        [
            new CrossHatch(Stroke.BadPlace, box, 4.5),
            new Caption(new(box.Right + 4, box.Y + 4.5), BadPlaceNote.Legend, LegendSize),
        ];
}
