using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Fields;

/// <summary>
/// Saves a record of which each field is stored by itself: a wrong field holds no other back, and another device's change of
/// another field is no conflict.
/// </summary>
/// <typeparam name="T">The record, with a version.</typeparam>
/// <param name="read">Reads it; null when it is gone.</param>
/// <param name="save">Saves it whole.</param>
/// <param name="together">
/// Whether what was refused is tried again with the next field: a line of which two cells must fit each other.
/// </param>
public sealed class Saving<T>(Func<Task<T?>> read, Func<T, Task<Outcome<T>>> save, bool together = false)
    where T : class
{
    private const int Tries = 5;

    private readonly Dictionary<string, Func<T, T>> refused = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, string> own = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, ImmutableArray<Fault>> faults = new(StringComparer.OrdinalIgnoreCase);

    // One field after another: each is set in the record that the one before left.
    private Task turn = Task.CompletedTask;

    /// <summary>The record as stored.</summary>
    public T? Stored { get; private set; }

    /// <summary>What is wrong with what was typed and is not stored.</summary>
    public ImmutableArray<Fault> Faults => [.. faults.Values.SelectMany(list => list)];

    /// <summary>Returns whether a field's newest text was refused.</summary>
    public bool IsRefused(string name) => refused.ContainsKey(name);

    /// <summary>Reads the record.</summary>
    public async Task<T?> LoadAsync() => Stored = await read();

    /// <summary>Stores one field and sets the change's answer.</summary>
    /// <param name="change">What was typed.</param>
    /// <param name="name">The field's name, as faults have it.</param>
    /// <param name="get">Returns the field's text in a record.</param>
    /// <param name="set">Returns the record with the text typed.</param>
    public Task FieldAsync(FieldChange change, string name, Func<T, string> get, Func<T, T> set) =>
        LineAsync([new FieldStore<T>(change, name, get, set)]);

    /// <summary>Stores several fields together, all or none, and sets each change's answer.</summary>
    public async Task LineAsync(IReadOnlyList<FieldStore<T>> fields)
    {
        ArgumentNullException.ThrowIfNull(fields);
        await (turn = AfterAsync(turn, () => StoreAsync(fields)));
    }

    /// <summary>Tries once more what was refused: the reason may be gone.</summary>
    public async Task RetryAsync()
    {
        if (
            refused.Count > 0
            && Stored is { } stored
            && await save(refused.Values.Aggregate(stored, (one, more) => more(one))) is var outcome
        )
            Take([], outcome);
    }

    /// <summary>Says what is wrong with a text that cannot be stored, and sets the change's answer.</summary>
    public void Refuse(FieldChange change, string name, ImmutableArray<Fault> why)
    {
        ArgumentNullException.ThrowIfNull(change);
        faults[name] = why;
        change.Answer = FieldAnswer.Refused;
    }

    private static async Task AfterAsync(Task before, Func<Task> next)
    {
        await before.ConfigureAwait(ConfigureAwaitOptions.ContinueOnCapturedContext | ConfigureAwaitOptions.SuppressThrowing);
        await next();
    }

    private async Task StoreAsync(IReadOnlyList<FieldStore<T>> fields)
    {
        for (var tries = 0; tries < Tries && Stored is { } stored; tries++)
        {
            fields = LeaveContested(fields, stored);
            if (fields.Count == 0)
                return;
            var begun = together ? refused.Values.Aggregate(stored, (one, more) => more(one)) : stored;
            var outcome = await save(fields.Aggregate(begun, (one, field) => field.Set(one)));
            if (outcome.Kind != OutcomeKind.Conflict)
            {
                Take(fields, outcome);
                return;
            }

            await LoadAsync();
        }

        foreach (var field in fields)
            Refuse(
                field.Change,
                field.Name,
                [Fault.Of(field.Name, field.Change.Value, "is not saved: other devices kept changing it. Try again")]
            );
    }

    // Those that another device changed to something else since are left to the person.
    private List<FieldStore<T>> LeaveContested(IReadOnlyList<FieldStore<T>> fields, T stored)
    {
        var open = new List<FieldStore<T>>();
        foreach (var field in fields)
            if (IsContested(field, field.Get(stored)))
            {
                faults.Remove(field.Name);
                field.Change.Answer = FieldAnswer.Conflict;
            }
            else
                open.Add(field);

        return open;
    }

    private bool IsContested(FieldStore<T> field, string now) =>
        now != field.Change.Base && now != field.Change.Value && now != own.GetValueOrDefault(field.Name);

    private void Take(IReadOnlyList<FieldStore<T>> fields, Outcome<T> outcome)
    {
        if (!outcome.Ok)
        {
            foreach (var field in fields)
            {
                Refuse(field.Change, field.Name, outcome.Faults);
                refused[field.Name] = field.Set;
            }

            return;
        }

        Stored = outcome.Value;
        foreach (var field in fields)
            own[field.Name] = field.Get(outcome.Value);
        var names = fields.Select(field => field.Name);
        foreach (var settled in together ? [.. names, .. refused.Keys] : names.ToList())
        {
            faults.Remove(settled);
            refused.Remove(settled);
        }
    }
}
