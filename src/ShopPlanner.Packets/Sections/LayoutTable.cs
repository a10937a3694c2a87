using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Under a drawing: on the left the cuts to tick off, on the right, apart from them, what the board or sheet
/// gives.</summary>
internal static class LayoutTable
{
    private static readonly Cell[] NoCut = [Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty];

    private static readonly Cell[] NoPiece = [Cell.Empty, Cell.Empty, Cell.Empty];

    /// <summary>The table of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="packet">The packet's unit: another one is named beside each figure.</param>
    public static Table Of(PacketLayout layout, LengthUnit packet)
    {
        var unit = new Units(layout.Picture.Unit, packet);
        var (cuts, pieces) = (Cuts(layout, unit).ToList(), Pieces(layout, unit).ToList());
        return new(
            [
                new("", 0.5),
                new("Cut", 0.7),
                new("Setting", 1.9, Anchor.End),
                new("What to do", 4.4),
                new("", 0.4) { Parts = true },
                new("You get", 1.9),
                new("Name", 2.3),
                new("Length × width", 2.4, Anchor.End),
            ],
            [
                .. Enumerable
                    .Range(0, Math.Max(cuts.Count, pieces.Count))
                    .Select(i => Row(cuts.ElementAtOrDefault(i) ?? NoCut, pieces.ElementAtOrDefault(i) ?? NoPiece)),
            ]
        );
    }

    private static ImmutableArray<Cell> Row(Cell[] cut, Cell[] piece) => [.. cut, Cell.Empty, .. piece];

    // The store's cuts and those at home are listed apart.
    private static IEnumerable<Cell[]> Cuts(PacketLayout layout, Units unit)
    {
        var (store, home) = (layout.Cuts.Where(c => c.ByStore).ToList(), layout.Cuts.Where(c => !c.ByStore).ToList());
        if (store.Count == 0)
            return home.Select(c => Cut(c, unit));
        return [Place("At the store"), .. store.Select(c => Cut(c, unit)), Place("At home"), .. home.Select(c => Cut(c, unit))];
    }

    private static Cell[] Place(string words) => [Cell.Empty, Cell.Empty, Cell.Empty, new TextCell(words, 9, Weight.Bold)];

    private static Cell[] Cut(PacketCut cut, Units unit) =>
        [
            new TickCell(),
            new TextCell(Words.Of(cut.N), Weight: Weight.Medium),
            new TextCell(unit.Of(cut), 12, Weight.Bold),
            new TextCell($"{cut.Doing}: {cut.Gives}.{After(cut.Shimmed)}{After(cut.Caution)}", 9),
        ];

    private static string After(string sentence) => sentence.Length > 0 ? $" {sentence}." : "";

    private static IEnumerable<Cell[]> Pieces(PacketLayout layout, Units unit) =>
        layout
            .Picture.Pieces.GroupBy(piece => (piece.Name, Size: SizeOf(piece), piece.Turned))
            .Select(alike => Piece([.. alike], alike.Key.Size, layout.Copies, unit))
            .Concat(layout.Picture.Leftovers.Where(leftover => leftover.Keep).Select(leftover => Keeper(leftover, unit)));

    private static (Length Length, Length Width) SizeOf(PiecePicture piece) =>
        piece.Turned ? (piece.Area.Dy, piece.Area.Dx) : (piece.Area.Dx, piece.Area.Dy);

    // A layout that is cut several times gives its pieces as often.
    private static Cell[] Piece(List<PiecePicture> alike, (Length Length, Length Width) size, int copies, Units unit)
    {
        var count = alike.Count * copies > 1 ? $" ({Words.Of(alike.Count * copies)})" : "";
        var turned = alike[0].Turned ? $" {TurnedWords.Both}" : "";
        return
        [
            new MarkCell(Words.Of([.. alike.Select(p => p.Mark)])),
            new TextCell(alike[0].Name + count + turned, 9),
            new TextCell(unit.Of(size.Length, size.Width), 9.5, Weight.Medium),
        ];
    }

    private static Cell[] Keeper(LeftoverPicture leftover, Units unit) =>
        [
            new TextCell(leftover.Tag ?? "—", 9, Weight.Bold, Tone.Done),
            new TextCell("leftover for the bin", 9, Tone: Tone.Done),
            new TextCell(unit.Of(leftover.Area.Dx, leftover.Area.Dy), 9.5, Weight.Medium, Tone.Done),
        ];

    // The layout's own unit is named beside a figure where it is not the packet's.
    private readonly record struct Units(LengthUnit Layout, LengthUnit Packet)
    {
        public string Of(PacketCut cut) =>
            cut.IsKerfOnly ? "kerf"
            : cut.ByStore ? Words.Of(cut.Setting, Layout, Packet)
            : Words.Setting(cut.Setting, cut.TakesOff, Layout, Packet);

        public string Of(Length length, Length width) => Words.Of(length, width, Layout, Packet);
    }
}
