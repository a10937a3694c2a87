using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;

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
            var table = Cuts(layout, model.Unit);
            var together = TitleHeight + drawing.Height + 4 + (table.Rows.IsEmpty ? 0 : table.Beginning(flow.Width));
            if (first)
                flow.Heading("Cut the boards and sheets", Legend + Gap + together);
            if (first)
                AddLegend(flow);
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

    private static void AddLegend(PageFlow flow) =>
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
                    new Caption(new(x + 23, middle), "waste", size),
                    new Frame(Stroke.Keep, new(x + 62, y, side * 2, side)),
                    new Caption(new(x + 85, middle), "goes to the bin", size),
                    new Patch(Fill.Kerf, new(x + 157, y, 1.5, side)),
                    new Caption(new(x + 163, middle), "cut with its number; the kerf to scale", size),
                ];
            }
        );

    private static Table Cuts(PacketLayout layout, LengthUnit packet)
    {
        var unit = new Units(layout.Picture.Unit, packet);
        var alike = layout.Picture.Pieces.GroupBy(p => (p.Name, Size: SizeOf(p)));
        var keepers = layout.Picture.Leftovers.Where(l => l.Keep);
        var pieces = alike.Select(g => Pieces([.. g], g.Key.Size, unit)).Concat(keepers.Select(l => Keeper(l, unit))).ToList();
        var cuts = CutRows(layout, unit).ToList();
        var rows = Enumerable
            .Range(0, Math.Max(cuts.Count, pieces.Count))
            .Select(i =>
                ImmutableArray.Create<Cell>([
                    .. cuts.ElementAtOrDefault(i) ?? NoCut,
                    Cell.Empty,
                    .. pieces.ElementAtOrDefault(i) ?? NoPiece,
                ])
            );
        return new(
            [
                new("", 0.5),
                new("Cut", 0.7),
                new("Setting", 2, Anchor.End),
                new("What to do", 4.1),
                new("", 0.15),
                new("Pieces", 1.6),
                new("Name", 2.7),
                new("Length × width", 2.6, Anchor.End),
            ],
            [.. rows]
        );
    }

    // What the store does stands apart from what is done at home.
    private static IEnumerable<Cell[]> CutRows(PacketLayout layout, Units unit)
    {
        var (store, home) = (layout.Cuts.Where(c => c.ByStore).ToList(), layout.Cuts.Where(c => !c.ByStore).ToList());
        if (store.Count == 0)
            return home.Select(c => Cut(c, unit));
        return
        [
            Place("At the store's saw"),
            .. store.Select(c => Cut(c, unit)),
            Place("At home"),
            .. home.Select(c => Cut(c, unit)),
        ];
    }

    private static Cell[] Place(string words) => [Cell.Empty, Cell.Empty, Cell.Empty, new TextCell(words, 9, Weight.Bold)];

    private static Cell[] NoCut => [Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty];

    private static Cell[] NoPiece => [Cell.Empty, Cell.Empty, Cell.Empty];

    private static string Doing(PacketCut cut) =>
        cut.Way switch
        {
            CutWay.SquareEnd => $"Square the end of {cut.Piece}",
            CutWay.TrimEdge => $"Trim the edge of {cut.Piece}, fence on the far side",
            CutWay.TrimByGuide => $"Trim the edge of {cut.Piece} along a straightedge",
            CutWay.Crosscut => $"Crosscut {cut.Piece}",
            _ => $"Rip {cut.Piece}",
        };

    private static Cell[] Cut(PacketCut cut, Units unit)
    {
        return
        [
            new TickCell(),
            new TextCell(Words.Of(cut.N), Weight: Weight.Medium),
            new TextCell(unit.Of(cut.Setting), 12, Weight.Bold),
            new TextCell($"{Doing(cut)}: {cut.Gives}.", 9),
        ];
    }

    private static (Length Length, Length Width) SizeOf(PiecePicture piece) =>
        piece.Turned ? (piece.Area.Dy, piece.Area.Dx) : (piece.Area.Dx, piece.Area.Dy);

    private static Cell[] Pieces(List<PiecePicture> alike, (Length Length, Length Width) size, Units unit)
    {
        var count = alike.Count > 1 ? $" ({Words.Of(alike.Count)})" : "";
        return
        [
            new MarkCell(Words.Of([.. alike.Select(p => p.Mark)])),
            new TextCell(alike[0].Name + count, 9),
            new TextCell(unit.Of(size.Length, size.Width), 9.5, Weight.Medium),
        ];
    }

    private static Cell[] Keeper(LeftoverPicture leftover, Units unit) =>
        [
            new TextCell(leftover.Tag ?? "—", 9, Weight.Bold, Tone.Done),
            new TextCell("leftover, to the bin", 9, Tone: Tone.Done),
            new TextCell(unit.Of(leftover.Area.Dx, leftover.Area.Dy), 9.5, Weight.Medium, Tone.Done),
        ];

    // The layout's own unit is named beside a figure where it is not the packet's.
    private readonly record struct Units(LengthUnit Layout, LengthUnit Packet)
    {
        public string Of(Length length) => Words.Of(length, Layout, Packet);

        public string Of(Length length, Length width) => Words.Of(length, width, Layout, Packet);
    }
}
