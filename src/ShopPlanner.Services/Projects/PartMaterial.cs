using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Projects;

/// <summary>Finds the material of a row whose thickness stands in a column of its own: <c>birch plywood</c> and <c>3/4</c>, or
/// <c>pine</c>, <c>3/4</c> thick and <c>2 1/2</c> wide.</summary>
internal sealed class PartMaterial(MaterialIndex materials)
{
    /// <summary>Returns the material's name; what was typed where none or several fit, so that the person sees it.</summary>
    /// <param name="typed">As typed; a full name wins.</param>
    /// <param name="thickness">As typed; empty where the table has none.</param>
    /// <param name="width">As typed.</param>
    /// <param name="unit">Of texts without a suffix.</param>
    public string Name(string typed, string thickness, string width, LengthUnit unit)
    {
        if (thickness.Length == 0 || materials.FindNamed(typed) is not null)
            return typed;
        var joined = $"{typed} {WithSuffix(thickness, unit)}".Trim();
        return (materials.FindTyped(joined) ?? FindSized(typed, thickness, width, unit))?.Name ?? joined;
    }

    private Storage.Rows.StoredMaterial? FindSized(string typed, string thickness, string width, LengthUnit unit)
    {
        var thick = LengthText.ParsePositive(thickness, unit);
        if (!thick.Ok)
            return null;
        var wide = LengthText.ParsePositive(width, unit);
        var fit = materials.FindAll(typed).Where(one => one.Thickness == thick.Value).ToList();
        var exact = fit.Where(one => wide.Ok && one.Width == wide.Value).ToList();
        return exact.Count == 1 ? exact[0]
            : fit.Count == 1 ? fit[0]
            : null;
    }

    private static string WithSuffix(string thickness, LengthUnit unit) =>
        thickness.Any(c => char.IsLetter(c) || c is '"' or '″') ? thickness
        : unit == LengthUnit.Inch ? thickness + " in"
        : thickness + " mm";
}
