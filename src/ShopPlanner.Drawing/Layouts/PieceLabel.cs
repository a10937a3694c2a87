using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>How much of a piece's label is shown.</summary>
internal enum LabelLevel
{
    /// <summary>Mark, figures and name.</summary>
    Full,

    /// <summary>Mark and figures.</summary>
    Figures,

    /// <summary>The mark alone.</summary>
    Mark,
}

/// <summary>
/// The label of a piece, as large as fits into its box: the mark in a ring, the figures, the name; one under the other, in a row,
/// or in a row that reads from the right. What does not fit at a readable size is left out, the name first.
/// </summary>
/// <param name="Level">What is shown.</param>
/// <param name="Shapes">In place.</param>
internal sealed record PieceLabel(LabelLevel Level, ImmutableArray<Shape> Shapes)
{
    private const double Pad = 2.5,
        NameSize = 0.78,
        RingSize = 0.92,
        Line = 1.3,
        Blank = 0.5;

    /// <summary>The best label; null when not even the mark fits.</summary>
    /// <param name="mark">The piece's mark.</param>
    /// <param name="figures">Its size; empty where a dimension line gives it.</param>
    /// <param name="name">Its name.</param>
    /// <param name="box">The piece on the page.</param>
    /// <param name="room">How small and how large type may be.</param>
    public static PieceLabel? Fit(string mark, string figures, string name, Box box, DrawingRoom room)
    {
        var full = Best(mark, figures, name, box, room, room.LeastText / NameSize);
        var plain = figures.Length == 0 ? null : Best(mark, figures, "", box, room, room.LeastText);
        var bare = Best(mark, "", "", box, room, room.LeastText / RingSize);
        if (full is { } f && name.Length > 0 && f.Size >= 0.7 * (plain?.Size ?? bare?.Size ?? 0))
            return f.Label(LabelLevel.Full);
        return plain?.Label(LabelLevel.Figures) ?? bare?.Label(LabelLevel.Mark);
    }

    private static Setting? Best(string mark, string figures, string name, Box box, DrawingRoom room, double least)
    {
        Setting[] all =
        [
            new(mark, figures, name, box, Stacked: true, Upward: false),
            new(mark, figures, name, box, Stacked: false, Upward: false),
            new(mark, figures, name, box, Stacked: false, Upward: true),
        ];
        var best = all.Select(s => s with { Size = Math.Min(s.LargestSize, room.LargestText) })
            .OrderByDescending(s => s.Size * (s.Upward ? 0.8 : 1))
            .First();
        return best.Size >= least ? best : null;
    }

    private sealed record Setting(string Mark, string Figures, string Name, Box Box, bool Stacked, bool Upward)
    {
        public double Size { get; init; }

        private double Ring => RingMark.WidthOf(Mark, RingSize);

        private double FiguresWide => Typeface.Width(Figures, Weight.Bold, 1);

        private double NameWide => Typeface.Width(Name, Weight.Regular, NameSize);

        /// <summary>The size at which it just fits; widths and heights grow with the size in proportion.</summary>
        public double LargestSize
        {
            get
            {
                var (along, across) = Stacked
                    ? (Math.Max(Ring, Math.Max(FiguresWide, NameWide)), StackHeight)
                    : (RowLength, RingMark.HeightOf(RingSize));
                var room = Box.Inset(Pad);
                return Upward
                    ? Math.Min(room.Height / along, room.Width / across)
                    : Math.Min(room.Width / along, room.Height / across);
            }
        }

        public PieceLabel Label(LabelLevel level) => new(level, Stacked ? Stack() : Row());

        private double StackHeight =>
            RingMark.HeightOf(RingSize) + (Figures.Length > 0 ? Line : 0) + (Name.Length > 0 ? Line * NameSize : 0);

        private double RowLength =>
            Ring + (Figures.Length > 0 ? Blank + FiguresWide : 0) + (Name.Length > 0 ? Blank + NameWide : 0);

        private ImmutableArray<Shape> Stack()
        {
            var (x, ring) = (Box.Centre.X, RingMark.HeightOf(RingSize) * Size);
            var y = Box.Centre.Y - (StackHeight * Size / 2);
            var shapes = ImmutableArray.Create<Shape>(new RingMark(new(x, y + (ring / 2)), Mark, RingSize * Size));
            y += ring + (Line * Size / 2);
            if (Figures.Length > 0)
                shapes = shapes.Add(FiguresAt(new(x, y), Anchor.Middle));
            if (Figures.Length > 0)
                y += Line * Size * (1 + NameSize) / 2;
            return Name.Length > 0 ? shapes.Add(NameAt(new(x, y), Anchor.Middle)) : shapes;
        }

        private ImmutableArray<Shape> Row()
        {
            var at = -RowLength / 2;
            var shapes = ImmutableArray.Create<Shape>(new RingMark(Along(at + (Ring / 2)), Mark, RingSize * Size, Upward));
            at += Ring + Blank;
            if (Figures.Length > 0)
                shapes = shapes.Add(FiguresAt(Along(at), Anchor.Start));
            if (Figures.Length > 0)
                at += FiguresWide + Blank;
            return Name.Length > 0 ? shapes.Add(NameAt(Along(at), Anchor.Start)) : shapes;
        }

        private Spot Along(double ems) =>
            Upward ? new(Box.Centre.X, Box.Centre.Y - (ems * Size)) : new(Box.Centre.X + (ems * Size), Box.Centre.Y);

        private Caption FiguresAt(Spot at, Anchor anchor) => new(at, Figures, Size, anchor, Weight.Bold, Upward: Upward);

        private Caption NameAt(Spot at, Anchor anchor) => new(at, Name, NameSize * Size, anchor, Upward: Upward);
    }
}
