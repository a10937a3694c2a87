using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Which parts a step of work shows, and how: those that it handles stand out, those that stand already are drawn as
/// usual. Where none stands, the others are drawn faintly, so that one sees where the handled ones belong.</summary>
internal sealed class StepCast
{
    /// <summary>Tint of what is drawn faintly: hardly off the page.</summary>
    public const string Faint = "#F6F3EC";

    // More would hide what the step is about.
    private const int MostAround = 24;

    private readonly ImmutableHashSet<string> handled;
    private readonly ImmutableHashSet<string> present;

    /// <summary>Reads a step.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="step">The step.</param>
    public StepCast(Piece piece, WorkStep step)
    {
        handled = step.Handles.ToImmutableHashSet(StringComparer.Ordinal);
        present = step.Present.ToImmutableHashSet(StringComparer.Ordinal).Except(handled);
        Parts = Of(ShownPart.Of(piece));
        Moves = StepMoves.Of(Parts, step.Moves);
        Description =
            $"Working on: {string.Join(", ", step.Handles)}."
            + (present.IsEmpty ? "" : $" Already in place: {string.Join(", ", step.Present.Where(present.Contains))}.");
    }

    /// <summary>The parts that are drawn.</summary>
    public ImmutableArray<ShownPart> Parts { get; }

    /// <summary>How far each part is drawn from its place; null where the parts are drawn apart from the middle.</summary>
    public StepMoves? Moves { get; }

    /// <summary>What can be seen, in words.</summary>
    public string Description { get; }

    /// <summary>Whether the step handles a part.</summary>
    public bool IsHandled(ShownPart part) => handled.Contains(part.Copy.Mark);

    /// <summary>Whether a part is drawn faintly.</summary>
    public bool IsFaint(ShownPart part) => !IsHandled(part) && !present.Contains(part.Copy.Mark);

    private ImmutableArray<ShownPart> Of(ImmutableArray<ShownPart> all)
    {
        var others = all.Where(part => !IsHandled(part) && (present.IsEmpty || !IsFaint(part))).ToList();
        var around = others.Count <= MostAround ? others : Touching(all, others);
        var shown = around.Select(part => part.Copy.Mark).ToHashSet(StringComparer.Ordinal);
        return [.. all.Where(part => IsHandled(part) || shown.Contains(part.Copy.Mark))];
    }

    // What stands already and takes none of the handled parts is left out of a large piece.
    private List<ShownPart> Touching(ImmutableArray<ShownPart> all, List<ShownPart> others)
    {
        if (present.IsEmpty)
            return [];
        var boxes = all.Where(IsHandled).Select(part => part.Copy.Box).ToList();
        return [.. others.Where(part => boxes.Exists(box => box.Meeting(part.Copy.Box) is not null)).Take(MostAround)];
    }
}
