using Microsoft.JSInterop;

namespace ShopPlanner.Web.Shared;

/// <summary>Letting go of scripts.</summary>
internal static class ScriptReferences
{
    /// <summary>Releases a script's reference. When the browser is gone, so is what it held.</summary>
    public static async ValueTask LetGoAsync(this IJSObjectReference? script)
    {
        if (script is null)
            return;
        try
        {
            await script.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // Nothing is left to release.
        }
    }
}
