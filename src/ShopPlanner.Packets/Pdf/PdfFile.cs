using PdfSharp.Pdf;
using ShopPlanner.Packets.Flow;

namespace ShopPlanner.Packets.Pdf;

/// <summary>What a file says of itself.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Subject">What it is.</param>
/// <param name="Date">Its date.</param>
/// <param name="Seed">Tells files of one title and date apart.</param>
internal sealed record FileFacts(string Title, string Subject, DateOnly Date, string Seed);

/// <summary>Writes pages as a PDF file: tagged, with an outline and links. Everything that the library would make up by chance or
/// by the clock is set here.</summary>
internal static class PdfFile
{
    private const int MostTitle = 300;

    /// <summary>Writes the file; the stream stays open.</summary>
    public static void Write(FileFacts facts, IReadOnlyList<Page> pages, Stream stream)
    {
        using var document = new PdfDocument();
        Describe(document, facts);
        var (tags, targets, sheets) = (new PdfTags(document), Targets(pages), new List<PdfPage>());
        // Tags are written to the page that was added last.
        foreach (var page in pages)
        {
            sheets.Add(Sheet(document, page));
            new PdfSheet(sheets[^1], tags, targets).Draw(page);
        }

        Outline(document, pages, sheets);
        using var made = new MemoryStream();
        document.Save(made, closeStream: false);
        stream.Write(Repeatable.Make(made.ToArray(), facts));
    }

    private static void Describe(PdfDocument document, FileFacts facts)
    {
        document.Info.Title = facts.Title.Length > MostTitle ? facts.Title[..MostTitle] : facts.Title;
        document.Info.Subject = facts.Subject;
        document.Info.Creator = "Shop Planner";
        document.Info.CreationDate = document.Info.ModificationDate = facts.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.PageMode = PdfPageMode.UseOutlines;
    }

    private static PdfPage Sheet(PdfDocument document, Page page)
    {
        var sheet = document.AddPage();
        sheet.Width = PdfSharp.Drawing.XUnit.FromPoint(page.Width);
        sheet.Height = PdfSharp.Drawing.XUnit.FromPoint(page.Height);
        return sheet;
    }

    private static Dictionary<string, (int Page, double Y)> Targets(IReadOnlyList<Page> pages)
    {
        var targets = new Dictionary<string, (int, double)>(StringComparer.Ordinal);
        foreach (var (index, page) in pages.Index())
        foreach (var mark in page.Bookmarks)
            targets.TryAdd(mark.Title, (index + 1, mark.Y));
        return targets;
    }

    private static void Outline(PdfDocument document, IReadOnlyList<Page> pages, List<PdfPage> sheets)
    {
        PdfOutline? above = null;
        foreach (var (page, sheet) in pages.Zip(sheets))
        foreach (var mark in page.Bookmarks)
        {
            var entry = new PdfOutline(mark.Title, sheet, true)
            {
                PageDestinationType = PdfPageDestinationType.Xyz,
                Left = 0,
                Top = page.Height - mark.Y,
            };
            if (mark.IsWithin && above is not null)
                above.Outlines.Add(entry);
            else
                document.Outlines.Add(above = entry);
        }
    }
}
