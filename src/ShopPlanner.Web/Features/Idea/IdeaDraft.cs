using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Designs;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>An idea being changed: what is set, what it comes to, and what is to be watched.</summary>
public sealed class IdeaDraft
{
    private readonly ShopReach reach;

    /// <summary>The idea as stored.</summary>
    /// <param name="idea">What it is to become.</param>
    /// <param name="reach">What the shop has and pays.</param>
    public IdeaDraft(Services.Designs.Idea idea, ShopReach reach)
    {
        this.reach = reach;
        Idea = idea;
        Run();
    }

    /// <summary>What is set.</summary>
    public Services.Designs.Idea Idea { get; private set; }

    /// <summary>The design.</summary>
    public DesignDocument Document => Idea.Document;

    /// <summary>The dimensions with their values and limits.</summary>
    public ImmutableArray<DimensionRange> Ranges { get; private set; } = [];

    /// <summary>What came out, or last came out; null where nothing did yet.</summary>
    public Piece? Piece { get; private set; }

    /// <summary>Whether <see cref="Piece"/> belongs to what was set before.</summary>
    public bool IsStale { get; private set; }

    /// <summary>What is wrong with what is set.</summary>
    public ImmutableArray<Fault> Faults { get; private set; } = [];

    /// <summary>What will not do or wants watching, the most severe first.</summary>
    public ImmutableArray<PieceWarning> Warnings { get; private set; } = [];

    /// <summary>Rises with every change, so that the pictures are drawn again.</summary>
    public int Stamp { get; private set; }

    /// <summary>Takes another idea in: one that was brought back.</summary>
    public void Take(Services.Designs.Idea idea)
    {
        Idea = idea;
        Run();
    }

    /// <summary>Sets a dimension as typed; an empty text lets it follow the design again.</summary>
    public void Set(string dimension, string text)
    {
        Idea = Idea with
        {
            Changed = string.IsNullOrWhiteSpace(text) ? Idea.Changed.Remove(dimension) : Idea.Changed.SetItem(dimension, text),
        };
        Run();
    }

    /// <summary>Changes the design itself.</summary>
    public void Change(DesignDocument document) => Take(Idea with { Document = document });

    /// <summary>What is wrong with a dimension, for beside its field.</summary>
    public string? FaultOf(DesignDimension dimension) => FaultAt(dimension.Name) ?? FaultAt("dimensions." + dimension.Name);

    /// <summary>What is wrong at a place of the design, for beside its field.</summary>
    public string? FaultAt(string path) => Shared.FaultWords.For(Faults, path);

    /// <summary>Faults at a place and within it.</summary>
    public bool HasFault(string path) =>
        Faults.Any(fault => fault.Field == path || fault.Field.StartsWith(path + ".", StringComparison.Ordinal));

    /// <summary>The part with that letter.</summary>
    public PiecePart? Part(string? id) => Piece?.Parts.FirstOrDefault(part => part.Id == id);

    /// <summary>The part that a mark belongs to, be it of a copy or the letter alone.</summary>
    public PiecePart? PartOf(string mark) =>
        Piece?.Parts.FirstOrDefault(part => part.Id == mark || part.Copies.Any(copy => copy.Mark == mark));

    private void Run()
    {
        Stamp++;
        Ranges = DimensionRange.Of(Idea.Document, Idea.Changed);
        var (piece, faults) = DesignEvaluator.Evaluate(Idea.Document, Idea.Changed);
        Faults = faults;
        IsStale = piece is null && Piece is not null;
        if (piece is null)
            return;
        Piece = piece;
        Warnings = PieceJudge.Of(piece, reach.Largest);
    }
}
