using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using ShopPlanner.Drawing;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;

namespace ShopPlanner.Packets.Pdf;

/// <summary>Draws a page into the file: its shapes within their tags, its links.</summary>
/// <param name="sheet">The page of the file.</param>
/// <param name="tags">What is said of what is drawn.</param>
/// <param name="targets">Page, from 1, and place of each bookmark.</param>
internal sealed class PdfSheet(PdfPage sheet, PdfTags tags, IReadOnlyDictionary<string, (int Page, double Y)> targets)
{
    /// <summary>Draws it.</summary>
    public void Draw(Page page)
    {
        using var graphics = XGraphics.FromPdfPage(sheet);
        var pen = new PdfPen(graphics);
        foreach (var group in page.Groups)
            Draw(group, graphics, pen, page.Height);
    }

    private void Draw(PageGroup group, XGraphics graphics, PdfPen pen, double pageHeight)
    {
        tags.Begin(group.Role);
        if (group.Link is { } link)
            Begin(link, group, graphics, pageHeight);
        foreach (var shape in group.Shapes)
            if (shape is PageFigure figure)
                Draw(figure, pen);
            else
                Draw(shape, pen);
        if (group.Link is not null)
            tags.End();
        tags.End();
    }

    private void Begin(PageLink link, PageGroup group, XGraphics graphics, double pageHeight)
    {
        var (number, y) = targets[link.Target];
        var area = new XRect(link.Area.X, link.Area.Y, link.Area.Width, link.Area.Height);
        var place = new PdfRectangle(graphics.Transformer.WorldToDefaultPage(area));
        var words = string.Join(' ', group.Shapes.OfType<Caption>().Select(caption => caption.Words));
        tags.Link(PdfLinkAnnotation.CreateDocumentLink(place, number, new XPoint(0, pageHeight - y)), words);
    }

    private void Draw(PageFigure figure, PdfPen pen)
    {
        tags.Figure(figure.Words, new XRect(figure.Area.X, figure.Area.Y, figure.Area.Width, figure.Area.Height));
        foreach (var shape in figure.Parts)
            Draw(shape, pen);
        tags.End();
    }

    private static void Draw(Shape shape, PdfPen pen)
    {
        foreach (var leaf in new LineDrawing("", "", 0, 0, [shape]).Leaves())
            pen.Draw(leaf);
    }
}
