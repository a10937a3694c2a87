namespace ShopPlanner.Web.Fields;

/// <summary>What became of a text that the browser sent.</summary>
public enum FieldAnswer
{
    /// <summary>It is in the database.</summary>
    Stored,

    /// <summary>It is wrong, or could not be written; a fault beside the field says why. The browser keeps it.</summary>
    Refused,

    /// <summary>
    /// Another device stored something else meanwhile; the field's value is theirs now. The browser keeps both.
    /// </summary>
    Conflict,
}

/// <summary>A text to be stored. Whoever stores it sets the answer.</summary>
/// <param name="Value">The new text.</param>
/// <param name="Base">What was stored when the typing began.</param>
public sealed record FieldChange(string Value, string Base)
{
    /// <summary>What became of it.</summary>
    public FieldAnswer Answer { get; set; } = FieldAnswer.Stored;

    /// <summary>Answers that the text cannot be stored.</summary>
    public Task RefuseAsync()
    {
        Answer = FieldAnswer.Refused;
        return Task.CompletedTask;
    }
}
