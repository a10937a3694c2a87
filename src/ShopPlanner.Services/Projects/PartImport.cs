using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Projects;

/// <summary>Turns the parts of a cut request into rows as a person would have typed them.</summary>
/// <param name="request">The request.</param>
/// <param name="unit">Of the project.</param>
/// <param name="materials">Of the shop.</param>
internal sealed class PartImport(CutRequest request, LengthUnit unit, MaterialIndex materials)
{
    /// <summary>One row for each part; practice pieces stand in the row of the part that they are for.</summary>
    /// <param name="taken">Marks that other rows have: a part with one of them gets a free letter.</param>
    public IReadOnlyList<PartTexts> Rows(IEnumerable<string> taken)
    {
        var marks = taken.Select(PartMarks.Plain).ToHashSet();
        return [.. request.Parts.Where(part => part.PracticeFor is null).Select(part => Row(part, marks))];
    }

    private PartTexts Row(CutPart part, HashSet<string> marks)
    {
        var material = request.Materials.Single(one => one.Id == part.Material);
        var (length, width) = (part.FinishedLength ?? part.Length, part.FinishedWidth ?? part.Width);
        var practice = request.Parts.Where(one => one.PracticeFor == part.Id).Sum(one => one.Quantity);
        return new PartTexts(
            Guid.CreateVersion7(),
            Mark(part.Id, marks),
            part.Name == part.Id ? "" : part.Name,
            NameOf(material),
            Say(length),
            material.Width == width ? "" : Say(width),
            Say(part.Quantity),
            part.Grain == Grain.Any,
            ""
        )
        {
            LongBy = part.Length > length ? Say(part.Length - length) : "",
            WideBy = part.Width > width ? Say(part.Width - width) : "",
            Practice = practice > 0 ? Say(practice) : "",
        };
    }

    // A request of ours over several projects has the project's letters before the mark.
    private static string Mark(string id, HashSet<string> marks)
    {
        var mark = PartMarks.Plain(PartIds.MarkOf(id));
        return PartMarks.IsMark(mark) && marks.Add(mark) ? mark : "";
    }

    // By its id, else by its true size; else the id stands there for the person to see.
    private string NameOf(CutMaterial material) =>
        (materials.FindNamed(material.Id) ?? materials.FindSized(material.Form, material.Thickness, material.Width))?.Name
        ?? material.Id;

    private string Say(Length length) => LengthFormat.Exact(length, unit);

    private static string Say(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
