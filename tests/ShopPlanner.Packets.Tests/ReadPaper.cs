using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace ShopPlanner.Packets.Tests;

/// <summary>A straight line that a PDF draws, in millimeters from the upper left corner of the page.</summary>
internal sealed record DrawnLine(double X, double Y, double EndX, double EndY)
{
    public double Long => Math.Sqrt(((EndX - X) * (EndX - X)) + ((EndY - Y) * (EndY - Y)));

    public bool IsLevel => Math.Abs(Y - EndY) < 1e-3;

    public bool IsUpright => Math.Abs(X - EndX) < 1e-3;
}

/// <summary>A letter that a PDF prints, in millimeters from the upper left corner of the page.</summary>
internal sealed record DrawnLetter(string Text, double X, double Y, double EndX, double EndY, double Size);

/// <summary>A rectangle that a PDF fills.</summary>
internal sealed record DrawnBox(double X, double Y, double Wide, double High);

/// <summary>What another library, PdfPig, reads back from a page.</summary>
internal sealed record ReadPage(
    double Wide,
    double High,
    IReadOnlyList<DrawnLine> Lines,
    IReadOnlyList<DrawnBox> Boxes,
    IReadOnlyList<DrawnLetter> Letters,
    string Words
);

/// <summary>Reads PDFs back.</summary>
internal static class ReadPaper
{
    private const double Mm = 25.4 / 72;

    /// <summary>The pages of a file.</summary>
    public static List<ReadPage> Pages(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return [.. document.GetPages().Select(Read)];
    }

    private static ReadPage Read(UglyToad.PdfPig.Content.Page page)
    {
        double Down(double y) => (page.Height - y) * Mm;
        var lines = new List<DrawnLine>();
        var boxes = new List<DrawnBox>();
        foreach (var path in page.Paths)
        foreach (var sub in path)
        {
            if (path.IsFilled && !path.IsStroked && sub.GetBoundingRectangle() is { } box)
                boxes.Add(new(box.Left * Mm, Down(box.Top), box.Width * Mm, box.Height * Mm));
            else
                lines.AddRange(
                    sub.Commands.OfType<PdfSubpath.Line>()
                        .Select(line => new DrawnLine(line.From.X * Mm, Down(line.From.Y), line.To.X * Mm, Down(line.To.Y)))
                );
        }

        var letters = page
            .Letters.Where(letter => letter.Value.Trim().Length > 0)
            .Select(letter =>
            {
                var box = letter.BoundingBox;
                double[] xs = [box.TopLeft.X, box.TopRight.X, box.BottomLeft.X, box.BottomRight.X];
                double[] ys = [box.TopLeft.Y, box.TopRight.Y, box.BottomLeft.Y, box.BottomRight.Y];
                return new DrawnLetter(
                    letter.Value,
                    xs.Min() * Mm,
                    Down(ys.Max()),
                    xs.Max() * Mm,
                    Down(ys.Min()),
                    letter.PointSize
                );
            })
            .ToList();
        return new(
            page.Width * Mm,
            page.Height * Mm,
            lines,
            boxes,
            letters,
            string.Concat(page.Letters.Select(one => one.Value))
        );
    }
}
