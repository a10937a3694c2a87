using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>One step on paper: box, number and title, the picture at the left, the words beside it; what has no room there
/// follows below and may go over to the next page.</summary>
internal sealed class StepBlock
{
    private const double Side = 9.5,
        Indent = 16,
        TitleSize = 12,
        Size = 9.5,
        FigureSize = 13,
        CautionSize = 8.5,
        Leading = 1.3,
        Gap = 8,
        After = 8;
    private const int MostMarks = 24,
        MostBeside = 400,
        MostLines = 16,
        PlainLines = 10;

    private readonly PageFlow flow;
    private readonly PacketStep step;
    private readonly IReadOnlyList<string> title;
    private readonly List<TextLine> beside = [];
    private readonly List<Said> below = [];

    /// <summary>Sets a step.</summary>
    /// <param name="flow">Where it goes.</param>
    /// <param name="step">The step.</param>
    /// <param name="said">Cautions that were printed in full, each with the number of its step.</param>
    public StepBlock(PageFlow flow, PacketStep step, Dictionary<string, int> said)
    {
        (this.flow, this.step) = (flow, step);
        title = Wrap($"{Words.Of(step.Number)}. {step.Title}", Weight.Bold, TitleSize, flow.Width - Indent, 3);
        foreach (var words in Saids(said))
            Place(words);
        Height = TitleHeight + Math.Max(PictureHeight, BesideHeight) + After;
    }

    /// <summary>Of what is not split.</summary>
    public double Height { get; }

    /// <summary>The height that a step's beginning needs.</summary>
    public static double HeightOf(PageFlow flow, PacketStep step) => new StepBlock(flow, step, []).Height;

    /// <summary>Adds it.</summary>
    public void Add()
    {
        flow.Add(Height, y => [.. Head(y), .. Body(y + TitleHeight)]);
        foreach (var said in below)
            flow.Paragraph(TextFit.Clean(said.Words, said.Weight), said.Size, said.Weight, said.Tone);
        if (below.Count > 0)
            flow.Space(After);
    }

    private double TitleHeight => (title.Count * TitleSize * Leading) + 3;

    private double PictureHeight => step.Picture is { } picture ? picture.Height : 0;

    private double BesideHeight => beside.Sum(line => line.Height);

    private double TextLeft =>
        flow.Left + (step.Picture is null ? Indent : (flow.Width * WorkSheets.PictureShare) + PieceSheets.Gutter);

    private double TextWidth => flow.Left + flow.Width - TextLeft;

    private IEnumerable<Shape> Head(double y)
    {
        yield return new Frame(Stroke.Ring, new(flow.Left, y + 3, Side, Side), 1);
        foreach (var (i, line) in title.Index())
            yield return new Caption(
                new(flow.Left + Indent, y + ((i + 0.5) * TitleSize * Leading)),
                line,
                TitleSize,
                Weight: Weight.Bold
            );
    }

    private IEnumerable<Shape> Body(double y)
    {
        if (step.Picture is { } picture)
            foreach (var shape in picture.Primitives())
                yield return shape.Moved(flow.Left, y);
        foreach (var line in beside)
        {
            yield return new Caption(
                new(TextLeft, y + (line.Height / 2)),
                line.Words,
                line.Of.Size,
                Weight: line.Of.Weight,
                Tone: line.Of.Tone
            );
            y += line.Height;
        }
    }

    // Beside the picture as long as it has room there; a long text never, since it may be longer than a page.
    private void Place(Said said)
    {
        var room = step.Picture is null ? PlainLines * Size * Leading : PictureHeight - Gap;
        if (below.Count > 0 || said.Words.Length > MostBeside || BesideHeight > room)
        {
            below.Add(said);
            return;
        }

        foreach (var line in Wrap(said.Words, said.Weight, said.Size, TextWidth, MostLines))
            beside.Add(new(line, said));
    }

    private IEnumerable<Said> Saids(Dictionary<string, int> said)
    {
        if (!step.Marks.IsEmpty)
            yield return new(Marks, Size, Weight.Medium, Tone.Faded);
        foreach (var words in step.Says)
            yield return new(words, Size);
        foreach (var figure in step.Figures)
            yield return new(figure, FigureSize, Weight.Bold);
        foreach (var fact in step.Facts)
            yield return new(fact, Size, Weight.Medium);
        if (step.Check.Length > 0)
            yield return new("Check: " + step.Check, Size);
        foreach (var caution in step.Cautions)
            yield return new("Safety: " + Caution(caution, said), CautionSize);
        if (step.Note.Length > 0)
            yield return new("Note: " + step.Note, Size);
    }

    private string Marks => step.Marks.Length > MostMarks ? Words.Of(step.Marks) : Words.All(step.Marks);

    // In full where it comes first: read ten times, it is read no more.
    private string Caution(string words, Dictionary<string, int> said)
    {
        if (said.TryGetValue(words, out var first) && first != step.Number)
            return $"as in step {Words.Of(first)}.";
        said[words] = step.Number;
        return words;
    }

    private static IReadOnlyList<string> Wrap(string words, Weight weight, double size, double width, int most) =>
        TextFit.Wrap(TextFit.Clean(words, weight), weight, size, width, most);

    private sealed record Said(string Words, double Size, Weight Weight = Weight.Regular, Tone Tone = Tone.Ink);

    private sealed record TextLine(string Words, Said Of)
    {
        public double Height => Of.Size * Leading;
    }
}
