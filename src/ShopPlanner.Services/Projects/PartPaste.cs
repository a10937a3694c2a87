using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Materials;

namespace ShopPlanner.Services.Projects;

/// <summary>Reads rows copied from a spreadsheet into rows as typed.</summary>
internal static class PartPaste
{
    private const int MostCharacters = 5_000_000;

    /// <summary>Returns the rows, or the fault that refuses all of them.</summary>
    public static (IReadOnlyList<PartTexts> Rows, Fault? Fault) Read(string text, LengthUnit unit, MaterialIndex materials)
    {
        if (text.Length > MostCharacters)
            return ([], new Fault("paste", "", "is more than 5 MB: paste fewer rows at a time"));
        var table = new PartTable(unit, materials);
        var fault = table.Read(text);
        if (fault is null && table.Lines.Count == 0)
            fault = new Fault("paste", "", "holds no rows: copy some cells first");
        return (fault is null ? [.. table.Lines.Select(line => line.Texts)] : [], fault);
    }

    /// <summary>Says that so many rows are too many.</summary>
    public static Fault TooMany(int rows) =>
        Fault.Of("paste", $"{rows} rows", $"are too many: a parts list holds at most {IPartService.MaxRows}; nothing was added");
}
