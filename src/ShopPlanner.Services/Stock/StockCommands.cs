using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Stock;

/// <summary>Commands that add pieces to the rack and the bin.</summary>
internal static class StockCommands
{
    /// <summary>Adds pieces, once for each command; a command that was done before is answered with what it added.</summary>
    /// <param name="commands">What was asked before.</param>
    /// <param name="command">Its id.</param>
    /// <param name="asked">What it asks for.</param>
    /// <param name="add">Adds the pieces.</param>
    /// <param name="cancel">Stops it before it is saved.</param>
    /// <param name="isFile">Whether the pieces come from a file, which may be large.</param>
    public static Task<Outcome<IReadOnlyList<StockPiece>>> AddOnceAsync(
        this ShopCommands commands,
        CommandId command,
        string asked,
        Func<ShopContext, Task<Outcome<IReadOnlyList<StockPiece>>>> add,
        CancellationToken cancel,
        bool isFile = false
    ) =>
        commands.RunAsync(
            new Making<IReadOnlyList<StockPiece>>(command, asked)
            {
                Make = add,
                Made = pieces => ShopJson.Write(pieces.Select(piece => piece.Id)),
                Find = (db, made) => StockService.FindAddedAsync(db, ShopJson.Read<HashSet<Guid>>(made), cancel),
                NeedsRoom = isFile,
                What = "piece",
            },
            cancel
        );
}
