using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.UniversalAccessibility;
using ShopPlanner.Packets.Flow;

namespace ShopPlanner.Packets.Pdf;

/// <summary>Tells a reader that speaks what stands on the pages: headings, text, drawings with their words; the frame of each
/// page is left out. The library knows no more of tables than their text in order.</summary>
internal sealed class PdfTags
{
    private readonly StructureBuilder tags;

    /// <summary>Begins the document.</summary>
    public PdfTags(PdfDocument document)
    {
        var manager = UAManager.ForDocument(document);
        manager.SetDocumentLanguage("en-US");
        tags = manager.StructureBuilder;
    }

    /// <summary>Begins text, a heading or the frame of a page.</summary>
    public void Begin(PageRole role)
    {
        if (role == PageRole.Frame)
            tags.BeginArtifact();
        else
            tags.BeginElement(
                role switch
                {
                    PageRole.Heading => PdfBlockLevelElementTag.Heading1,
                    PageRole.Subheading => PdfBlockLevelElementTag.Heading2,
                    _ => PdfBlockLevelElementTag.Paragraph,
                }
            );
    }

    /// <summary>Begins a drawing.</summary>
    public void Figure(string words, XRect area) =>
        tags.BeginElement(PdfIllustrationElementTag.Figure, words.Length > 0 ? words : "Drawing", area);

    /// <summary>Begins text that leads elsewhere.</summary>
    public void Link(PdfLinkAnnotation link, string words) => tags.BeginElement(link, words);

    /// <summary>Ends what was begun last.</summary>
    public void End() => tags.End();
}
