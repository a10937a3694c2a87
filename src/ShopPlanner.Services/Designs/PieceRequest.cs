using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Designs;

/// <summary>A piece as a cut request: its parts at the size they are cut to first, its materials by role, and stock of the
/// sizes that stores usually have, without prices.</summary>
public static class PieceRequest
{
    private const double Seconds = 10;

    // Where the design leaves the material open (common practice).
    private static readonly Length UsualBoard = Length.FromFeet(8);
    private static readonly SheetSize UsualSheet = new(Length.FromFeet(8), Length.FromFeet(4));

    /// <summary>The request; every part of the piece is in it, spacers and practice pieces too.</summary>
    public static CutRequest Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var roles = Roles(piece);
        return new(
            piece.Unit,
            SawSettings.Usual,
            KeepRule.Usual,
            [.. roles.Values.Distinct().Select(Material)],
            [.. roles.Values.Distinct().SelectMany(Stock)],
            [.. piece.Parts.Select(part => Part(part, roles[part.Material.Role].Role))],
            new CutLimits(Seconds)
        );
    }

    // Two roles of one material share its boards and sheets, under the name of the first.
    private static Dictionary<string, RoleMaterial> Roles(Piece piece)
    {
        var all = piece.Parts.Select(part => part.Material).DistinctBy(one => one.Role).ToList();
        return all.ToDictionary(one => one.Role, one => all.First(other => other == one || IsSame(other, one)));
    }

    private static bool IsSame(RoleMaterial a, RoleMaterial b) =>
        a.Id is not null && (a.Id, a.Form, a.Thickness, a.Width) == (b.Id, b.Form, b.Thickness, b.Width);

    private static CutMaterial Material(RoleMaterial role) =>
        role.Form == MaterialForm.Board
            ? new(role.Role, StockForm.Board, role.Thickness, role.Width)
            : new(role.Role, StockForm.Sheet, role.Thickness, null);

    private static IEnumerable<CutStock> Stock(RoleMaterial role)
    {
        var stocked = MaterialCatalogue.StoreMaterials.FirstOrDefault(one => one.Id == role.Id && one.Form == role.Form);
        return role is { Form: MaterialForm.Board, Width: { } width }
            ? (stocked?.Lengths ?? [UsualBoard]).Select(length => Stock(role, length, width, Text(length)))
            : (stocked?.Sizes ?? [UsualSheet]).Select(size =>
                Stock(role, size.Length, size.Width, Text(size.Length) + "x" + Text(size.Width))
            );
    }

    private static CutStock Stock(RoleMaterial role, Length length, Length width, string size) =>
        new($"{role.Role}-{size}", role.Role, length, width, Money.Zero, null, false);

    // As the trade says it: feet where they are whole, else millimetres.
    private static string Text(Length length) =>
        length.Ticks % Length.TicksPerFoot == 0
            ? FormattableString.Invariant($"{length / Length.FromFeet(1)}ft")
            : FormattableString.Invariant($"{length.ToMillimetres():0.#}mm");

    private static CutPart Part(PiecePart part, string material) =>
        new(
            part.Id,
            part.Name,
            material,
            part.RoughLength,
            part.RoughWidth,
            part.Material.Form == MaterialForm.Sheet && !part.GrainMatters ? Grain.Any : Grain.Length,
            part.Quantity
        )
        {
            FinishedLength = part.RoughLength == part.Length.Value ? null : part.Length.Value,
            FinishedWidth = part.RoughWidth == part.Width.Value ? null : part.Width.Value,
            PracticeFor = part.PracticeFor,
        };
}
