using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Designs;

/// <summary>Parts of a piece as rows of a parts list: finished sizes, what they are cut longer and wider by, practice pieces.
/// Spacers are made from scrap and are no rows.</summary>
internal sealed class PartTextWriter(LengthUnit unit, MaterialIndex materials, Piece piece)
{
    /// <summary>Parts that become rows: members, and practice pieces that are like no member.</summary>
    public ImmutableArray<PiecePart> Rows() =>
        [
            .. piece.Parts.Where(part =>
                part.Purpose == PartPurpose.Member || (part.Purpose == PartPurpose.Practice && LikePractice(part) is null)
            ),
        ];

    /// <summary>A row; what the design leaves open stays as it was chosen before.</summary>
    public PartTexts Texts(PiecePart part, PartTexts? before) =>
        new(
            before?.Id ?? Guid.CreateVersion7(),
            part.Id,
            part.Name,
            Material(part.Material, before),
            Text(part.Length.Value),
            Width(part),
            Number(part.Quantity),
            !part.GrainMatters,
            Note(part)
        )
        {
            LongBy = More(part.RoughLength - part.Length.Value),
            WideBy = More(part.RoughWidth - part.Width.Value),
            Practice = Practice(part),
        };

    /// <summary>Returns what a text of a row means.</summary>
    public string Meaning(RowField field, PartTexts row) => field.Meaning(row, unit, materials);

    private string Material(RoleMaterial material, PartTexts? before) =>
        material.Id is { } id && materials.TryFind(id, out var known) ? known!.Name
        : before is not null && materials.FindTyped(before.Material) is not null ? before.Material
        : material.Name;

    // A board's full width needs no saying.
    private string Width(PiecePart part) =>
        part.Width.Value == part.Material.Width && part.RoughWidth == part.Width.Value ? "" : Text(part.Width.Value);

    private string Practice(PiecePart part)
    {
        var pieces = piece
            .Parts.Where(one => one.Purpose == PartPurpose.Practice && LikePractice(one)?.Id == part.Id)
            .Sum(one => one.Quantity);
        return pieces > 0 ? Number(pieces) : "";
    }

    private PiecePart? LikePractice(PiecePart practice) => piece.Parts.FirstOrDefault(part => part.Id == practice.PracticeFor);

    private static string Note(PiecePart part) =>
        part.Copies.Any(copy => copy.Hand != Hand.Either) ? part.Assembly + ", left and right" : part.Assembly;

    private string Text(Length length) => LengthFormat.Exact(length, unit);

    private string More(Length length) => length.IsPositive ? Text(length) : "";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
