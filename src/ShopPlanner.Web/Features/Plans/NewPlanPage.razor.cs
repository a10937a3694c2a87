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
    private IReadOnlyList<OpenPlanView> open = [];
    private bool isRest;

    /// <summary>Ids of projects to begin with, parted by commas.</summary>
    [SupplyParameterFromQuery]
    public string? Projects { get; set; }

    /// <summary>The plan whose order the form begins with.</summary>
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
        : Earlier is null ? "Plan the cuts"
        : "Plan again";

    // What is ticked for one order is not ticked for another.
    private string FormName => $"order {Projects} {OldPlan}".Trim();

    private Guid? Earlier => QueryText.Id(OldPlan);

    private IReadOnlyList<EarlierChoice> Choices => EarlierChoice.Of(open, draft, projects, sheets);

    protected override async Task OnInitializedAsync()
    {
        open = await Plans.ListOpenAsync();
        var planned = open.SelectMany(plan => plan.Summary.Projects).ToHashSet();
        projects =
        [
            .. (await AllProjects.ListAsync()).Where(one =>
                one.State != ProjectState.Done || planned.Contains(one.Id) || IsNamed(one.Id)
            ),
        ];
        stores = await Stores.ListAsync();
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
        if (Earlier is { } old && await Plans.GetAsync(old) is { } plan)
        {
            isRest = plan.Summary.Progress.IsBegun;
            draft.Begin(plan.Order, sheets, stores.Select(store => store.Id));
            return;
        }

        foreach (var store in stores)
            draft.SetStore(store.Id, true);
        foreach (
            var project in projects.Where(project =>
                HasParts(project) && (Projects is null ? IsNext(project) : IsNamed(project.Id))
            )
        )
            draft.SetProject(project.Id, true);
    }

    // A project with a plan is planned again when somebody says so, not because the form was opened.
    private bool IsNext(ProjectView project) =>
        project.State == ProjectState.Planning && !open.Any(plan => plan.Summary.Projects.Contains(project.Id));

    private PlanOrder ToOrder() => draft.ToOrder(sheets, Choices.Where(one => one.IsReplaced).Select(one => one.Plan.Summary.Id));

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
        var order = ToOrder();
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
        if (Choices.FirstOrDefault(one => one.IsUndecided) is { } undecided)
        {
            faults = [Fault.Of("", undecided.Plan.Summary.Name, "already has a plan: choose at the top what happens to it")];
            return;
        }

        if (draft.Faults.FirstOrDefault() is { } wrong)
        {
            faults = [wrong];
            return;
        }

        var outcome = await Plans.StartAsync(ToOrder(), press.Id);
        (faults, press.IsDone) = (outcome.Faults, outcome.Ok);
        if (outcome.Ok)
            Navigation.NavigateTo(Links.PlanRun(outcome.Value.Id));
        else
            open = await Plans.ListOpenAsync();
    }
}
