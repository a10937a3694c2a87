using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>Says what a template is for and where it is laid on.</summary>
internal sealed class TemplateWords(PieceWork work)
{
    /// <summary>A template for people.</summary>
    public PartTemplate Template(Sheet sheet, int number, ImmutableArray<TemplateUse> uses) =>
        new(
            FormattableString.Invariant($"{number}"),
            sheet.Kind,
            Title(sheet),
            sheet.Piece.Name,
            uses,
            sheet.Window,
            sheet.View.Wide,
            sheet.View.High,
            sheet.Holes,
            sheet.Outline,
            (
                Side(sheet, sheet.View.Left),
                Side(sheet, sheet.View.Right),
                Side(sheet, sheet.View.Top),
                Side(sheet, sheet.View.Bottom)
            ),
            [.. Notes(sheet)]
        );

    /// <summary>Where a copy's template is laid on.</summary>
    public TemplateUse Use(Sheet sheet, SheetTurn turn) =>
        new(sheet.Piece.Mark, Side(sheet, sheet.View.Face), turn, Along(sheet), Across(sheet));

    private static string Title(Sheet sheet) =>
        sheet.Kind switch
        {
            TemplateKind.Pins => $"Shelf pin holes, {sheet.Group}",
            TemplateKind.Cups => sheet.Holes.Length == 1 ? "Hinge cup" : "Hinge cups",
            TemplateKind.Holes => sheet.Holes.Length == 1 ? "Hole" : "Holes",
            TemplateKind.Pull => sheet.Holes.Length == 1 ? "Knob hole" : "Pull holes",
            _ => char.ToUpperInvariant(sheet.Group[0]) + sheet.Group[1..],
        };

    /// <summary>What is cut out of an outline, in words.</summary>
    public static ImmutableArray<string> Of(PartFeature feature) =>
        feature switch
        {
            Notch => ["notch"],
            Corner => ["rounded corner"],
            Arc => ["arc"],
            Taper => ["taper"],
            _ => ["slant"],
        };

    private IEnumerable<string> Notes(Sheet sheet)
    {
        foreach (var same in sheet.Holes.GroupBy(hole => (hole.Diameter, hole.Depth)))
            yield return Hole(same.Count(), same.Key.Diameter, same.Key.Depth, sheet.Kind);
        if (sheet.Kind == TemplateKind.Shape)
            yield return "Cut outside the line, then bring it to the line.";
        if (sheet.Outline.Length > 4)
            yield return "Dashed: the part before it is cut.";
        if (sheet.Kind == TemplateKind.Cups)
            yield return "The hinge's own sheet comes first for the distance from the edge and the depth.";
        if (sheet.Kind == TemplateKind.Pull)
            yield return "Hold your pull against the marks before you drill.";
        if (sheet.Kind == TemplateKind.Pins)
            yield return "Check the first pair of holes with a level before you drill the rest.";
    }

    private string Hole(int count, Length diameter, Length? depth, TemplateKind kind)
    {
        var (what, size) = (count == 1 ? "Hole" : "Holes", Bit(diameter, kind));
        var unit = kind == TemplateKind.Holes ? work.Unit : LengthUnit.Millimetre;
        return depth is { } deep
            ? $"{what} {size}, {LengthFormat.WithUnit(deep, unit)} deep."
            : $"{what} {size}, right through: back up the far side with scrap.";
    }

    // Bits for pins and cups are made in millimeters.
    private string Bit(Length diameter, TemplateKind kind) =>
        LengthFormat.WithUnit(diameter, kind is TemplateKind.Pins or TemplateKind.Cups ? LengthUnit.Millimetre : work.Unit);

    private string Along(Sheet sheet)
    {
        var (window, view) = (sheet.Window, sheet.View);
        if (window.X == Length.Zero || window.EndX == view.Wide)
            return string.Join(
                " and ",
                new[] { (window.X == Length.Zero, view.Left), (window.EndX == view.Wide, view.Right) }
                    .Where(one => one.Item1)
                    .Select(one => Side(sheet, one.Item2))
            );
        return Center(sheet.Holes.Select(hole => hole.At.X), view.Wide) is { } middle
            ? middle
                ? "middle of the length"
                : Distance(First(sheet), view.Left, sheet)
            : Distance(window.X, view.Left, sheet);
    }

    private string Across(Sheet sheet)
    {
        var (window, view) = (sheet.Window, sheet.View);
        if (window.Y == Length.Zero || window.EndY == view.High)
            return string.Join(
                " and ",
                new[] { (window.Y == Length.Zero, view.Top), (window.EndY == view.High, view.Bottom) }
                    .Where(one => one.Item1)
                    .Select(one => Side(sheet, one.Item2))
            );
        return Center(sheet.Holes.Select(hole => hole.At.Y), view.High) is { } middle
            ? middle
                ? "middle of the width"
                : Distance(sheet.Holes.Min(hole => hole.At.Y), view.Top, sheet)
            : Distance(window.Y, view.Top, sheet);
    }

    private static Length First(Sheet sheet) => sheet.Holes.Min(hole => hole.At.X);

    // Whether places lie evenly about the middle of a length; null where there are none.
    private static bool? Center(IEnumerable<Length> places, Length whole)
    {
        var all = places.ToList();
        return all.Count == 0 ? null : Math.Abs((all.Min() + all.Max() - whole).Ticks) <= 2;
    }

    private string Distance(Length from, BoxSide side, Sheet sheet)
    {
        var what =
            sheet.Holes.IsEmpty ? "edge of the sheet"
            : sheet.Holes.Length == 1 ? "hole"
            : "first hole";
        return $"{what} {LengthFormat.WithUnit(from, work.Unit)} from the {Side(sheet, side)}";
    }

    private string Side(Sheet sheet, BoxSide side) =>
        SideWords.Of(sheet.Piece, side.Axis(), side.IsFar(), work.UnitBox(sheet.Piece));
}
