using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>One step in a column: box, number and title, the picture at the left, the words beside and below it. What is longer
/// than the first block follows line by line and may go over to the next column.</summary>
internal static class StepBlocks
{
    /// <summary>Most that a picture takes of a column's width.</summary>
    public const double PictureShare = 0.34;

    private const double Side = 8.5,
        Indent = 14,
        TitleSize = 9.5,
        FigureSize = 9.5,
        Leading = 1.19,
        Gap = 6,
        Before = 5.5;
    private const int MostMarks = 24,
        MostTogether = 7,
        MostTitle = 240,
        // More than a line ever holds.
        MostAhead = 240;

    /// <summary>The blocks of a step.</summary>
    /// <param name="step">The step.</param>
    /// <param name="width">Of the column.</param>
    /// <param name="said">Cautions that were printed in full, each with the number of its step.</param>
    public static IEnumerable<Block> Of(PacketStep step, double width, Dictionary<string, int> said)
    {
        var title = Title(step, width);
        var lines = Lines([.. Saids(step, said)], step.Picture, width);
        var together = Math.Max(lines.Count(line => line.IsBeside), MostTogether);
        var (first, rest) = (lines.Take(together).ToList(), lines.Skip(together).ToList());
        var height = title.Height + Math.Max(step.Picture?.Height ?? 0, first.Sum(line => line.Height));
        yield return new Block(height, at => [.. title.Draw(at), .. Body(step, first, at with { Y = at.Y + title.Height })])
        {
            Before = Before,
            Keep = rest.Count > 0,
        };
        foreach (var (i, line) in rest.Index())
            yield return new Block(line.Height, at => [line.At(at)]) { Keep = i == rest.Count - 2 };
    }

    private static Block Title(PacketStep step, double width)
    {
        var words = $"{Words.Of(step.Number)}. {step.Title}";
        var text = Blocks.Paragraph(
            words.Length > MostTitle ? words[..MostTitle] + "…" : words,
            width - Indent,
            size: TitleSize,
            weight: Weight.Bold
        );
        return new(
            text.Height + 1.5,
            at => [new Frame(Stroke.Ring, new(at.X, at.Y + 2, Side, Side), 1), .. text.Draw(at with { X = at.X + Indent })]
        );
    }

    private static IEnumerable<Shape> Body(PacketStep step, IReadOnlyList<SetLine> lines, Spot at)
    {
        if (step.Picture is { } picture)
            yield return PageFigure.Of(picture, at);
        foreach (var line in lines)
        {
            yield return line.At(at);
            at = at with { Y = at.Y + line.Height };
        }
    }

    // Beside the picture as long as it has room there, below it over the whole width.
    private static List<SetLine> Lines(IReadOnlyList<Said> said, LineDrawing? picture, double width)
    {
        var (lines, y) = (new List<SetLine>(), 0.0);
        var beside = picture is null ? 0 : picture.Width + Gap;
        foreach (var one in said)
        {
            var rest = TextFit.Clean(one.Words, one.Weight);
            while (rest.Length > 0)
            {
                var isBeside = picture is not null && y < picture.Height - 2;
                var indent = isBeside ? beside : 0;
                var ahead = rest.Length > MostAhead ? rest[..MostAhead] : rest;
                var line = TextFit.Wrap(ahead, one.Weight, one.Size, width - indent)[0];
                rest = rest[line.Length..].TrimStart();
                lines.Add(new(one, line, indent, isBeside));
                y += one.Size * Leading;
            }
        }

        return lines;
    }

    private static IEnumerable<Said> Saids(PacketStep step, Dictionary<string, int> said)
    {
        if (!step.Marks.IsEmpty)
            yield return new(Marks(step), Weight.Medium, Tone.Faded);
        if (!step.Says.IsEmpty)
            yield return new(string.Join(' ', step.Says));
        foreach (var figure in step.Figures)
            yield return new(figure, Weight.Bold) { Size = FigureSize };
        var facts = string.Join(". ", step.Setup.Concat(step.Facts).Select(fact => fact.TrimEnd('.')));
        if (facts.Length > 0)
            yield return new(facts + ".", Weight.Medium);
        if (step.Check.Length > 0)
            yield return new("Check: " + step.Check);
        foreach (var caution in step.Cautions.Select(words => Caution(step, words, said)).Distinct())
            yield return new("Safety: " + caution);
        if (step.Note.Length > 0)
            yield return new("Note: " + step.Note);
    }

    private static string Marks(PacketStep step) => step.Marks.Length > MostMarks ? Words.Of(step.Marks) : Words.All(step.Marks);

    // In full where it comes first: read ten times, it is read no more.
    private static string Caution(PacketStep step, string words, Dictionary<string, int> said)
    {
        if (said.TryGetValue(words, out var first) && first != step.Number)
            return $"as in step {Words.Of(first)}.";
        said[words] = step.Number;
        return words;
    }

    private sealed record Said(string Words, Weight Weight = Weight.Regular, Tone Tone = Tone.Ink)
    {
        public double Size { get; init; } = Blocks.TextSize;
    }

    private sealed record SetLine(Said Of, string Words, double Indent, bool IsBeside)
    {
        public double Height => Of.Size * Leading;

        public Caption At(Spot at) =>
            new(new(at.X + Indent, at.Y + (Height / 2)), Words, Of.Size, Weight: Of.Weight, Tone: Of.Tone);
    }
}
