using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace ShopPlanner.Web.Frame;

/// <summary>Puts the focus on the heading of a page that was gone to, unless somebody types on it already.</summary>
public sealed class HeadingFocus : ComponentBase
{
    private Type? shown;
    private bool isDue;

    /// <summary>The page.</summary>
    [Parameter, EditorRequired]
    public Microsoft.AspNetCore.Components.RouteData Route { get; set; } = default!;

    [Inject]
    private IJSRuntime Scripts { get; set; } = default!;

    /// <inheritdoc />
    protected override void OnParametersSet()
    {
        isDue = shown != Route.PageType;
        shown = Route.PageType;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!isDue)
            return;
        isDue = false;
        await Scripts.InvokeVoidAsync("shopHeading.focus");
    }
}
