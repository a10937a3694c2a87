namespace ShopPlanner.Web.Fields;

/// <summary>Whom a field's text belongs to.</summary>
public enum FieldKind
{
    /// <summary>Stored by itself.</summary>
    Saved,

    /// <summary>Of a form: stored when the form is sent.</summary>
    Draft,

    /// <summary>Part of the page's address or of this browser alone: taking it in is all there is.</summary>
    Live,
}

/// <summary>
/// What the server knows of one field: what is stored, what the field shows, and up to which text of the browser it has answered.
/// The browser owns the text itself and compares (fields.js).
/// </summary>
public sealed class FieldState(FieldKind kind)
{
    private const int Tries = 5;

    private string? refused;
    private string? own;
    private bool isBegun;
    private int open;

    /// <summary>The stored text; of a form's field, the text it began with.</summary>
    public string Kept { get; private set; } = "";

    /// <summary>The text to show where nothing newer was typed.</summary>
    public string Shown { get; private set; } = "";

    /// <summary>The newest text of the browser that came in.</summary>
    public long Heard { get; private set; }

    /// <summary>The newest text of the browser that has an answer.</summary>
    public long Answered { get; private set; }

    /// <summary>The text typed here while another device stored <see cref="Kept"/>; null when there is no conflict.</summary>
    public string? Mine { get; private set; }

    /// <summary>Rises when the browser is to let go of what it keeps for this field.</summary>
    public int Round { get; private set; }

    /// <summary>Takes in what the page holds now.</summary>
    /// <param name="value">The text.</param>
    /// <param name="isRefused">Whether a text that was refused is refused still.</param>
    public void Follow(string value, bool isRefused = true)
    {
        ArgumentNullException.ThrowIfNull(value);
        if (open > 0)
        {
            Shown = value;
            return;
        }

        if (kind != FieldKind.Draft || !isBegun)
            Kept = value;
        isBegun = true;
        if (refused == value || !isRefused)
            refused = null;
        Shown = Mine ?? refused ?? value;
    }

    /// <summary>Takes in a text that the browser sent, sees that it is stored, and notes the answer.</summary>
    /// <param name="typed">The text.</param>
    /// <param name="store">Stores it.</param>
    /// <param name="now">What the page holds afterwards.</param>
    public async Task TakeAsync(TypedEventArgs typed, Func<FieldChange, Task> store, Func<string> now)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(now);
        if (typed.Seq <= Heard)
            return;
        Heard = typed.Seq;
        var change = new FieldChange(typed.Value, typed.Base);
        if (IsContested(typed))
            change.Answer = FieldAnswer.Conflict;
        else
            await StoreAsync(change, store, now);
        Settle(change, typed.Seq, now());
    }

    /// <summary>Stores this device's text over the other's.</summary>
    public async Task KeepMineAsync(Func<FieldChange, Task> store, Func<string> now)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(now);
        if (Mine is not { } mine)
            return;
        Mine = null;
        var change = new FieldChange(mine, Kept);
        await StoreAsync(change, store, now);
        Settle(change, Answered, now());
    }

    /// <summary>Lets this device's text go.</summary>
    public void TakeTheirs()
    {
        (Mine, refused, Shown) = (null, null, Kept);
        Round++;
    }

    private bool IsContested(TypedEventArgs typed) =>
        kind == FieldKind.Saved && typed.Base != Kept && Kept != own && Kept != typed.Value;

    // Another device changed another field: this one is stored beside it.
    private async Task StoreAsync(FieldChange change, Func<FieldChange, Task> store, Func<string> now)
    {
        open++;
        try
        {
            for (var tries = 0; tries == 0 || (IsOfAnotherField(change, now()) && tries < Tries); tries++)
            {
                change.Answer = FieldAnswer.Stored;
                await store(change);
            }
        }
        finally
        {
            open--;
        }
    }

    private static bool IsOfAnotherField(FieldChange change, string now) =>
        change.Answer == FieldAnswer.Conflict && now == change.Base;

    private void Settle(FieldChange change, long seq, string now)
    {
        if (seq >= Answered)
        {
            Answered = seq;
            refused = change.Answer == FieldAnswer.Refused ? change.Value : null;
            Mine = change.Answer == FieldAnswer.Conflict ? change.Value : null;
        }

        Follow(now);
        if (change.Answer == FieldAnswer.Stored)
            own = Kept;
    }
}
