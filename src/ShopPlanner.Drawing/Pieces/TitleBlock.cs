using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>What stands below a view: what is seen and from where, the scale and the unit, and how joints and holes are
/// cut.</summary>
internal sealed class TitleBlock
{
    private const double LineHeight = 1.5,
        Tick = 3,
        Air = 6,
        Margin = 6,
        ShortestBar = 24,
        LongestBar = 90;
    private const int MostLines = 6,
        MostOnPhone = 5;

    // Lengths of a scale bar, the longest that fits.
    private static readonly (Length Size, string Words)[] InchBars =
    [
        (Length.FromFeet(4), "4 ft"),
        (Length.FromFeet(2), "2 ft"),
        (Length.FromFeet(1), "1 ft"),
        (Length.FromInches(6), "6 in"),
        (Length.FromInches(3), "3 in"),
        (Length.FromInches(1), "1 in"),
    ];

    private static readonly (Length Size, string Words)[] MillimetreBars =
    [
        .. new[] { 1000, 500, 200, 100, 50, 20 }.Select(mm => (Length.FromMillimetres(mm), $"{mm} mm")),
    ];

    private readonly PieceRoom room;
    private readonly LengthUnit unit;
    private readonly bool isRounded;
    private readonly ImmutableArray<string> name;
    private readonly ImmutableArray<string> notes;

    /// <summary>Breaks the lines.</summary>
    /// <param name="room">The page.</param>
    /// <param name="unit">Of the figures.</param>
    /// <param name="isRounded">Whether a figure of the view is rounded.</param>
    /// <param name="name">What is seen, and from where.</param>
    /// <param name="notes">Sentences about joints and holes.</param>
    public TitleBlock(PieceRoom room, LengthUnit unit, bool isRounded, string name, IReadOnlyCollection<string> notes)
    {
        (this.room, this.unit, this.isRounded) = (room, unit, isRounded);
        this.name = Lines(name, 2);
        this.notes = notes.Count == 0 ? [] : Lines(string.Join(" ", notes), room.IsNarrow ? MostOnPhone : MostLines);
    }

    /// <summary>How high it is.</summary>
    public double Height => (name.Length + 1 + notes.Length) * room.NoteType * LineHeight;

    /// <summary>The texts and the scale bar.</summary>
    /// <param name="top">Where it begins.</param>
    /// <param name="scale">Of the drawing.</param>
    public IEnumerable<Shape> Draw(double top, PieceScale scale)
    {
        var (y, middle) = (top + (room.NoteType * LineHeight / 2), room.Width / 2);
        foreach (var line in name)
        {
            yield return new Caption(new(middle, y), line, room.NoteType, Anchor.Middle, Weight.Bold);
            y += room.NoteType * LineHeight;
        }

        foreach (var shape in Scale(y, scale))
            yield return shape;
        foreach (var line in notes)
        {
            y += room.NoteType * LineHeight;
            yield return new Caption(new(middle, y), line, room.NoteType, Anchor.Middle, Weight.Regular, Tone.Faded);
        }
    }

    // A whole scale is true on paper; elsewhere a bar grows and shrinks with the drawing.
    private IEnumerable<Shape> Scale(double y, PieceScale scale)
    {
        var note = scale.Note(unit, isRounded);
        if (scale.Whole is not null || Bar(scale) is not { } bar)
            return [Note(room.Width / 2, Anchor.Middle, note, y)];
        var (wide, label) = (scale.Of(bar.Size), Width(bar.Words));
        var left = (room.Width - wide - label - Width(note) - (3 * Air)) / 2;
        var right = left + wide;
        return
        [
            new Line(Stroke.Thin, new(left, y), new(right, y)),
            new Line(Stroke.Thin, new(left, y - Tick), new(left, y + Tick)),
            new Line(Stroke.Thin, new(right, y - Tick), new(right, y + Tick)),
            Note(right + Air, Anchor.Start, bar.Words, y),
            Note(right + label + (3 * Air), Anchor.Start, note, y),
        ];
    }

    private (Length Size, string Words)? Bar(PieceScale scale) =>
        (unit == LengthUnit.Inch ? InchBars : MillimetreBars)
            .Where(one => scale.Of(one.Size) is >= ShortestBar and <= LongestBar)
            .Select(one => ((Length, string)?)one)
            .FirstOrDefault();

    private Caption Note(double x, Anchor anchor, string words, double y) =>
        new(new(x, y), words, room.NoteType, anchor, Weight.Regular, Tone.Faded);

    private ImmutableArray<string> Lines(string words, int most) =>
        [.. TextFit.Wrap(words, Weight.Bold, room.NoteType, room.Width - (2 * Margin), most)];

    private double Width(string words) => Typeface.Width(words, Weight.Regular, room.NoteType);
}
