using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A link of a chain on the page.</summary>
/// <param name="From">The lesser end: x of a chain across, y of one up.</param>
/// <param name="To">The greater end.</param>
/// <param name="Words">The figure.</param>
internal readonly record struct RowLink(double From, double To, string Words)
{
    public double Middle => (From + To) / 2;
}

/// <summary>
/// A row of dimensions at the left of a view or below it. A figure stands on its line; where the link is too short for that, it
/// lies level beyond the row, with a leader. Leaders keep the order of their links, so that none crosses another.
/// </summary>
internal sealed class ChainRow
{
    // Between a figure and its ticks, from the line to where leaders turn, between figures that lie beyond, and from the ends.
    private const double Air = 4,
        Turn = 7,
        Between = 5,
        End = 1.5;

    // In sizes of the type: from where the row begins to its line, across and up; a figure's height with air.
    private const double ToLine = 1.45,
        ToUprightLine = 0.8,
        Level = 1.15,
        Upright = 1.35;

    private readonly Run run;
    private readonly ImmutableArray<RowLink> links;
    private readonly double size;

    public ChainRow(Run run, IEnumerable<RowLink> links, double size)
    {
        (this.run, this.links, this.size) = (run, [.. links.OrderBy(one => one.From)], size);
    }

    /// <summary>From where a row begins to its line.</summary>
    public static double LineAt(Run run, double size) => size * (run == Run.Across ? ToLine : ToUprightLine);

    /// <summary>Whether the figures that lie beyond the row find room beside each other.</summary>
    public bool HasRoom => Lifted.Sum(one => Wide(one)) <= links[^1].To - links[0].From - (2 * End);

    /// <summary>How much room the row takes, from where it begins.</summary>
    public double Depth => run == Run.Across ? (size * ToLine) + Below : (size * (ToUprightLine + Upright)) + Beside;

    /// <summary>The most that any row takes of these figures.</summary>
    public static double Most(Run run, IEnumerable<string> words, double size) =>
        run == Run.Across
            ? (size * (ToLine + Level)) + Turn
            : (size * (ToUprightLine + Upright)) + Turn + words.Max(one => Width(one, size)) + End;

    /// <summary>The dimensions.</summary>
    /// <param name="begin">Where the row begins: y across, x up.</param>
    /// <param name="edge">Where extension lines come from.</param>
    public IEnumerable<Shape> Draw(double begin, double edge)
    {
        var at = run == Run.Across ? begin + LineAt(run, size) : begin - LineAt(run, size);
        var lifted = Lifted.ToList();
        var places = Callouts.Spread(
            [.. lifted.Select(one => one.Middle)],
            [.. lifted.Select(Wide)],
            links[0].From + End,
            links[^1].To - End
        );
        var next = 0;
        foreach (var link in links)
        {
            var dimension = new Dimension(run, link.From, link.To, at, edge, link.Words, size) { IsAbove = true };
            yield return Fits(link) ? dimension : Led(dimension, link, at, places[next++]);
        }
    }

    private IEnumerable<RowLink> Lifted => links.Where(one => !Fits(one));

    private double Below => Lifted.Any() ? Turn + (size * Level) : Air;

    private double Beside => Lifted.Any() ? Turn + Lifted.Max(one => Width(one.Words, size)) + End : 0;

    private bool Fits(RowLink link) => Width(link.Words, size) + Air <= link.To - link.From;

    private double Wide(RowLink link) => run == Run.Across ? Width(link.Words, size) + Between : size * Level;

    private Dimension Led(Dimension dimension, RowLink link, double at, double place)
    {
        if (run == Run.Across)
            return dimension with
            {
                Leader = [new(link.Middle, at), new(link.Middle, at + 2), new(place, at + Turn)],
                FigureAt = new(place, at + Turn + (size * Level / 2)),
            };
        var turn = at - (size * Upright);
        return dimension with
        {
            Leader = [new(at, link.Middle), new(turn, link.Middle), new(turn - Turn + End, place)],
            FigureAt = new(turn - Turn - (Width(link.Words, size) / 2), place),
        };
    }

    private static double Width(string words, double size) => Typeface.Width(words, Weight.Medium, size);
}
