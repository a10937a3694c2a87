using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Materials;

/// <summary>A material that parts are made of and stores sell.</summary>
/// <param name="Id">Short text that never changes, e.g. <c>pine-1x3</c>.</param>
/// <param name="Name">What people call it: <c>Pine 1×3</c>.</param>
/// <param name="Form">Board or sheet.</param>
/// <param name="Thickness">True thickness.</param>
/// <param name="Width">A board's true width; null for a sheet.</param>
/// <param name="Tint">CSS colour <c>#rrggbb</c>, pale, for drawings.</param>
/// <param name="Source">Where the true sizes come from; <c>measured by you</c> for the user's own.</param>
/// <param name="Own">True for one that the user added.</param>
public sealed record MaterialView(
    string Id,
    string Name,
    StockForm Form,
    Length Thickness,
    Length? Width,
    string Tint,
    string Source,
    bool Own
);

/// <summary>A material to add or change, as typed.</summary>
/// <param name="Id">Null for a new one.</param>
/// <param name="Name">Must differ from the others'.</param>
/// <param name="Form">Board or sheet.</param>
/// <param name="Thickness">As typed.</param>
/// <param name="Width">As typed; empty for a sheet.</param>
public sealed record MaterialEdit(string? Id, string Name, StockForm Form, string Thickness, string Width);

/// <summary>Keeps the list of materials.</summary>
public interface IMaterialService
{
    /// <summary>All materials, boards before sheets, by name.</summary>
    Task<IReadOnlyList<MaterialView>> ListAsync(CancellationToken cancel = default);

    /// <summary>Adds or changes one of the user's own materials.</summary>
    Task<Outcome<MaterialView>> SaveAsync(
        MaterialEdit edit,
        LengthUnit unit,
        CommandId command,
        CancellationToken cancel = default
    );
}
