using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace ShopPlanner.Web.Frame;

/// <summary>Shows what to do when a page fails, with an id that stands in the log beside the cause.</summary>
public sealed class Mishap : ErrorBoundaryBase
{
    private string id = "";

    [Inject]
    private ILogger<Mishap> Log { get; set; } = default!;

    /// <inheritdoc />
    protected override Task OnErrorAsync(Exception exception)
    {
        id = Guid.NewGuid().ToString("N")[..8];
        Log.LogError(exception, "A page failed, id {Id}", id);
        return Task.CompletedTask;
    }

    /// <inheritdoc />
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        if (CurrentException is null)
        {
            builder.AddContent(0, ChildContent);
            return;
        }

        builder.OpenComponent<FailedPage>(1);
        builder.AddComponentParameter(2, nameof(FailedPage.Id), id);
        builder.AddComponentParameter(3, nameof(FailedPage.Cause), CurrentException);
        builder.CloseComponent();
    }
}
