using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Features.Paper;

/// <summary>What is asked of templates, as an address holds it.</summary>
internal static class TemplateQuery
{
    // Longer ones are bars that need a jig of their own.
    private static readonly Length LongestPull = Length.FromMillimetres(600);

    /// <summary>The paper; null where none is named.</summary>
    public static PaperSize? Paper(string? text) =>
        text switch
        {
            "a4" => PaperSize.A4,
            "letter" => PaperSize.Letter,
            _ => null,
        };

    /// <summary>From hole to hole of drawer pulls; the usual distance where nothing is typed.</summary>
    public static Parsed<Length> Pull(string? text, LengthUnit unit)
    {
        if (string.IsNullOrWhiteSpace(text))
            return PartTemplates.UsualPull;
        var parsed = LengthText.Parse(text, unit);
        return parsed.Ok && parsed.Value > LongestPull
            ? Fault.Of("pull", text, "is longer than 600 mm (23 5/8 in): use the distance from hole to hole of the pull")
            : parsed;
    }
}
