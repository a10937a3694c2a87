using System.Globalization;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Workings;

/// <summary>Parts that a working proposes, as rows of a project's parts list; the material is left for the person to
/// choose.</summary>
internal static class WorkingParts
{
    /// <summary>Adds them at the end of the list as one step.</summary>
    public static async Task<Outcome<PartSheet>> AddAsync(
        ShopContext db,
        Guid projectId,
        WorkingForm form,
        Answer answer,
        CancellationToken cancel
    )
    {
        var project = await db.Projects.FindAsync([projectId], cancel);
        var saving = (await PartSaving.BeginAsync(db, projectId, cancel))!;
        foreach (var part in answer.Parts)
            saving.Add(Texts(part, form, project!.Unit), null);
        if (saving.Rows > IPartService.MaxRows)
            return Outcome.Faulty<PartSheet>(PartPaste.TooMany(saving.Rows));
        saving.FillMarks();
        return await saving.EndAsync("parts of " + form.Title.ToLowerInvariant(), cancel);
    }

    private static PartTexts Texts(ProposedPart part, WorkingForm form, LengthUnit unit) =>
        new(
            Guid.CreateVersion7(),
            "",
            part.Name,
            "",
            LengthFormat.Exact(part.Length, unit),
            LengthFormat.Exact(part.Width, unit),
            part.Quantity.ToString(CultureInfo.InvariantCulture),
            false,
            $"{form.Title}; {LengthFormat.WithUnit(part.Thickness, unit)} thick"
        )
        {
            LongBy = More(part.CutLongBy, unit),
            WideBy = More(part.CutWideBy, unit),
        };

    private static string More(Length length, LengthUnit unit) => length.IsPositive ? LengthFormat.Exact(length, unit) : "";
}
