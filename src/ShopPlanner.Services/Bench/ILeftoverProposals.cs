using System.Collections.Immutable;

namespace ShopPlanner.Services.Bench;

/// <summary>A leftover, as the bench proposes what becomes of it.</summary>
/// <param name="Left">What it is, and whether it is worth keeping.</param>
/// <param name="Tag">The tag to write on it; null for scrap.</param>
/// <param name="Where">Where it lies on the board or sheet: <c>Right end</c>.</param>
/// <param name="Serves">What comes off it first, before it goes into the bin: test pieces and spacers that are not cut, or a
/// piece to try settings on.</param>
public sealed record ProposedLeftover(ExpectedLeftover Left, string? Tag, string Where, ImmutableArray<string> Serves);

/// <summary>Proposes what becomes of the leftovers of a board or sheet.</summary>
public interface ILeftoverProposals
{
    /// <summary>Returns the leftovers as they should lie there, those worth keeping first. Their tags are free now, and given
    /// when the board is finished unless somebody else was quicker.</summary>
    /// <param name="view">The plan at the bench.</param>
    /// <param name="stock">The board or sheet.</param>
    /// <param name="allCutsMade">Whether every cut was made, ticked or not.</param>
    /// <param name="cancel">Stops the reading.</param>
    Task<ImmutableArray<ProposedLeftover>> OfAsync(
        BenchView view,
        BenchStock stock,
        bool allCutsMade,
        CancellationToken cancel = default
    );
}
