using System.Globalization;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>Sizes and amounts of a piece in words.</summary>
internal static class AmountWords
{
    /// <summary>Width, depth and height outside.</summary>
    public static string Outside(Piece piece) =>
        string.Join(
            " × ",
            new[] { piece.Outside.Dx, piece.Outside.Dy, piece.Outside.Dz }.Select(side => LengthFormat.WithUnit(side, piece.Unit))
        );

    /// <summary>Boards by their length and board feet, sheets by their area.</summary>
    public static string Of(MaterialAmount amount, LengthUnit unit)
    {
        var isInch = unit == LengthUnit.Inch;
        if (amount.Material.Form == MaterialForm.Sheet)
            return isInch ? Text(amount.Face.ToSquareFeet(), "ft²") : Text(amount.Face.ToSquareMetres(), "m²");
        var running = isInch ? Text(amount.Running.ToInches() / 12, "ft") : Text(amount.Running.ToMillimetres() / 1000, "m");
        return $"{running} ({Text(amount.Wood.ToBoardFeet(), "bd ft")})";
    }

    private static string Text(decimal number, string unit) =>
        number.ToString(number < 1 ? "0.##" : "0.#", CultureInfo.InvariantCulture) + " " + unit;
}
