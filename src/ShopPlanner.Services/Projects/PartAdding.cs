using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Projects;

/// <summary>Rows about to be added to a list.</summary>
internal static class PartAdding
{
    /// <summary>Returns the rows under marks that the list has not: a mark that is taken gives way to the next free letter,
    /// as a blank one does. A mark that two of them have stays: the person sees it.</summary>
    public static IReadOnlyList<PartTexts> Marked(IReadOnlyList<PartTexts> rows, IReadOnlyList<PartTexts> there)
    {
        var taken = there.Select(row => PartMarks.Plain(row.Mark)).ToHashSet();
        bool IsBlank(PartTexts row) => row.Mark.Trim().Length == 0 || taken.Contains(PartMarks.Plain(row.Mark));
        var kept = rows.Where(row => !IsBlank(row)).Select(row => row.Mark);
        using var free = PartMarks.Free(taken.Concat(kept)).GetEnumerator();
        string Next() => free.MoveNext() ? free.Current : "";
        return [.. rows.Select(row => IsBlank(row) ? row with { Mark = Next() } : row)];
    }

    /// <summary>Returns a row of another project as a new one, with sizes that mean the same in another unit.</summary>
    public static PartTexts Copy(PartTexts row, LengthUnit from, LengthUnit to)
    {
        string Size(string text) => from == to ? text : UnitChange.Rewrite(text, from, to);
        return row with
        {
            Id = Guid.CreateVersion7(),
            Length = Size(row.Length),
            Width = Size(row.Width),
            LongBy = Size(row.LongBy),
            WideBy = Size(row.WideBy),
        };
    }

    /// <summary>Returns what the lines of a table would be on the list.</summary>
    public static ImmutableArray<PartPreviewRow> Preview(IReadOnlyList<PartLine> lines, PartSaving saving, LengthUnit unit)
    {
        var there = saving.Texts;
        var marked = Marked([.. lines.Select(line => line.Texts)], there);
        var reader = new PartReader(unit, saving.Materials, PartReader.Doubled(there.Concat(marked)));
        return [.. lines.Zip(marked, (line, texts) => Preview(line, texts, reader))];
    }

    private static PartPreviewRow Preview(PartLine line, PartTexts texts, PartReader reader)
    {
        var (part, material, practice, faults) = reader.Read(texts);
        var given = line.Texts.Mark;
        var before = given.Trim().Length == 0 || given == texts.Mark ? null : given;
        // What the file got wrong in a cell is said once.
        var known = line.Faults.Select(fault => fault.Field).ToHashSet();
        return new PartPreviewRow(
            line.Line,
            new PartRow(texts, part, material, faults, 0) { Practice = practice },
            before,
            [.. line.Faults, .. faults.Where(fault => !known.Contains(fault.Field))]
        );
    }
}
