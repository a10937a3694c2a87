using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Making;

/// <summary>The rows of a parts list as a piece whose parts lie apart: nobody said how they go together.</summary>
internal sealed class RowPiece(MaterialIndex materials)
{
    // More than any joint reaches.
    private static readonly Length Gap = Length.FromFeet(1);

    private Length at = Length.Zero;

    /// <summary>Returns the piece; null where no row can be read.</summary>
    /// <param name="name">The project's.</param>
    /// <param name="unit">Of its lengths.</param>
    /// <param name="rows">The parts list.</param>
    public Piece? Of(string name, LengthUnit unit, ImmutableArray<PartRow> rows)
    {
        var parts = rows.Where(row => row.Part is not null).Select(row => Part(row.Part!)).ToImmutableArray();
        if (parts.IsEmpty)
            return null;
        var around = parts.SelectMany(part => part.Copies).Select(copy => copy.Box).Aggregate((sum, box) => sum.Around(box));
        return new(name, unit, around, parts, [], [], [], [], []);
    }

    private PiecePart Part(CutPart part)
    {
        var material = materials[part.Material];
        var (length, width) = (part.FinishedLength ?? part.Length, part.FinishedWidth ?? part.Width);
        return new(
            part.Id,
            part.Name,
            "Parts list",
            Material(material),
            Working.Given("Length", length),
            Working.Given("Width", width),
            Working.Given("Thickness", material.Thickness),
            part.Length,
            part.Width,
            part.Grain != Grain.Any,
            PartPurpose.Member,
            "",
            [.. Enumerable.Range(1, part.Quantity).Select(n => Copy(part.Id, n, (length, width, material.Thickness)))],
            part.Quantity
        );
    }

    private PartCopy Copy(string part, int number, (Length Length, Length Width, Length Thickness) size)
    {
        var box = new Box(at, Length.Zero, Length.Zero, size.Length, size.Width, size.Thickness);
        at = box.EndX + Gap;
        return new(part + number.ToString(CultureInfo.InvariantCulture), box, Hand.Either, Axis.X, Axis.Z);
    }

    private static RoleMaterial Material(StoredMaterial material) =>
        new(
            material.Id,
            material.Id,
            material.Name,
            material.Form == StockForm.Sheet ? MaterialForm.Sheet : MaterialForm.Board,
            material.Thickness,
            material.Width,
            StoreProperties.Of(material.Id)
        );
}
