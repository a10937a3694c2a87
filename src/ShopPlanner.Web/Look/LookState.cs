using Microsoft.JSInterop;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Look;

/// <summary>Whether the page is light or dark, for as long as it is open.</summary>
public sealed class LookState(IJSRuntime scripts) : IAsyncDisposable
{
    private IJSObjectReference? script;

    /// <summary>Told when it became light or dark.</summary>
    public event Action? Changed;

    /// <summary>What a person can choose.</summary>
    public static IReadOnlyList<(string Value, string Name)> Choices { get; } =
    [("", "As the system"), ("light", "Light"), ("dark", "Dark")];

    /// <summary><c>light</c>, <c>dark</c>, or empty to follow the system.</summary>
    public string Chosen { get; private set; } = "";

    /// <summary>True while the page is dark.</summary>
    public bool IsDark { get; private set; }

    /// <summary>What the server knows before the browser has spoken.</summary>
    public void Begin(string? chosen) => (Chosen, IsDark) = (chosen ?? "", chosen == "dark");

    /// <summary>Asks the browser what it shows.</summary>
    public async Task AskAsync()
    {
        script = await scripts.InvokeAsync<IJSObjectReference>("import", "./scripts/look.js");
        IsDark = await script.InvokeAsync<bool>("isDark");
        Changed?.Invoke();
    }

    /// <summary>Chooses, and sees that the browser remembers.</summary>
    public async Task ChooseAsync(string look)
    {
        Chosen = look;
        if (script is not null)
            IsDark = await script.InvokeAsync<bool>("choose", look.Length > 0 ? look : null);
        Changed?.Invoke();
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => script.LetGoAsync();
}
