using PdfSharp.Drawing;
using PdfSharp.Pdf;
using ShopPlanner.Packets.Flow;

namespace ShopPlanner.Packets.Pdf;

/// <summary>What a file says of itself.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Date">Its date.</param>
/// <param name="Seed">Tells files of one title and date apart.</param>
internal sealed record FileFacts(string Title, DateOnly Date, string Seed);

/// <summary>Writes pages as a PDF file. Everything that the library would make up by chance or by the clock is set
/// here.</summary>
internal static class PdfFile
{
    /// <summary>Writes the file; the stream stays open.</summary>
    public static void Write(FileFacts facts, IReadOnlyList<Page> pages, Stream stream)
    {
        using var document = new PdfDocument();
        document.Info.Title = facts.Title.Length > 300 ? facts.Title[..300] : facts.Title;
        document.Info.Creator = "Shop Planner";
        document.Info.CreationDate = document.Info.ModificationDate = facts.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        foreach (var page in pages)
            Add(document, page);
        using var made = new MemoryStream();
        document.Save(made, closeStream: false);
        stream.Write(Repeatable.Make(made.ToArray(), facts));
    }

    private static void Add(PdfDocument document, Page page)
    {
        var sheet = document.AddPage();
        sheet.Width = XUnit.FromPoint(page.Drawing.Width);
        sheet.Height = XUnit.FromPoint(page.Drawing.Height);
        using var graphics = XGraphics.FromPdfPage(sheet);
        var pen = new PdfPen(graphics);
        foreach (var shape in page.Drawing.Leaves())
            pen.Draw(shape);
        foreach (var bookmark in page.Bookmarks)
            document.Outlines.Add(bookmark, sheet, true);
    }
}
