using System.Security;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>The outline of a flat part at full size (SVG 1.1, one user unit a millimetre): to print as a template, or to give
/// to a machine that cuts by outlines. Its length, so its grain, runs from left to right; a part with a notch lies with its
/// lower end at the left and its front edge at the top. Turned over, it is the other hand's. Holes in its faces are circles;
/// where cuts run into each other the outline is that of the blank, and its title says so.</summary>
public static class PartSvg
{
    // Room for the line itself, so that nothing of it is cut off at the edge of the page.
    private static readonly Length Margin = Length.FromMillimetres(5);

    /// <summary>The drawing.</summary>
    /// <param name="part">A part; its finished size is drawn, tongues included, less what is cut out right through.</param>
    public static string Write(PiecePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var (dx, dy) = (part.Length.Value, part.Width.Value);
        var (start, wide, high) = (Text(-Margin), Text(dx + (Margin * 2)), Text(dy + (Margin * 2)));
        return $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{wide}mm" height="{high}mm" viewBox="{start} {start} {wide} {high}">
              <title>{SecurityElement.Escape(Plain(part.Id + " " + part.Name))}{Blank(part)}</title>
              <{Outline(part, dx, dy)} fill="none" stroke="#000000" stroke-width="0.1"/>{Holes(part)}
            </svg>

            """.ReplaceLineEndings("\n");
    }

    private static string Outline(PiecePart part, Length dx, Length dy) =>
        part.Copies.FirstOrDefault() is { } copy && PartOutline.Path(copy) is { } path
            ? $"path d=\"{path}\""
            : $"rect x=\"0\" y=\"0\" width=\"{Text(dx)}\" height=\"{Text(dy)}\"";

    private static string Blank(PiecePart part) =>
        part.Copies.FirstOrDefault() is { } copy && PartOutline.IsCut(copy) && PartOutline.Path(copy) is null
            ? ": blank, its cuts are not drawn"
            : "";

    private static string Holes(PiecePart part) =>
        part.Copies.FirstOrDefault() is { } copy
            ? string.Concat(
                PartOutline
                    .Holes(copy)
                    .Select(hole =>
                        $"\n  <circle cx=\"{Text(hole.X)}\" cy=\"{Text(hole.Y)}\" r=\"{Text(hole.Radius)}\" fill=\"none\" "
                        + "stroke=\"#000000\" stroke-width=\"0.1\"/>"
                    )
            )
            : "";

    private static string Text(Length length) => OutlinePen.Text(length);

    // XML 1.0 has no place for control characters, however they are written.
    private static string Plain(string text) =>
        string.Concat(text.Select(c => char.IsControl(c) || c is '\uFFFE' or '\uFFFF' ? ' ' : c));
}
