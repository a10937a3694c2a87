using Microsoft.JSInterop;

namespace ShopPlanner.Web.Fields;

/// <summary>Tells the browser to let go of what it keeps for a form or a button.</summary>
internal static class Forgetting
{
    /// <summary>Lets go of a form's texts and of its command's id.</summary>
    public static async Task ForgetAsync(this IJSRuntime scripts, string name)
    {
        try
        {
            await scripts.InvokeVoidAsync("shopFields.forget", name);
        }
        catch (Exception lost) when (lost is JSDisconnectedException or TaskCanceledException)
        {
            // The line is down: the browser shows the texts once more, and the same command sent again does nothing twice.
        }
    }
}
