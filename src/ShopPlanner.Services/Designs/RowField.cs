using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Designs;

/// <summary>A text of a row that a design writes and a person may change.</summary>
/// <param name="Key">Its name in stored documents; never changes.</param>
/// <param name="Label">As people read it.</param>
/// <param name="Get">Returns the text.</param>
/// <param name="With">Returns the row with another text.</param>
/// <param name="Kind">What the text says.</param>
internal sealed record RowField(
    string Key,
    string Label,
    Func<PartTexts, string> Get,
    Func<PartTexts, string, PartTexts> With,
    RowFieldKind Kind = RowFieldKind.Text
)
{
    private const string Yes = "yes";

    /// <summary>All of them, in the order of the parts list. The mark ties a row to the drawing and is not among them.</summary>
    public static readonly ImmutableArray<RowField> All =
    [
        new("name", "Part", row => row.Name, (row, text) => row with { Name = text }),
        new("quantity", "Quantity", row => row.Quantity, (row, text) => row with { Quantity = text }),
        new("length", "Length", row => row.Length, (row, text) => row with { Length = text }, RowFieldKind.Length),
        new("width", "Width", row => row.Width, (row, text) => row with { Width = text }, RowFieldKind.Length),
        new("material", "Material", row => row.Material, (row, text) => row with { Material = text }, RowFieldKind.Material),
        new("canTurn", "Can rotate", row => row.CanTurn ? Yes : "", (row, text) => row with { CanTurn = text == Yes }),
        new("longBy", "Extra length", row => row.LongBy, (row, text) => row with { LongBy = text }, RowFieldKind.Length),
        new("wideBy", "Extra width", row => row.WideBy, (row, text) => row with { WideBy = text }, RowFieldKind.Length),
        new("practice", "Test pieces", row => row.Practice, (row, text) => row with { Practice = text }),
        new("note", "Note", row => row.Note, (row, text) => row with { Note = text }),
    ];

    /// <summary>Returns what a row's text means, however it is written: a length in millimeters, a material's id.</summary>
    /// <param name="row">The row.</param>
    /// <param name="unit">Of a length without a suffix.</param>
    /// <param name="materials">The shop's.</param>
    public string Meaning(PartTexts row, LengthUnit unit, MaterialIndex materials)
    {
        var text = Get(row).Trim();
        return Kind switch
        {
            RowFieldKind.Length when LengthText.Parse(text, unit) is { Ok: true } length => length
                .Value.ToMillimetres()
                .ToString("0.######", CultureInfo.InvariantCulture) + " mm",
            RowFieldKind.Material when materials.FindTyped(text) is { } material => material.Id,
            _ => text,
        };
    }
}

/// <summary>What a text of a row says.</summary>
internal enum RowFieldKind
{
    /// <summary>Words, a number, a yes.</summary>
    Text,

    /// <summary>A length.</summary>
    Length,

    /// <summary>A material's name or id.</summary>
    Material,
}
