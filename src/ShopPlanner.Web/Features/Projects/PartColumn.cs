using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>A column of the parts list that is typed into.</summary>
/// <param name="Name">The member of <see cref="PartTexts"/>, as faults name it.</param>
/// <param name="Heading">What people read.</param>
/// <param name="Example">Shown in an empty list.</param>
/// <param name="Get">Reads the cell.</param>
/// <param name="Set">The row with another cell.</param>
/// <param name="Mode">Which keys a tablet shows.</param>
/// <param name="List">Id of its suggestions.</param>
public sealed record PartColumn(
    string Name,
    string Heading,
    string Example,
    Func<PartTexts, string> Get,
    Func<PartTexts, string, PartTexts> Set,
    string? Mode = null,
    string? List = null
)
{
    /// <summary>
    /// Whether few parts need the column: it is shown when asked for, or where some row has something in it.
    /// </summary>
    public bool IsSeldom { get; init; }

    /// <summary>What it is for, where the heading does not tell.</summary>
    public string? Hint { get; init; }

    /// <summary>Id of the list of materials' names.</summary>
    public const string Materials = "materials";

    /// <summary>All columns, in the order of the page and of pasted rows.</summary>
    public static IReadOnlyList<PartColumn> All { get; } =
    [
        new(nameof(PartTexts.Mark), "Mark", "A", row => row.Mark, (row, text) => row with { Mark = text }),
        new(nameof(PartTexts.Name), "Part", "Leg", row => row.Name, (row, text) => row with { Name = text }),
        new(
            nameof(PartTexts.Material),
            "Material",
            "Pine 1x3",
            row => row.Material,
            (row, text) => row with { Material = text },
            List: Materials
        ),
        new(nameof(PartTexts.Length), "Length", "34 1/2", row => row.Length, (row, text) => row with { Length = text }),
        new(nameof(PartTexts.Width), "Width", "full", row => row.Width, (row, text) => row with { Width = text }),
        new(
            nameof(PartTexts.Quantity),
            "Pieces",
            "4",
            row => row.Quantity,
            (row, text) => row with { Quantity = text },
            Mode: "numeric"
        ),
        new(nameof(PartTexts.Note), "Note", "", row => row.Note, (row, text) => row with { Note = text }),
        new(nameof(PartTexts.LongBy), "Cut long by", "1/2", row => row.LongBy, (row, text) => row with { LongBy = text })
        {
            IsSeldom = true,
            Hint = "Extra length when it is cut; trimmed off later",
        },
        new(nameof(PartTexts.WideBy), "Cut wide by", "", row => row.WideBy, (row, text) => row with { WideBy = text })
        {
            IsSeldom = true,
            Hint = "Extra width when it is cut; trimmed off later",
        },
        new(
            nameof(PartTexts.Practice),
            "Test pieces",
            "",
            row => row.Practice,
            (row, text) => row with { Practice = text },
            Mode: "numeric"
        )
        {
            IsSeldom = true,
            Hint = "Extra pieces for setting up a cut or a joint",
        },
    ];

    /// <summary>The columns that every part needs.</summary>
    public static IReadOnlyList<PartColumn> Usual { get; } = [.. All.Where(column => !column.IsSeldom)];
}
