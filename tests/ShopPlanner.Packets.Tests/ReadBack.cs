using UglyToad.PdfPig;
using UglyToad.PdfPig.Actions;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Outline;

namespace ShopPlanner.Packets.Tests;

/// <summary>A packet as another library reads it: the oracle for what is really in the file.</summary>
internal sealed class ReadBack : IDisposable
{
    // What stands on every page: the foot line with the bar of known length, and the running head.
    private const double Foot = 72,
        Head = 56;

    private readonly PdfDocument document;

    public ReadBack(byte[] file)
    {
        document = PdfDocument.Open(file);
        Pages = [.. document.GetPages()];
    }

    public IReadOnlyList<Page> Pages { get; }

    public string Title => document.Information.Title ?? "";

    public string Subject => document.Information.Subject ?? "";

    public string Author => document.Information.Author ?? "";

    /// <summary>The words of a page, a blank between two of them.</summary>
    public static string Text(Page page) => string.Join(' ', page.GetWords().Select(word => word.Text));

    /// <summary>All words.</summary>
    public string Text() => string.Join(' ', Pages.Select(Text));

    /// <summary>Titles of the outline with the page that each leads to.</summary>
    public IReadOnlyList<(string Title, int Page)> Outline =>
        document.TryGetBookmarks(out var bookmarks)
            ? [.. bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(node => (node.Title, node.PageNumber))]
            : [];

    /// <summary>The pages that the links of a page lead to.</summary>
    public static IReadOnlyList<int> Links(Page page) =>
        [.. page.GetAnnotations().Select(one => one.Action).OfType<GoToAction>().Select(one => one.Destination.PageNumber)];

    /// <summary>The share of a page's content that is free below the lowest thing on it.</summary>
    public static double Emptiness(Page page)
    {
        var height = page.Height - Foot - Head;
        var lowest = Boxes(page).Select(box => box.Bottom).Where(y => y > Foot).DefaultIfEmpty(page.Height - Head).Min();
        return (lowest - Foot) / height;
    }

    /// <summary>Whether all that is drawn keeps a distance from the paper's edge.</summary>
    public static bool IsWithin(Page page, double margin) =>
        Boxes(page)
            .All(box =>
                box.Left >= margin && box.Bottom >= margin && box.Right <= page.Width - margin && box.Top <= page.Height - margin
            );

    /// <summary>The widest filled shape of a page, in points.</summary>
    public static double WidestFilled(Page page) =>
        page.Paths.Where(path => path.IsFilled).Select(path => path.GetBoundingRectangle()?.Width ?? 0).DefaultIfEmpty(0).Max();

    public void Dispose() => document.Dispose();

    private static IEnumerable<PdfRectangle> Boxes(Page page) =>
        page
            .Letters.Where(letter => letter.Value.Trim().Length > 0)
            .Select(letter => letter.BoundingBox)
            .Concat(page.Paths.Select(path => path.GetBoundingRectangle()).OfType<PdfRectangle>());
}
