using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Counting;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Workings;

/// <summary>The rows of a parts list as parts to be added up. What a row doesn't say, which faces get a finish and which strips
/// make a panel, is taken from the project's design where the row is a part of it.</summary>
internal sealed class RowParts(ImmutableArray<PartRow> rows, LengthUnit unit, MaterialIndex materials)
{
    /// <summary>All rows that can be read; the design's parts where there are no rows.</summary>
    /// <param name="piece">The project's design, worked out; null where it has none.</param>
    public TakenParts With(Piece? piece)
    {
        var whole = piece is null ? null : PieceParts.Of(piece);
        if (rows.IsEmpty)
            return whole ?? new TakenParts([], [], null) { Left = ["The parts list is empty."] };
        var read = rows.Select(Read).OfType<Sized>().ToList();
        var glued = whole is null ? [] : whole.Panels.Where(panel => panel.Strips.Length > 1 && IsListed(panel, piece!)).ToList();
        var strips = glued.SelectMany(panel => panel.PartIds).ToHashSet(StringComparer.Ordinal);
        return new(
            [.. read.Select(row => Count(row, piece))],
            [
                .. glued,
                .. read.Where(row =>
                        row.Material.Form == StockForm.Board && !(IsOf(row.Row, piece) && strips.Contains(Mark(row.Row)))
                    )
                    .Select(row => Panel(row, piece)),
            ],
            whole?.Standing
        )
        {
            Left = [.. Unread(read)],
        };
    }

    private IEnumerable<string> Unread(IReadOnlyList<Sized> read)
    {
        var left = rows.Except(read.Select(row => row.Row)).Select(Name).ToList();
        if (left.Count > 0)
            yield return $"Not counted: {string.Join(", ", left)}. Fix what is marked in the parts list first.";
    }

    // A part wider than its board cannot be cut, but it can be glued up: it is read for that.
    private Sized? Read(PartRow row)
    {
        if (row.Part is { } part)
            return new(
                row,
                materials[part.Material],
                part.FinishedLength ?? part.Length,
                part.FinishedWidth ?? part.Width,
                part.Quantity
            );
        if (
            row.Faults is not [{ Field: nameof(PartTexts.Width) }]
            || materials.FindTyped(row.Texts.Material) is not { Width: { } board } material
            || LengthText.ParsePositive(row.Texts.Width, unit) is not { Ok: true } width
            || width.Value <= board
        )
            return null;
        var length = LengthText.ParsePositive(row.Texts.Length, unit).Value;
        return new(row, material, length, width.Value, Quantity(row.Texts.Quantity));
    }

    // Read before without a fault: an empty cell means one.
    private static int Quantity(string text) =>
        text.Trim().Length == 0 ? 1 : int.Parse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture);

    private static CountedPart Count(Sized row, Piece? piece) =>
        new(
            Name(row.Row),
            row.Quantity,
            row.Length,
            row.Width,
            row.Material.Thickness,
            Material(row, piece),
            Faces(row.Row, piece)
        );

    private static SolidPanel Panel(Sized row, Piece? piece) =>
        new(Name(row.Row), row.Quantity, row.Width, row.Length, row.Material.Thickness, Material(row, piece), [row.Width]);

    private static FinishFaces Faces(PartRow row, Piece? piece) =>
        PartOf(row, piece) is { } part ? FinishFaces.Of(part.FacesToFinish) : FinishFaces.NotSaid;

    // What the design says of its own material counts while the row keeps to it.
    private static CountedMaterial Material(Sized row, Piece? piece)
    {
        var designed = PartOf(row.Row, piece)?.Material;
        return row.Material.Counted(designed?.Id == row.Material.Id ? designed.Species : null);
    }

    private static bool IsOf(PartRow row, Piece? piece) => PartOf(row, piece) is not null;

    // A row that was made from the design keeps its letter and its name.
    private static PiecePart? PartOf(PartRow row, Piece? piece) =>
        piece?.Parts.FirstOrDefault(part =>
            part.Id == Mark(row) && string.Equals(part.Name, row.Texts.Name.Trim(), StringComparison.OrdinalIgnoreCase)
        );

    private bool IsListed(SolidPanel panel, Piece piece) =>
        panel.PartIds.All(id => rows.Any(row => Mark(row) == id && IsOf(row, piece)));

    private static string Mark(PartRow row) => PartMarks.Plain(row.Texts.Mark);

    private static string Name(PartRow row) => row.Texts.Name.Trim() is { Length: > 0 } name ? name : "part " + Mark(row);

    private sealed record Sized(PartRow Row, StoredMaterial Material, Length Length, Length Width, int Quantity);
}
