using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>A piece of a trade book as parts and joints, with its order of assembly. The books glued with hide glue.</summary>
internal sealed class Book
{
    private readonly Dictionary<string, string> names;

    private Book(Piece piece, AssemblyPlan plan)
    {
        (Piece, Plan) = (piece, plan);
        names = piece.Parts.SelectMany(part => part.Copies.Select(copy => (copy.Mark, part.Name))).ToDictionary();
    }

    public Piece Piece { get; }

    public AssemblyPlan Plan { get; }

    public static Book Read(string file)
    {
        var path = Path.Combine(DesignFiles.Root, "tests", "ShopPlanner.Core.Tests", "Making", "Books", file + ".json");
        var reading = DesignJson.Read(File.ReadAllBytes(path));
        Assert.Empty(reading.Faults);
        var evaluation = DesignEvaluator.Evaluate(reading.Document!, new Dictionary<string, string>());
        Assert.Empty(evaluation.Faults);
        var piece = evaluation.Piece!;
        Assert.DoesNotContain(piece.Warnings, one => one.Text.Contains("same place", StringComparison.Ordinal));
        return new(piece, AssemblyOrder.Of(piece, WorkChoices.Usual with { Glue = "hide" }));
    }

    /// <summary>Name of the part that a mark is of.</summary>
    public string NameOf(string mark) => names[mark];

    /// <summary>The steps at which an event begins and ends; null where the plan has nothing of the kind.</summary>
    public (int First, int Last)? When(Told told)
    {
        var found = Enumerable.Range(0, Plan.Steps.Length).Where(i => told.IsIn(this, Plan.Steps[i])).ToList();
        return found.Count == 0 ? null : (found[0], found[^1]);
    }

    /// <summary>Whether a step makes a joint between parts of these names; of one and any other where the second is
    /// empty.</summary>
    public bool Joins(WorkStep step, string one, string other) =>
        step.Joints.Any(index =>
        {
            var (from, into) = (NameOf(Piece.Joints[index].From), NameOf(Piece.Joints[index].Into));
            return (from == one && (other.Length == 0 || into == other)) || (into == one && (other.Length == 0 || from == other));
        });
}

/// <summary>Something that a book tells, as the plan does it.</summary>
/// <param name="Words">The book's, shortened.</param>
/// <param name="IsIn">Whether a step is of it.</param>
internal sealed record Told(string Words, Func<Book, WorkStep, bool> IsIn)
{
    /// <summary>A joint is made.</summary>
    public static Told Joined(string words, string one, string other = "") =>
        new(words, (book, step) => book.Joins(step, one, other));

    /// <summary>A joint is made on the piece itself, not within a subassembly.</summary>
    public static Told JoinedLast(string words, string one, string other) =>
        new(words, (book, step) => step.Subassembly is null && book.Joins(step, one, other));

    /// <summary>A joint is made within a subassembly.</summary>
    public static Told Made(string words, string one, string other) =>
        new(words, (book, step) => step.Subassembly is not null && book.Joins(step, one, other));

    /// <summary>Several joints are made.</summary>
    public static Told Any(string words, params (string One, string Other)[] joints) =>
        new(words, (book, step) => joints.Any(joint => book.Joins(step, joint.One, joint.Other)));

    /// <summary>Parts of a name are put into the piece.</summary>
    public static Told Placed(string words, string name) =>
        new(
            words,
            (book, step) => step.Subassembly is null && step.Moves.Any(move => move.Marks.Any(mark => book.NameOf(mark) == name))
        );

    /// <summary>Something is done, to parts of a name where it isn't empty.</summary>
    public static Told Done(string words, WorkAction action, string name = "") =>
        new(
            words,
            (book, step) => step.Action == action && (name.Length == 0 || step.Handles.Any(mark => book.NameOf(mark) == name))
        );

    /// <summary>The whole piece is tried.</summary>
    public static Told Tried(string words) =>
        new(words, (_, step) => step.Action == WorkAction.DryFit && step.Subassembly is null);
}
