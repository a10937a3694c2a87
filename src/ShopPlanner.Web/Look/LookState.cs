using Microsoft.JSInterop;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Look;

/// <summary>Whether the page is light, dark, bright or the same as the device, for as long as it is open.</summary>
public sealed class LookState(IJSRuntime scripts) : IAsyncDisposable
{
    private readonly ComponentScript script = new("look");

    /// <summary>Raised when another look was chosen.</summary>
    public event Action? Changed;

    /// <summary>What a person can choose.</summary>
    public static IReadOnlyList<(string Value, string Name)> Choices { get; } =
    [("", "Same as device"), ("light", "Light"), ("dark", "Dark"), ("bright", "Bright")];

    /// <summary><c>light</c>, <c>dark</c>, <c>bright</c>, or empty to follow the system.</summary>
    public string Chosen { get; private set; } = "";

    /// <summary>The chosen look's name in a sentence.</summary>
    public string Name => Choices.First(choice => choice.Value == Chosen).Name.ToLowerInvariant();

    /// <summary>The chosen look's icon.</summary>
    public string Picture =>
        Chosen switch
        {
            "light" => "sun",
            "dark" => "moon",
            "bright" => "glare",
            _ => "half",
        };

    /// <summary>Begins with what the browser's cookie says.</summary>
    public void Begin(string? chosen) => Chosen = chosen ?? "";

    /// <summary>Chooses a look, and sees that the browser shows and remembers it.</summary>
    public async Task ChooseAsync(string look)
    {
        await script.CallAsync(scripts, "choose", look.Length > 0 ? look : null);
        Chosen = look;
        Changed?.Invoke();
    }

    /// <summary>Chooses the next look of the row.</summary>
    public Task NextAsync() =>
        ChooseAsync(
            Chosen switch
            {
                "" => "light",
                "light" => "dark",
                "dark" => "bright",
                _ => "",
            }
        );

    /// <inheritdoc />
    public ValueTask DisposeAsync() => script.DisposeAsync();
}
