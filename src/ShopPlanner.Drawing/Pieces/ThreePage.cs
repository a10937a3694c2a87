using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Three flat views in line with each other, at one scale.</summary>
internal sealed class ThreePage
{
    private const double Margin = 6,
        NameHeight = 1.6;

    private readonly Piece piece;
    private readonly PieceRoom room;
    private readonly string? highlight;
    private readonly int parts;
    private readonly Sight front;
    private readonly Sight end;
    private readonly Sight plan;
    private readonly DimensionRows left;
    private readonly DimensionRows below;
    private readonly DimensionRows deep;

    /// <summary>Sees the three sides.</summary>
    /// <param name="piece">What.</param>
    /// <param name="shown">Its parts.</param>
    /// <param name="room">The page.</param>
    /// <param name="highlight">Mark of a copy, or letter of a part; null for none.</param>
    public ThreePage(Piece piece, ImmutableArray<ShownPart> shown, PieceRoom room, string? highlight)
    {
        (this.piece, this.room, this.highlight, parts) = (piece, room, highlight, shown.Length);
        front = new(piece, shown, ViewFrom.Front);
        end = new(piece, shown, ViewFrom.Right);
        plan = new(piece, shown, ViewFrom.Above);
        var sizes = new ViewSizes(piece, shown, front.Bores);
        left = new(piece, Run.Up, Axis.Z, room, sizes.Chains(ViewFrom.Front, Axis.Z, 2, isOnly: true));
        below = new(piece, Run.Across, Axis.X, room, sizes.Chains(ViewFrom.Front, Axis.X, 2));
        deep = new(piece, Run.Across, Axis.Y, room, sizes.Chains(ViewFrom.Right, Axis.Y, 2));
    }

    /// <summary>Draws them.</summary>
    public LineDrawing Draw(string title)
    {
        var isRounded = left.IsRounded || below.IsRounded || deep.IsRounded;
        var foot = new TitleBlock(room, piece.Unit, isRounded, title, [.. front.Bores.Notes(Kinds)]);
        var least = Fit(left.Most, Math.Max(below.Most, deep.Most), foot.Height);
        var (up, across, back) = (left.Settled(least.PerMm), below.Settled(least.PerMm), deep.Settled(least.PerMm));
        var scale = Fit(up.Depth(least.PerMm), Math.Max(across.Depth(least.PerMm), back.Depth(least.PerMm)), foot.Height);
        var (perMm, beside) = (scale.PerMm, up.Depth(scale.PerMm));
        var (wide, depth) = (front.Wide * perMm, end.Wide * perMm);
        var x = beside + ((room.Width - beside - wide - depth - (2 * Column) - Margin) / 2);
        var planView = new FlatView(plan, room, perMm, new(x, Margin + Row));
        var frontView = new FlatView(front, room, perMm, new(x, planView.Outline.Bottom + Name + Row));
        var endView = new FlatView(end, room, perMm, new(x + wide + Column + Margin, frontView.Outline.Y));
        var (one, other) = (frontView.Outline, endView.Outline);
        var names = one.Bottom + Math.Max(across.Depth(perMm), back.Depth(perMm));
        return new(
            title,
            FormattableString.Invariant($"{piece.Name}, {parts} parts: front, right side and top."),
            room.Width,
            names + Name + foot.Height + Margin,
            [
                .. Seen(planView),
                Named(planView.Outline, planView.Outline.Bottom, "Top"),
                .. Seen(frontView),
                .. across.Draw(one, perMm),
                .. up.Draw(one, perMm),
                Named(one, names, "Front"),
                .. Seen(endView),
                .. back.Draw(other, perMm),
                Named(other, names, "Right side"),
                .. foot.Draw(names + Name, scale),
            ]
        );
    }

    // How joints are cut the drawings of the joints tell, beside this one on paper.
    private HashSet<BoreKind> Kinds =>
        new[] { front, end, plan }.SelectMany(one => one.Holes).Select(one => one.Bore.Kind).ToHashSet();

    private double Column => Callouts.Column(room.RingType);

    private double Row => Callouts.Row(room.RingType);

    private double Name => room.NoteType * NameHeight;

    private IEnumerable<Shape> Seen(FlatView view) => [.. view.Wood(highlight), .. view.Marks(true, true).Draw()];

    private PieceScale Fit(double beside, double below, double foot) =>
        PieceScale.Fit(
            front.Wide + end.Wide,
            front.High + plan.High,
            room.Width - beside - (2 * Column) - (3 * Margin),
            room.Height - below - (2 * Row) - (2 * Name) - foot - (2 * Margin),
            room.WholeScale
        );

    private Caption Named(Box outline, double top, string words) =>
        new(new(outline.Centre.X, top + (Name / 2)), words, room.NoteType, Anchor.Middle, Lettering.Weight.Bold);
}
