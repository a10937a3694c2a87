using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace ShopPlanner.Core.Calculators;

/// <summary>All forms, by subject.</summary>
public static class WorkingForms
{
    /// <summary>In the order of the list that people see.</summary>
    public static readonly ImmutableArray<WorkingForm> All =
    [
        .. MeasureForms.All,
        .. WoodForms.All,
        .. DoorForms.All,
        .. JoineryForms.All,
        .. ShelfForms.All,
        .. FurnitureForms.All,
        .. HingeForms.All,
        .. SpacingForms.All,
        .. FastenerForms.All,
        .. FinishForms.All,
    ];

    /// <summary>The form with this name.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out WorkingForm? form) =>
        (form = All.FirstOrDefault(one => one.Name == name)) is not null;
}
