using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Designs;

/// <summary>A design with the thicknesses and widths that the shop measured: a dado is cut for the sheet that is there.</summary>
internal static class ShopSizes
{
    /// <summary>Returns the design with the shop's own sizes of its materials; a material that the shop does not have keeps the
    /// design's.</summary>
    public static async Task<DesignDocument> TakeAsync(ShopContext db, DesignDocument design, CancellationToken cancel)
    {
        var ids = design.Materials.Select(one => one.Id).OfType<string>().ToHashSet();
        var known = await db
            .Materials.AsNoTracking()
            .Where(one => ids.Contains(one.Id))
            .ToDictionaryAsync(one => one.Id, one => (one.Form, one.Thickness, one.Width), cancel);
        return design with
        {
            Materials = [.. design.Materials.Select(one => known.TryGetValue(one.Id ?? "", out var own) ? With(one, own) : one)],
        };
    }

    private static RoleMaterial With(RoleMaterial role, (StockForm Form, Length Thickness, Length? Width) own) =>
        (own.Form == StockForm.Sheet) == (role.Form == MaterialForm.Sheet)
            ? role with
            {
                Thickness = own.Thickness,
                Width = own.Width,
            }
            : role;
}
