using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace ShopPlanner.Web.Frame;

/// <summary>Puts the focus on the heading of a page that was gone to, unless somebody uses the page already.</summary>
public sealed class HeadingFocus : ComponentBase
{
    private Type? shown;
    private bool isDue;
    private bool isFirst;

    /// <summary>The page.</summary>
    [Parameter, EditorRequired]
    public Microsoft.AspNetCore.Components.RouteData Route { get; set; } = default!;

    [Inject]
    private IJSRuntime Scripts { get; set; } = default!;

    /// <inheritdoc />
    protected override void OnParametersSet()
    {
        if (shown == Route.PageType)
            return;
        (isDue, isFirst) = (true, shown is null);
        shown = Route.PageType;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!isDue)
            return;
        isDue = false;
        await Scripts.InvokeVoidAsync("shopHeading.focus", isFirst);
    }
}
