using System.Collections.Immutable;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Making;

/// <summary>The work on a parts list without a design: what is done to single parts, and the finish.</summary>
internal static class ListedWork
{
    /// <summary>Returns it; from nothing where no row can be read.</summary>
    /// <param name="name">The project's.</param>
    /// <param name="unit">Of its lengths.</param>
    /// <param name="rows">The parts list.</param>
    /// <param name="materials">To find what its parts are of.</param>
    /// <param name="choices">What the builder decides.</param>
    public static PlannedWork Of(
        string name,
        LengthUnit unit,
        ImmutableArray<PartRow> rows,
        MaterialIndex materials,
        WorkChoices choices
    )
    {
        var parts = rows.Select(row => row.Part).OfType<CutPart>().ToImmutableArray();
        if (parts.IsEmpty)
            return new(WorkBasis.Nothing, unit, null, null);
        var plan = WorkPlanner.Of(name, unit, [.. parts.Select(Plain)], [.. parts.Select(one => Count(one, materials))], choices);
        return new(WorkBasis.Parts, unit, null, plan) { Names = parts.ToImmutableDictionary(one => one.Id, one => one.Name) };
    }

    private static PlainPart Plain(CutPart part) =>
        new(part.Name, part.Id, Long(part), Wide(part), part.Length, part.Width) { Quantity = part.Quantity };

    private static CountedPart Count(CutPart part, MaterialIndex materials)
    {
        var material = materials[part.Material];
        return new(part.Id, part.Quantity, Long(part), Wide(part), material.Thickness, material.Counted(), FinishFaces.All);
    }

    private static Length Long(CutPart part) => part.FinishedLength ?? part.Length;

    private static Length Wide(CutPart part) => part.FinishedWidth ?? part.Width;
}
