using System.Collections.Immutable;
using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Pdf;

namespace ShopPlanner.Packets.Templates;

/// <summary>Prints templates at full size.</summary>
public static class TemplateWriter
{
    /// <summary>The most sheets that are printed at one go.</summary>
    public const int MostSheets = 400;

    /// <summary>Writes a PDF. The same templates give the same bytes.</summary>
    /// <param name="templates">In order.</param>
    /// <param name="project">What the parts belong to; the file's title too.</param>
    /// <param name="paper">On which paper.</param>
    /// <param name="date">The file's day.</param>
    /// <param name="stream">Receives the file; left open.</param>
    public static void Write(
        IReadOnlyList<PartTemplate> templates,
        string project,
        PaperSize paper,
        DateOnly date,
        Stream stream
    ) =>
        PdfFile.Write(
            new($"Templates, {project}", "Templates at full size", date, paper.ToString()),
            Pages(templates, project, paper),
            stream
        );

    /// <summary>How many sheets a template takes.</summary>
    public static int Sheets(PartTemplate template, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(template);
        return Tiling.Of(template.Window, paper).Count;
    }

    /// <summary>The pages as drawings in points, before they become a file.</summary>
    public static ImmutableArray<Page> Pages(IReadOnlyList<PartTemplate> templates, string project, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(templates);
        return [.. templates.SelectMany(one => Pages(one, project, paper)).Take(MostSheets)];
    }

    private static IEnumerable<Page> Pages(PartTemplate template, string project, PaperSize paper)
    {
        var tiling = Tiling.Of(template.Window, paper);
        for (var row = 0; row < tiling.Rows; row++)
        for (var column = 0; column < tiling.Columns; column++)
            yield return new(
                tiling.Width,
                tiling.Height,
                [
                    new(PageRole.Text, [.. TemplateHead.Draw(template, project, tiling, column, row)]),
                    new(PageRole.Text, [.. new TemplateTile(template, tiling, column, row).Draw()]),
                ],
                row + column == 0 ? [new($"{template.Part}: {template.Title}", 0, false)] : []
            );
    }
}
