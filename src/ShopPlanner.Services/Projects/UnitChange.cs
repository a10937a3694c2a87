using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Projects;

/// <summary>Writes lengths in another unit so that each means exactly what it meant.</summary>
internal static class UnitChange
{
    /// <summary>The text in the new unit. One that names its own unit, or cannot be read, stays as typed.</summary>
    public static string Rewrite(string text, LengthUnit from, LengthUnit to)
    {
        var meant = LengthText.Parse(text, from);
        if (!meant.Ok || LengthText.Parse(text, to) == meant)
            return text;
        return LengthFormat.Exact(meant.Value, to);
    }

    /// <summary>Rewrites a parts list; its steps are forgotten, since their texts are in the old unit.</summary>
    public static async Task RewritePartsAsync(
        ShopContext db,
        Guid projectId,
        LengthUnit from,
        LengthUnit to,
        CancellationToken cancel
    )
    {
        foreach (var part in await PartRows.Of(db, projectId).ToListAsync(cancel))
        {
            (part.Length, part.Width) = (Rewrite(part.Length, from, to), Rewrite(part.Width, from, to));
            (part.LongBy, part.WideBy) = (Rewrite(part.LongBy, from, to), Rewrite(part.WideBy, from, to));
        }

        await PartJournal.ForgetAsync(db, projectId, cancel);
    }
}
