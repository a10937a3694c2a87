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
    public async Task FieldAsync(FieldChange change, string name, Func<T, string> get, Func<T, T> set)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(get);
        ArgumentNullException.ThrowIfNull(set);
        await (turn = AfterAsync(turn, () => StoreAsync(change, name, get, set)));
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

    private async Task StoreAsync(FieldChange change, string name, Func<T, string> get, Func<T, T> set)
    {
        for (var tries = 0; tries < Tries && Stored is { } stored; tries++)
        {
            if (get(stored) is var now && now != change.Base && now != change.Value && now != own.GetValueOrDefault(name))
            {
                faults.Remove(name);
                change.Answer = FieldAnswer.Conflict;
                return;
            }

            var outcome = await save(set(together ? refused.Values.Aggregate(stored, (one, more) => more(one)) : stored));
            if (outcome.Kind != OutcomeKind.Conflict)
            {
                Take(change, name, get, set, outcome);
                return;
            }

            await LoadAsync();
        }

        Refuse(change, name, [Fault.Of(name, change.Value, "is not stored: other devices kept changing it. Try again")]);
    }

    private void Take(FieldChange change, string name, Func<T, string> get, Func<T, T> set, Outcome<T> outcome)
    {
        if (!outcome.Ok)
        {
            Refuse(change, name, outcome.Faults);
            refused[name] = set;
            return;
        }

        Stored = outcome.Value;
        own[name] = get(outcome.Value);
        foreach (var settled in together ? [.. refused.Keys, name] : new[] { name })
        {
            faults.Remove(settled);
            refused.Remove(settled);
        }
    }
}
