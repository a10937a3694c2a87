using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Setup;

/// <summary>A store with its prices, typed in one form.</summary>
/// <param name="Name">Differs from other stores'.</param>
/// <param name="Unit">Of the sizes.</param>
/// <param name="Prices">One or more lines.</param>
public sealed record FirstStore(string Name, LengthUnit Unit, IReadOnlyList<PriceEdit> Prices)
{
    /// <summary>Returns the name of a line's price, as faults have it.</summary>
    public static string PriceField(int line) => FormattableString.Invariant($"prices[{line}]");
}

/// <summary>A line that was understood as an offcut.</summary>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Material">The material's name.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across the grain; a board's full width where the line has none.</param>
/// <param name="Note">What stands after the comma; may be empty.</param>
public sealed record OffcutLine(int Line, string Material, Length Length, Length Width, string Note);

/// <summary>What lines of offcuts say. Nothing is stored.</summary>
/// <param name="Offcuts">The lines that were understood.</param>
/// <param name="Faults">What is wrong with the others; fields name the line.</param>
public sealed record OffcutsRead(ImmutableArray<OffcutLine> Offcuts, ImmutableArray<Fault> Faults);

/// <summary>What the first setup of a shop makes: a store and offcuts, each in one go.</summary>
public interface ISetupService
{
    /// <summary>Adds a store with all its prices, or nothing with a fault for each wrong line.</summary>
    Task<Outcome<StoreView>> AddStoreAsync(FirstStore store, CommandId command, CancellationToken cancel = default);

    /// <summary>Reads offcuts as <see cref="AddOffcutsAsync"/> would take them; stores nothing.</summary>
    Task<OffcutsRead> PreviewOffcutsAsync(string lines, LengthUnit unit, CancellationToken cancel = default);

    /// <summary>Puts offcuts in the bin, all of them or none with a fault for each wrong line.</summary>
    /// <param name="lines">One a line: material, length, the width of a sheet, a note after a comma:
    /// <c>1x4 pine 33 1/2, knot</c>, <c>birch plywood 3/4 30 x 11 5/8</c>.</param>
    /// <param name="unit">Of sizes that name none.</param>
    /// <param name="device">What the ledger calls the device.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<IReadOnlyList<StockPiece>>> AddOffcutsAsync(
        string lines,
        LengthUnit unit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );
}
