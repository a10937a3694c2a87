using Microsoft.AspNetCore.Components;

namespace ShopPlanner.Web.Fields;

/// <summary>What every field has in common: a name, a text, and the way from the browser to the database.</summary>
public abstract class FieldFrame : ComponentBase
{
    private FieldState? state;

    /// <summary>What it is called.</summary>
    [Parameter]
    public string Label { get; set; } = "";

    /// <summary>Tells it from the other fields of its form or page; the label where empty.</summary>
    [Parameter]
    public string? Key { get; set; }

    /// <summary>Raised when a text is to be stored by itself; its handler sets the answer.</summary>
    [Parameter]
    public EventCallback<FieldChange> OnSave { get; set; }

    /// <summary>What is wrong with it; null when nothing is.</summary>
    [Parameter]
    public string? Fault { get; set; }

    /// <summary>What to write; shown while nothing is wrong.</summary>
    [Parameter]
    public string? Hint { get; set; }

    /// <summary>More style classes.</summary>
    [Parameter]
    public string? Class { get; set; }

    /// <summary>
    /// Whether its newest text is refused still, where another field's can settle it; null where only its own can.
    /// </summary>
    [Parameter]
    public bool? IsRefused { get; set; }

    [CascadingParameter]
    private DraftMark? Form { get; set; }

    [CascadingParameter]
    private IFieldLine? Line { get; set; }

    /// <summary>What the server knows of the field.</summary>
    protected FieldState State => state!;

    /// <summary>The text that the page holds now.</summary>
    protected abstract string Now { get; }

    /// <summary>The text before anything was typed; never drawn again, since the browser owns the text from then on.</summary>
    protected string First { get; private set; } = "";

    /// <summary>Attributes that fields.js reads.</summary>
    protected IReadOnlyDictionary<string, object> Marks =>
        new Dictionary<string, object>
        {
            ["data-field"] = Key ?? Label,
            ["data-kept"] = State.Kept,
            ["data-shown"] = State.Shown,
            ["data-heard"] = State.Heard,
            ["data-seq"] = State.Answered,
            ["data-round"] = State.Round,
        };

    /// <summary>Takes a text in that is not stored by itself.</summary>
    protected abstract Task TakeInAsync(string text);

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        state = new FieldState(
            OnSave.HasDelegate ? FieldKind.Saved
            : Form is not null ? FieldKind.Draft
            : FieldKind.Live
        );
        First = Now;
    }

    /// <inheritdoc />
    protected override void OnParametersSet() => State.Follow(Now, IsRefused ?? true);

    /// <summary>Takes in what the browser sent.</summary>
    protected Task TypedAsync(TypedEventArgs typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return TakeAsync(store => State.TakeAsync(typed, store, () => Now), isLast: !typed.More);
    }

    /// <summary>Stores what was typed here over what another device stored.</summary>
    protected Task KeepMineAsync() => TakeAsync(store => State.KeepMineAsync(store, () => Now), isLast: true);

    // The texts of a line wait for the last of them, and are stored together.
    private async Task TakeAsync(Func<Func<FieldChange, Task>, Task> take, bool isLast)
    {
        if (Line is not { } line)
        {
            await take(StoreAsync);
            return;
        }

        var taken = take(StoringIn(line));
        if (isLast)
            await line.StoreAsync();
        await taken;
    }

    // Tried again after another device's change, a text waits for no other.
    private Func<FieldChange, Task> StoringIn(IFieldLine line)
    {
        var wasTried = false;
        return async change =>
        {
            var stored = StoreAsync(change);
            if (wasTried)
                await line.StoreAsync();
            wasTried = true;
            await stored;
        };
    }

    private Task StoreAsync(FieldChange change) => OnSave.HasDelegate ? OnSave.InvokeAsync(change) : TakeInAsync(change.Value);
}
