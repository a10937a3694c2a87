using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Puts flat views on a page: one with all its dimensions, or the three beside each other at one scale.</summary>
internal sealed class FlatPage(Piece piece, PieceRoom room, string? highlight)
{
    private const double Margin = 6,
        Free = 4;

    private readonly ImmutableArray<ShownPart> parts = ShownPart.Of(piece);

    private double Column => Callouts.Column(room.RingType);

    private double Row => Callouts.Row(room.RingType);

    /// <summary>One view.</summary>
    /// <param name="side">From where.</param>
    /// <param name="title">Read aloud.</param>
    /// <param name="picks">What can be chosen on a page; null on paper.</param>
    public LineDrawing One(ViewFrom side, string title, PiecePicks? picks = null)
    {
        var sight = new Sight(piece, parts, side);
        var (left, below) = (Rows(sight, Run.Up), Rows(sight, Run.Across));
        var foot = Foot(sight, NameOf(side), left.IsRounded || below.IsRounded);
        // What finds no room at the least scale is left out, so that what is drawn at a larger one has room.
        var least = Fit(sight, left.Most + Column, below.Most + Row + foot.Height);
        (left, below) = (left.Settled(least.PerMm), below.Settled(least.PerMm));
        var tried = new FlatView(sight, room, least.PerMm, default).Marks(mayBeside: true, mayAbove: true);
        var (column, row) = (tried.HasBeside ? Column : Free, tried.HasAbove ? Row : Free);
        var scale = Fit(sight, left.Depth(least.PerMm) + column, below.Depth(least.PerMm) + row + foot.Height);
        var (beside, under) = (left.Depth(scale.PerMm), below.Depth(scale.PerMm));
        var wide = sight.Wide * scale.PerMm;
        var x = beside + ((room.Width - beside - column - wide) / 2);
        var view = new FlatView(sight, room, scale.PerMm, new(x, Margin + row));
        var outline = view.Outline;
        return new(
            title,
            Describe(sight),
            room.Width,
            outline.Bottom + under + foot.Height + Margin,
            [
                .. view.Wood(highlight, picks),
                .. view.Marks(tried.HasBeside, tried.HasAbove).Draw(),
                .. below.Draw(outline, scale.PerMm),
                .. left.Draw(outline, scale.PerMm),
                .. foot.Draw(outline.Bottom + under, scale),
            ]
        );
    }

    /// <summary>The front, the right side at its right, the plan above it: third angle, as ASME Y14.3 has it (from memory). Each
    /// size is given once.</summary>
    public LineDrawing Three(string title) => new ThreePage(piece, parts, room, highlight).Draw(title);

    /// <summary>What is seen, and where its front is.</summary>
    public static string NameOf(ViewFrom side) =>
        side switch
        {
            ViewFrom.Front => "Front",
            ViewFrom.Right => "Right side, seen from the right: front at the left",
            _ => "Top, seen from above: front at the bottom",
        };

    private DimensionRows Rows(Sight sight, Run run)
    {
        var axis = run == Run.Up ? sight.Up : sight.Across;
        var most = run == Run.Up && room.IsNarrow ? 1 : 2;
        return new(piece, run, axis, room, new ViewSizes(piece, parts, sight.Bores).Chains(sight.Side, axis, most));
    }

    private TitleBlock Foot(Sight sight, string name, bool isRounded)
    {
        var kinds = sight.Holes.Select(one => one.Bore.Kind).ToHashSet();
        return new(room, piece.Unit, isRounded, name, [.. sight.Bores.Notes(kinds), .. CutNotes.Of(piece)]);
    }

    private PieceScale Fit(Sight sight, double beside, double above) =>
        PieceScale.Fit(
            sight.Wide,
            sight.High,
            room.Width - beside - (2 * Margin),
            room.Height - above - (2 * Margin),
            room.WholeScale
        );

    private string Describe(Sight sight)
    {
        var (across, up) = (piece.Outside.Extent(sight.Across), piece.Outside.Extent(sight.Up));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{piece.Name}: {PieceScale.Figure(across, piece.Unit)} by {PieceScale.Figure(up, piece.Unit)} "
                + $"{Figures.UnitName(piece.Unit)}, {parts.Length} parts."
        );
    }
}
