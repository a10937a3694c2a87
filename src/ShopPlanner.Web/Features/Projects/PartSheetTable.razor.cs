using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Fields;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Projects;

public sealed partial class PartSheetTable
{
    // More rows than fit any screen, few enough that a tablet draws them at once.
    private const int PageRows = 500;

    private readonly ComponentScript script = new("sheet");
    private ElementReference table;
    private DotNetObjectReference<PartSheetTable>? self;
    private Dictionary<string, StockForm> forms = [];
    private bool showSeldom;
    private int first;
    private int last;

    [Parameter, EditorRequired]
    public IReadOnlyList<MaterialView> Materials { get; set; } = [];

    /// <summary>Raised when a material was added to the shop's.</summary>
    [Parameter]
    public EventCallback<MaterialView> OnMaterial { get; set; }

    [Parameter]
    public int From { get; set; }

    [Parameter]
    public EventCallback<int> OnPage { get; set; }

    [Parameter, EditorRequired]
    public SheetState Sheet { get; set; } = default!;

    private IReadOnlyList<PartColumn> Columns => showSeldom || HasSeldom ? PartColumn.All : PartColumn.Usual;

    private bool HasSeldom =>
        Sheet.Rows.Any(row => PartColumn.All.Any(column => column.IsSeldom && column.Get(row.Texts).Length > 0));

    protected override void OnParametersSet()
    {
        forms = Materials.ToDictionary(material => material.Name, material => material.Form, StringComparer.OrdinalIgnoreCase);
        CutPage();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        self = DotNetObjectReference.Create(this);
        await script.CallAsync(Js, "attach", table, self);
    }

    /// <summary>Rows from a spreadsheet: asked by the script that sees them pasted.</summary>
    [JSInvokable]
    public Task Paste(string text, string? column, Guid? row, Guid command) =>
        HearAsync(() => RunAsync(() => Sheet.PasteAsync(text, column, row, Columns, new CommandId(command))));

    /// <summary>More was copied than a list holds; the script did not send it.</summary>
    [JSInvokable]
    public Task RefusePaste(int rows) =>
        HearAsync(() =>
            RunAsync(() =>
            {
                Sheet.RefusePaste(rows);
                return Task.CompletedTask;
            })
        );

    internal async Task TypeAsync(SheetRow row, string cell, TypedEventArgs typed, string kept, Func<PartTexts> texts)
    {
        if (!row.Counts.Hear(cell, typed.Seq))
            return;
        if (!row.IsContested && typed.Base != kept && kept != typed.Value && kept != row.Counts.Own(cell))
            SheetState.Contest(row, texts());
        else
            await RunAsync(() => Sheet.TypeAsync(row, texts()));
        row.Counts.Answer(cell, typed.Seq, typed.Value);
        row.Touch();
        Show();
    }

    internal Task KeepMineAsync(SheetRow row) => RunAsync(() => Sheet.KeepMineAsync(row));

    internal Task TakeTheirsAsync(SheetRow row) => RunAsync(() => Sheet.TakeTheirsAsync(row));

    internal async Task RemoveAsync(SheetRow row)
    {
        var at = Sheet.Rows.ToList().IndexOf(row);
        await RunAsync(() => Sheet.RemoveAsync(row));
        await script.CallAsync(Js, "focusRow", table, Math.Clamp(at - first, 0, last - first - 1));
    }

    public async ValueTask DisposeAsync()
    {
        self?.Dispose();
        await script.DisposeAsync();
    }

    private async Task RunAsync(Func<Task> act)
    {
        var doing = act();
        Show();
        await doing;
        Show();
    }

    private void Show()
    {
        CutPage();
        StateHasChanged();
    }

    private void CutPage()
    {
        first = Math.Clamp(From, 0, Math.Max(0, Sheet.Rows.Count - 1));
        last = Math.Min(first + PageRows, Sheet.Rows.Count);
    }
}
