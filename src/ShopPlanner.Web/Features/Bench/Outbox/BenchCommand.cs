using System.Collections.Immutable;

namespace ShopPlanner.Web.Features.Bench.Outbox;

/// <summary>One thing that was marked or entered at the bench, with the id of its command. It says how something stands, never
/// that it changes, so that sending it again does no harm.</summary>
/// <param name="Id">Made by the browser.</param>
/// <param name="Number">Its place among the commands of its browser.</param>
/// <param name="Kind"><c>cut</c>, <c>step</c>, <c>note</c> or <c>finish</c>.</param>
internal sealed record BenchCommand(Guid Id, long Number, string Kind)
{
    /// <summary>The plan, of a cut or a finish.</summary>
    public Guid Plan { get; init; }

    /// <summary>The board or sheet, from 1.</summary>
    public int Stock { get; init; }

    /// <summary>The cut's number.</summary>
    public int Cut { get; init; }

    /// <summary>The project, of a step or a note.</summary>
    public Guid Project { get; init; }

    /// <summary>The step's id.</summary>
    public string Step { get; init; } = "";

    /// <summary>Whether the cut is made, or the step done.</summary>
    public bool Done { get; init; }

    /// <summary>The note as typed.</summary>
    public string Text { get; init; } = "";

    /// <summary>The form's fields, of a finish.</summary>
    public ImmutableDictionary<string, string> Fields { get; init; } = ImmutableDictionary<string, string>.Empty;
}

/// <summary>What a browser sends: its commands in order, and what its page shows.</summary>
/// <param name="Sender">The browser; made by it once.</param>
/// <param name="Plan">The plan on its page; null for none.</param>
/// <param name="Project">The project whose steps are on its page; null for none.</param>
/// <param name="Commands">In the order in which they were made.</param>
internal sealed record BenchSending(Guid Sender, Guid? Plan, Guid? Project, ImmutableArray<BenchCommand> Commands);

/// <summary>What became of a command.</summary>
/// <param name="Id">The command's.</param>
/// <param name="Ok">Whether it is done, now or before.</param>
/// <param name="Say">Why not, in plain words; empty when it is done.</param>
/// <param name="Again">Whether it may be done when sent once more as it is: the disk was full, say.</param>
internal sealed record BenchCommandAnswer(Guid Id, bool Ok, string Say, bool Again);

/// <summary>What a browser hears.</summary>
/// <param name="Answers">One for each command, in order.</param>
/// <param name="Plan">How the plan on the page stands; null for none, or where it is gone.</param>
/// <param name="Steps">How the project's steps stand, by id; null for none, or where the project is gone.</param>
internal sealed record BenchHeard(
    IReadOnlyList<BenchCommandAnswer> Answers,
    BenchPlanStanding? Plan,
    IReadOnlyDictionary<string, string>? Steps
);
