using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>Reads what a row of a parts list means: a part with its mark for id, or the faults that say why not.</summary>
internal sealed class PartReader(LengthUnit unit, MaterialIndex materials, IReadOnlySet<string> doubledMarks)
{
    /// <summary>Most pieces of one part.</summary>
    public const int MostPieces = 9_999;

    /// <summary>Most practice pieces of one part: beyond it the number is a slip.</summary>
    public const int MostPractice = 99;

    // More than this is no allowance but another part.
    private static readonly Length MostAllowance = Length.FromInches(24);

    /// <summary>Marks that more than one row has.</summary>
    public static IReadOnlySet<string> Doubled(IEnumerable<PartTexts> rows) =>
        rows.Select(row => PartMarks.Plain(row.Mark))
            .Where(mark => mark.Length > 0)
            .GroupBy(mark => mark)
            .Where(same => same.Skip(1).Any())
            .Select(same => same.Key)
            .ToHashSet();

    public (CutPart? Part, string MaterialName, int Practice, ImmutableArray<Fault> Faults) Read(PartTexts row)
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        ReadMark(row, faults);
        var material = ReadMaterial(row, faults);
        var length = Size(nameof(row.Length), row.Length, faults);
        var width = ReadWidth(row, material, faults);
        var quantity = ReadQuantity(row, faults);
        var (longBy, wideBy) = (Allowance(nameof(row.LongBy), row.LongBy, faults), ReadWideBy(row, material, width, faults));
        var practice = ReadPractice(row, faults);
        if (faults.Count > 0)
            return (null, material?.Name ?? row.Material, 0, faults.ToImmutable());
        var part = new CutPart(
            PartMarks.Plain(row.Mark),
            row.Name.Trim(),
            material!.Id,
            length + longBy,
            width + wideBy,
            TurnOf(row, material),
            quantity
        )
        {
            FinishedLength = longBy.IsPositive ? length : null,
            FinishedWidth = wideBy.IsPositive ? width : null,
        };
        return (part, material.Name, practice, []);
    }

    private static Grain TurnOf(PartTexts row, StoredMaterial material) =>
        row.CanTurn && material.Form == StockForm.Sheet ? Grain.Any : Grain.Length;

    private void ReadMark(PartTexts row, ImmutableArray<Fault>.Builder faults)
    {
        if (!PartMarks.IsMark(row.Mark))
            faults.Add(Fault.Of(nameof(row.Mark), row.Mark, "is not a mark: write one to three letters from A to Z, like A"));
        else if (doubledMarks.Contains(PartMarks.Plain(row.Mark)))
            faults.Add(Fault.Of(nameof(row.Mark), row.Mark, "is also the mark of another part: each part needs its own"));
    }

    private StoredMaterial? ReadMaterial(PartTexts row, ImmutableArray<Fault>.Builder faults)
    {
        var found = materials.FindTyped(row.Material);
        if (found is not null)
            return found;
        faults.Add(materials.FaultOf(nameof(row.Material), row.Material));
        return null;
    }

    private Length ReadWidth(PartTexts row, StoredMaterial? material, ImmutableArray<Fault>.Builder faults)
    {
        var blank = row.Width.Trim().Length == 0;
        if (blank && material is null)
            return Length.Zero;
        if (blank && material!.Width is { } full)
            return full;
        var width = Size(nameof(row.Width), row.Width, faults);
        if (material?.Width is { } most && width > most)
            faults.Add(
                Fault.Of(
                    nameof(row.Width),
                    row.Width,
                    $"is wider than the board: {material.Name} is {LengthFormat.WithUnit(most, unit)} wide"
                )
            );
        return width;
    }

    private Length ReadWideBy(PartTexts row, StoredMaterial? material, Length width, ImmutableArray<Fault>.Builder faults)
    {
        var allowance = Allowance(nameof(row.WideBy), row.WideBy, faults);
        if (allowance.IsPositive && material?.Width is { } most && width <= most && width + allowance > most)
            faults.Add(
                Fault.Of(
                    nameof(row.WideBy),
                    row.WideBy,
                    $"is too much: {material.Name} is {LengthFormat.WithUnit(most, unit)} wide, the part is "
                        + $"{LengthFormat.WithUnit(width, unit)}"
                )
            );
        return allowance;
    }

    private Length Allowance(string field, string text, ImmutableArray<Fault>.Builder faults)
    {
        if (text.Trim().Length == 0)
            return Length.Zero;
        var parsed = LengthText.Parse(text, unit);
        if (!parsed.Ok)
            faults.Add(parsed.Fault.At(field));
        else if (parsed.Value > MostAllowance)
            faults.Add(
                Fault.Of(field, text, $"is more than {LengthFormat.WithUnit(MostAllowance, unit)}: check for a typing slip")
            );
        else
            return parsed.Value;
        return Length.Zero;
    }

    private Length Size(string field, string text, ImmutableArray<Fault>.Builder faults)
    {
        var parsed = LengthText.ParsePositive(text, unit);
        if (parsed.Ok)
            return parsed.Value;
        faults.Add(parsed.Fault.At(field));
        return Length.Zero;
    }

    private static int ReadPractice(PartTexts row, ImmutableArray<Fault>.Builder faults)
    {
        var text = row.Practice.Trim();
        if (text.Length == 0)
            return 0;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var pieces) && pieces <= MostPractice)
            return pieces;
        faults.Add(
            Fault.Of(
                nameof(row.Practice),
                row.Practice,
                $"is not a number of test pieces: write a whole number up to {MostPractice}, or leave it blank"
            )
        );
        return 0;
    }

    // An empty cell means one, as it does in the open format.
    private static int ReadQuantity(PartTexts row, ImmutableArray<Fault>.Builder faults)
    {
        var text = row.Quantity.Trim();
        if (text.Length == 0)
            return 1;
        if (
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var pieces)
            && pieces is >= 1 and <= MostPieces
        )
            return pieces;
        faults.Add(
            Fault.Of(
                nameof(row.Quantity),
                row.Quantity,
                $"is not a number of pieces: write a whole number from 1 to {MostPieces}"
            )
        );
        return 0;
    }
}
