namespace ShopPlanner.Web.Fields;

/// <summary>Collects the texts that were typed in a line of a table and stores them together.</summary>
/// <typeparam name="T">The line's record.</typeparam>
/// <param name="store">Stores the record with all of these texts, or none of them.</param>
public sealed class FieldLine<T>(Func<IReadOnlyList<FieldStore<T>>, Task> store) : IFieldLine
{
    private List<FieldStore<T>> waiting = [];
    private TaskCompletionSource answered = new();

    /// <summary>Adds a text; done when the line was stored and the text's change has its answer.</summary>
    public Task AddAsync(FieldStore<T> text)
    {
        waiting.Add(text);
        return answered.Task;
    }

    /// <inheritdoc />
    public async Task StoreAsync()
    {
        if (waiting.Count == 0)
            return;
        var (texts, done) = (waiting, answered);
        (waiting, answered) = ([], new TaskCompletionSource());
        try
        {
            await store(texts);
        }
        finally
        {
            done.SetResult();
        }
    }
}
