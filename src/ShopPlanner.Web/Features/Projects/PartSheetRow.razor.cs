using Microsoft.AspNetCore.Components;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Fields;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Projects;

public sealed partial class PartSheetRow
{
    private const string Turn = nameof(PartTexts.CanTurn);

    private readonly Dictionary<string, string> firsts = [];
    private bool? firstTurn;
    private (SheetRow?, int, int, bool, int, bool) drawn;
    private bool isChanged;

    [Parameter, EditorRequired]
    public int Number { get; set; }

    /// <summary>Changes whenever the row does.</summary>
    [Parameter, EditorRequired]
    public int Stamp { get; set; }

    /// <summary>Whether this row, when new, takes what the browser keeps for rows that are nowhere on the page.</summary>
    [Parameter]
    public bool MayAdopt { get; set; }

    [Parameter]
    public bool ShowExamples { get; set; }

    [Parameter, EditorRequired]
    public IReadOnlyList<PartColumn> Columns { get; set; } = [];

    [Parameter, EditorRequired]
    public PartSheetTable Owner { get; set; } = default!;

    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, StockForm> Forms { get; set; } = default!;

    [Parameter, EditorRequired]
    public SheetRow Row { get; set; } = default!;

    private bool IsBoard => Row.Stored is { } row && Forms.TryGetValue(row.MaterialName, out var form) && form == StockForm.Board;

    protected override void OnParametersSet()
    {
        firstTurn ??= Row.Texts.CanTurn;
        var now = (Row, Stamp, Number, ShowExamples, Columns.Count, MayAdopt);
        isChanged = now != drawn;
        drawn = now;
    }

    // Hundreds of rows stand on the page; typing in one must not draw the others again.
    protected override bool ShouldRender() => isChanged;

    private Task TypeAsync(PartColumn column, TypedEventArgs typed) =>
        Owner.TypeAsync(Row, column.Name, typed, Row.Kept(column), () => column.Set(Row.Texts, typed.Value));

    private Task TurnAsync(TypedEventArgs typed) =>
        Owner.TypeAsync(
            Row,
            Turn,
            typed,
            Text(Row.Stored?.Texts.CanTurn ?? false),
            () => Row.Texts with { CanTurn = typed.Value == Text(true) }
        );

    // The browser owns a cell's text: it is drawn once.
    private string Once(PartColumn column, string text) =>
        firsts.TryGetValue(column.Name, out var first) ? first : firsts[column.Name] = text;

    private static string Text(bool ticked) => ticked ? "true" : "false";

    private bool IsWrong(PartColumn column) => Row.Faults.Any(fault => fault.Field == column.Name);

    // What the cell was read as, in both units.
    private string? Title(PartColumn column) =>
        Row.Stored?.Part is not { } part
            ? null
            : column.Name switch
            {
                nameof(PartTexts.Length) => Words.BothUnits(part.FinishedLength ?? part.Length),
                nameof(PartTexts.Width) => Words.BothUnits(part.FinishedWidth ?? part.Width),
                nameof(PartTexts.LongBy) when part.FinishedLength is not null => $"Cut {Words.BothUnits(part.Length)} long",
                nameof(PartTexts.WideBy) when part.FinishedWidth is not null => $"Cut {Words.BothUnits(part.Width)} wide",
                nameof(PartTexts.Note) => Row.Texts.Note,
                _ => null,
            };

    // A board's width goes without saying; it is shown all the same, so that nobody takes a nominal width for the true one.
    private string? Placeholder(PartColumn column)
    {
        if (ShowExamples)
            return column.Example;
        return column.Name == nameof(PartTexts.Width) && Row.Stored?.Part is { } part
            ? LengthFormat.Plain(part.FinishedWidth ?? part.Width, Owner.Sheet.Sheet.Unit).Text
            : null;
    }

    private static string Heading(string field) =>
        PartColumn.All.FirstOrDefault(column => column.Name == field)?.Heading ?? field;
}
