namespace ShopPlanner.Web.Fields;

/// <summary>A text of a record to be stored, as <see cref="Saving{T}"/> takes it.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="Change">The text that was typed; whoever stores it sets the answer.</param>
/// <param name="Name">The name of the text, as faults have it.</param>
/// <param name="Get">Returns the text in a record.</param>
/// <param name="Set">Returns the record with the text that was typed.</param>
public sealed record FieldStore<T>(FieldChange Change, string Name, Func<T, string> Get, Func<T, T> Set);
