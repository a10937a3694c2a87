using Microsoft.AspNetCore.Components;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>A page that shows one step of the project that its address names.</summary>
public abstract class ProjectStepPage : ComponentBase
{
    /// <summary>The project's id.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The project; null while it is read, and where there is none.</summary>
    protected ProjectView? Project { get; private set; }

    [Inject]
    private IProjectService Projects { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    /// <inheritdoc />
    protected override async Task OnParametersSetAsync()
    {
        if (Project?.Id != Id)
            await LoadAsync();
    }

    /// <summary>Reads the project as it is now.</summary>
    protected async Task LoadAsync()
    {
        Project = await Projects.GetAsync(Id);
        if (Project is null)
            Navigation.NotFound();
    }
}
