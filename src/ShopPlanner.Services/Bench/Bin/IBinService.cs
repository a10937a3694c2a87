using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Bench.Bin;

/// <summary>What is looked for in the bin, as typed; what is empty doesn't matter.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="Thickness">As typed; what is sold as that thickness is found too.</param>
/// <param name="Length">The least length, as typed.</param>
/// <param name="Width">The least width, as typed.</param>
public sealed record BinSearch(string Material, string Thickness, string Length, string Width);

/// <summary>A piece of the bin, as it answers a search.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="IsTurned">Whether it is long enough only when turned; its grain doesn't matter.</param>
public sealed record FoundOffcut(StockPiece Piece, bool IsTurned);

/// <summary>A piece that was taken out without a plan.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="Tag">Its tag.</param>
/// <param name="Material">The material's name.</param>
/// <param name="Length">When it was taken.</param>
/// <param name="Width">When it was taken.</param>
/// <param name="Reason">What for.</param>
/// <param name="WhenUtc">When.</param>
/// <param name="Version">Rises by one with every entry.</param>
public sealed record TakenOffcut(
    Guid Id,
    string Tag,
    string Material,
    Length Length,
    Length Width,
    string Reason,
    DateTime WhenUtc,
    int Version
);

/// <summary>A material of which the bin has pieces.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
public sealed record BinMaterial(string Id, string Name);

/// <summary>The bin as it is looked through.</summary>
/// <param name="Unit">Of figures without one.</param>
/// <param name="Materials">What it has pieces of, by name.</param>
/// <param name="Found">The pieces that will do, the smallest first: nobody cuts a large one where a small one does.</param>
/// <param name="Taken">What was taken out last and not put back.</param>
public sealed record BinView(
    LengthUnit Unit,
    ImmutableArray<BinMaterial> Materials,
    ImmutableArray<FoundOffcut> Found,
    ImmutableArray<TakenOffcut> Taken
);

/// <summary>Finds, takes and puts back offcuts at the bench. Every change is a line of the ledger; a command with one id is done
/// once.</summary>
public interface IBinService
{
    /// <summary>Looks for offcuts.</summary>
    Task<Outcome<BinView>> FindAsync(BinSearch search, CancellationToken cancel = default);

    /// <summary>Takes a piece out, for a project or for none; refused where a plan counts on it.</summary>
    Task<Outcome<Done>> TakeAsync(
        Guid id,
        int version,
        Guid? project,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Puts a piece that was taken out back, as it measures now.</summary>
    Task<Outcome<Done>> PutBackAsync(
        Guid id,
        int version,
        string length,
        string width,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Enters a new measurement of a piece.</summary>
    Task<Outcome<Done>> CorrectAsync(
        Guid id,
        int version,
        string length,
        string width,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Throws a piece away.</summary>
    Task<Outcome<Done>> DiscardAsync(Guid id, int version, string device, CommandId command, CancellationToken cancel = default);

    /// <summary>Takes the latest change of a piece back.</summary>
    Task<Outcome<Done>> UndoAsync(Guid entry, string device, CommandId command, CancellationToken cancel = default);
}
