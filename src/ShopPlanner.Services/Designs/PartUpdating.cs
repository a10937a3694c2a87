using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Designs;

/// <summary>Compares the parts of an idea with a parts list: what each row becomes, and which rows go. What a person changed in a
/// row stays.</summary>
internal sealed class PartUpdating
{
    // As many texts of a row are known as undoing is likely to bring back.
    private const int MostSaid = 5;

    private readonly IReadOnlyList<PartTexts> list;
    private readonly ImmutableArray<MadeRow> made;
    private readonly PartTextWriter writer;
    private readonly ImmutableArray<UpdatedRow> rows;

    /// <summary>Compares.</summary>
    /// <param name="list">The parts list.</param>
    /// <param name="made">The rows of it that were made before.</param>
    /// <param name="writer">Writes the idea's parts.</param>
    public PartUpdating(IReadOnlyList<PartTexts> list, ImmutableArray<MadeRow> made, PartTextWriter writer)
    {
        (this.list, this.made, this.writer) = (list, made, writer);
        rows = [.. writer.Rows().Select(Updated)];
    }

    /// <summary>Rows that a person typed.</summary>
    public IEnumerable<PartTexts> Own => list.Where(row => made.All(one => one.Row != row.Id));

    /// <summary>What the rows of the idea's parts become.</summary>
    public IEnumerable<PartTexts> Rows => rows.Select(row => row.After);

    /// <summary>Rows made before whose part is no more.</summary>
    public IEnumerable<PartTexts> Gone =>
        list.Where(row => made.Any(one => one.Row == row.Id) && rows.All(one => one.After.Id != row.Id));

    /// <summary>Returns the rows as they are remembered once they are made; those made earlier too, since undoing may bring them
    /// back.</summary>
    public IEnumerable<MadeRow> Remembered() =>
        rows.Select(row => new MadeRow(row.After.Mark, row.After.Id, Said(row))).Concat(made).DistinctBy(one => one.Row);

    /// <summary>Returns the difference as people read it.</summary>
    public PartsUpdate Difference() =>
        new(
            list.Any(row => made.Any(one => one.Row == row.Id)),
            [
                .. rows.Where(row => row.Before != row.After).Select(Difference),
                .. Gone.Select(row => new RowUpdate(RowChange.Removed, row.Mark, row.Name, Sizes(row, isAfter: false), [])),
            ]
        );

    private RowUpdate Difference(UpdatedRow row) =>
        row.Before is { } before
            ? new(RowChange.Changed, row.After.Mark, row.After.Name, Written(before, row.After), Kept(row))
            : new(RowChange.Added, row.After.Mark, row.After.Name, Sizes(row.After, isAfter: true), []);

    private static ImmutableArray<FieldUpdate> Written(PartTexts before, PartTexts after)
    {
        var fields = RowField.All.Where(field => field.Get(before) != field.Get(after));
        var marks = before.Mark == after.Mark ? Array.Empty<FieldUpdate>() : [new("Mark", before.Mark, after.Mark)];
        return [.. marks, .. fields.Select(field => new FieldUpdate(field.Label, field.Get(before), field.Get(after)))];
    }

    private ImmutableArray<FieldUpdate> Kept(UpdatedRow row) =>
        [
            .. RowField
                .All.Where(field => writer.Meaning(field, row.After) != writer.Meaning(field, row.Design))
                .Select(field => new FieldUpdate(field.Label, field.Get(row.After), field.Get(row.Design))),
        ];

    private static ImmutableArray<FieldUpdate> Sizes(PartTexts row, bool isAfter) =>
        [
            .. RowField
                .All.Where(field => field.Key is "quantity" or "length" or "width" or "material" && field.Get(row).Length > 0)
                .Select(field =>
                    isAfter ? new FieldUpdate(field.Label, "", field.Get(row)) : new(field.Label, field.Get(row), "")
                ),
        ];

    // A row made before for the same letter is changed in its place: plans know it by its id.
    private UpdatedRow Updated(PiecePart part)
    {
        var known = made.FirstOrDefault(one => one.Mark == part.Id && list.Any(row => row.Id == one.Row));
        var before = known is null ? null : list.First(row => row.Id == known.Row);
        var design = writer.Texts(part, before);
        return new(before, design, before is null ? design : Merged(before, design, known!.Said), known);
    }

    // A text that no design wrote is a person's own. Rows of which nothing is known are the design's.
    private PartTexts Merged(
        PartTexts before,
        PartTexts design,
        ImmutableArray<ImmutableSortedDictionary<string, string>> said
    ) =>
        RowField.All.Aggregate(
            design,
            (row, field) => Stays(field, before, design, said) ? field.With(row, field.Get(before)) : row
        );

    private bool Stays(
        RowField field,
        PartTexts before,
        PartTexts design,
        ImmutableArray<ImmutableSortedDictionary<string, string>> said
    )
    {
        var now = writer.Meaning(field, before);
        return now == writer.Meaning(field, design)
            || (!said.IsEmpty && said.All(texts => texts.GetValueOrDefault(field.Key) != now));
    }

    private ImmutableArray<ImmutableSortedDictionary<string, string>> Said(UpdatedRow row)
    {
        var now = RowField.All.ToImmutableSortedDictionary(
            field => field.Key,
            field => writer.Meaning(field, row.Design),
            StringComparer.Ordinal
        );
        var earlier = row.Known is { } known ? known.Said.Where(texts => !texts.SequenceEqual(now)) : [];
        return [now, .. earlier.Take(MostSaid - 1)];
    }

    private sealed record UpdatedRow(PartTexts? Before, PartTexts Design, PartTexts After, MadeRow? Known);
}
