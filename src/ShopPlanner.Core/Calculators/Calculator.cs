using System.Collections.Immutable;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>
/// A calculator as data: what it takes, what it refuses, what it works out, and what follows. The order of the lists is the order
/// in which a person reads them.
/// </summary>
/// <typeparam name="TAsked">What was asked, read from the keys.</typeparam>
/// <typeparam name="TMade">What was worked out from it.</typeparam>
/// <param name="Name">Stable name: <c>board-feet</c>.</param>
/// <param name="Title">Heading: <c>Board feet</c>.</param>
/// <param name="Says">What it answers, one plain sentence.</param>
internal sealed record Calculator<TAsked, TMade>(string Name, string Title, string Says)
{
    /// <summary>What it takes.</summary>
    public required ImmutableArray<FormKey> Keys { get; init; }

    /// <summary>Reads all keys; what it returns is only used where every key was right.</summary>
    public required Func<FormReader, TAsked> Read { get; init; }

    /// <summary>What must not be between the values of several keys: the first that applies is the answer.</summary>
    public ImmutableArray<Refusal<TAsked>> Refusals { get; init; } = [];

    /// <summary>Works it out; only asked to where nothing was refused.</summary>
    public required Func<TAsked, TMade> Make { get; init; }

    /// <summary>What must not come out.</summary>
    public ImmutableArray<Refusal<TMade>> Failures { get; init; } = [];

    /// <summary>The figures asked for, the main one first; those that are null are left out.</summary>
    public required Func<TMade, IEnumerable<Working?>> Results { get; init; }

    /// <summary>What follows from the figures.</summary>
    public ImmutableArray<Remark<TMade>> Verdicts { get; init; } = [];

    /// <summary>Whether verdicts are told by severity and not as they are declared.</summary>
    public bool MostSevereFirst { get; init; }

    /// <summary>Where the work can hurt.</summary>
    public ImmutableArray<Reminder<TMade>> Cautions { get; init; } = [];

    /// <summary>Parts that the figures make.</summary>
    public Func<TMade, ImmutableArray<ProposedPart>> Parts { get; init; } = _ => [];

    /// <summary>The form that a page or the command line asks.</summary>
    public WorkingForm Form => new(Name, Title, Says, Keys, Ask);

    private Func<FormOutcome> Ask(FormReader reader)
    {
        var asked = Read(reader);
        return () => Work(asked, reader);
    }

    private FormOutcome Work(TAsked asked, FormReader reader)
    {
        if (Refusal<TAsked>.First(Refusals, asked, reader) is { } refused)
            return refused;
        var made = Make(asked);
        return Refusal<TMade>.First(Failures, made, reader) is { } failed ? failed : Answer(made);
    }

    private Answer Answer(TMade made)
    {
        var verdicts = Verdicts.Where(one => one.When(made)).Select(one => new Verdict(one.Severity, one.Text(made)));
        return new Answer([.. Results(made).OfType<Working>()])
        {
            Verdicts = [.. MostSevereFirst ? verdicts.OrderByDescending(one => one.Severity) : verdicts],
            Cautions = [.. Cautions.Where(one => one.When(made)).Select(one => one.Caution)],
            Parts = Parts(made),
        };
    }
}
