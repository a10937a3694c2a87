using Microsoft.JSInterop;

namespace ShopPlanner.Web.Shared;

/// <summary>
/// The script of one component, loaded when it is first needed. By the time it arrives the page may have been left: then nothing
/// is asked of it any longer, since what it would work on is no longer drawn, and its failure would be shown on another page.
/// </summary>
/// <param name="name">The file in <c>wwwroot/scripts</c>, without its ending.</param>
internal sealed class ComponentScript(string name) : IAsyncDisposable
{
    private Task<IJSObjectReference>? loading;

    /// <summary>Whether the component is gone.</summary>
    public bool IsLeft { get; private set; }

    /// <summary>Calls a function of the script; does nothing where the component is gone.</summary>
    public async Task CallAsync(IJSRuntime scripts, string function, params object?[] given)
    {
        if (await LoadAsync(scripts) is { } script)
            await script.InvokeVoidAsync(function, given);
    }

    /// <summary>Calls a function that makes something in the browser; null where it made nothing or the component is
    /// gone.</summary>
    public async Task<IJSObjectReference?> MakeAsync(IJSRuntime scripts, string function, params object?[] given) =>
        await LoadAsync(scripts) is { } script ? await script.InvokeAsync<IJSObjectReference?>(function, given) : null;

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        IsLeft = true;
        if (loading is { IsCompletedSuccessfully: true })
            await ReleaseAsync(await loading);
    }

    /// <summary>Releases what the browser holds. When the browser is gone, so is what it held.</summary>
    public static async ValueTask ReleaseAsync(IJSObjectReference? held)
    {
        if (held is null)
            return;
        try
        {
            await held.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // Nothing is left to release.
        }
    }

    private async Task<IJSObjectReference?> LoadAsync(IJSRuntime scripts)
    {
        if (IsLeft)
            return null;
        var script = await (loading ??= scripts.InvokeAsync<IJSObjectReference>("import", $"./scripts/{name}.js").AsTask());
        if (!IsLeft)
            return script;
        await ReleaseAsync(script);
        return null;
    }
}
