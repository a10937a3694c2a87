using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Fields;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Plans;

public sealed partial class NewPlanPage
{
    private readonly OrderDraft draft = new();
    private IReadOnlyList<ProjectView> projects = [];
    private IReadOnlyList<StoreView> stores = [];
    private Dictionary<Guid, PartSheet> sheets = [];
    private PlanPreview? preview;
    private ImmutableArray<Fault> faults = [];
    private bool isLoaded;
    private IReadOnlyList<PlanSummary> standing = [];
    private bool isRest;

    /// <summary>Ids of projects to begin with, parted by commas.</summary>
    [SupplyParameterFromQuery]
    public string? Projects { get; set; }

    /// <summary>The plan that the new one takes the place of.</summary>
    [SupplyParameterFromQuery(Name = "replaces")]
    public string? OldPlan { get; set; }

    [Inject]
    private IProjectService AllProjects { get; set; } = default!;

    [Inject]
    private IPartService Parts { get; set; } = default!;

    [Inject]
    private IStoreService Stores { get; set; } = default!;

    [Inject]
    private IShopService Shop { get; set; } = default!;

    [Inject]
    private IPlanService Plans { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private string Title =>
        isRest ? "Plan the rest"
        : draft.Replaces is null ? "Plan the cuts"
        : "Plan again";

    // What is ticked for one order is not ticked for another.
    private string FormName => $"order {Projects} {OldPlan}".Trim();

    private Guid? Replaces => QueryText.Id(OldPlan);

    protected override async Task OnInitializedAsync()
    {
        projects =
        [
            .. (await AllProjects.ListAsync()).Where(project => project.State != ProjectState.Finished || IsNamed(project.Id)),
        ];
        stores = await Stores.ListAsync();
        standing =
        [
            .. (await Plans.ListAsync()).Where(plan => plan.Id != Replaces && plan.State is PlanState.Ready or PlanState.Cutting),
        ];
        sheets = await ReadSheetsAsync();
        draft.Seconds = (await Shop.GetAsync()).PlanSeconds.ToString(CultureInfo.InvariantCulture);
        await BeginAsync();
        isLoaded = true;
        await PreviewAsync();
    }

    private async Task<Dictionary<Guid, PartSheet>> ReadSheetsAsync()
    {
        var read = new Dictionary<Guid, PartSheet>();
        foreach (var project in projects)
            if (await Parts.GetAsync(project.Id) is { } sheet)
                read.Add(project.Id, sheet);
        projects = [.. projects.Where(project => read.ContainsKey(project.Id))];
        return read;
    }

    private async Task BeginAsync()
    {
        draft.Replaces = Replaces;
        if (Replaces is { } old && await Plans.GetAsync(old) is { } plan)
        {
            isRest = plan.Summary.State == PlanState.Cutting;
            draft.Begin(
                plan.Order,
                plan.Order.Projects.Where(sheets.ContainsKey).SelectMany(id => sheets[id].Rows).Select(row => row.Texts.Id)
            );
            return;
        }

        foreach (var store in stores)
            draft.SetStore(store.Id, true);
        foreach (var project in projects.Where(project => HasParts(project) && (Projects is null || IsNamed(project.Id))))
            draft.SetProject(project.Id, true);
    }

    // Planned twice, parts are bought and cut twice.
    private IEnumerable<PlanSummary> AlsoPlanned => standing.Where(plan => plan.Projects.Any(draft.HasProject));

    private bool AsksOfCut =>
        draft.CutAgain || preview is { CutAlready: > 0 } || faults.Any(fault => fault.Field == nameof(PlanOrder.Parts));

    private bool HasParts(ProjectView project) => sheets[project.Id].Rows.Length > 0;

    private bool IsNamed(Guid project) =>
        (Projects ?? "").Split(',').Any(text => Guid.TryParse(text, out var id) && id == project);

    private Task SetAsync(Action set)
    {
        set();
        return PreviewAsync();
    }

    private async Task PreviewAsync()
    {
        var order = draft.ToOrder(sheets);
        if (order.Projects.IsEmpty)
        {
            (preview, faults) = (null, []);
            return;
        }

        var outcome = await Plans.PreviewAsync(order);
        (preview, faults) = (outcome.Value, outcome.Faults);
    }

    private async Task StartAsync(CommandPress press)
    {
        var outcome = await Plans.StartAsync(draft.ToOrder(sheets), press.Id);
        (faults, press.IsDone) = (outcome.Faults, outcome.Ok);
        if (outcome.Ok)
            Navigation.NavigateTo(Links.PlanRun(outcome.Value.Id));
    }
}
