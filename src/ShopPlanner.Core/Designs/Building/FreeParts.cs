using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Parts and hardware that the document names itself.</summary>
internal static class FreeParts
{
    public static void Add(DesignDocument document, Scope scope, Builder builder, List<Fault> faults)
    {
        foreach (var part in document.Parts.TakeWhile(_ => builder.FullAt is null))
            Add(part, document, scope, builder, faults);
        foreach (var entry in document.Hardware)
            if (scope.Count(entry.Quantity, entry.Path + ".quantity") is { } quantity)
                builder.Buy(entry.Name, quantity);
    }

    private static void Add(FreePart part, DesignDocument document, Scope scope, Builder builder, List<Fault> faults)
    {
        builder.Path = part.Path;
        if (part.Along == part.Flat)
        {
            faults.Add(
                Fault.Of(
                    part.Path + ".flat",
                    part.Flat.ToString(),
                    "is the direction of its length too: its thickness must run another way"
                )
            );
            return;
        }

        if (document.Materials.FirstOrDefault(one => one.Role == part.Role) is not { } material)
        {
            faults.Add(
                Fault.Of(
                    part.Path + ".material",
                    part.Role,
                    "isn't a material role in this design: it has "
                        + string.Join(", ", document.Materials.Select(one => one.Role))
                )
            );
            return;
        }

        Place(part, material, scope, builder, faults);
    }

    private static void Place(FreePart part, RoleMaterial material, Scope scope, Builder builder, List<Fault> faults)
    {
        var length = scope.Length("Length", part.Length, part.Path + ".length");
        var width =
            part.Width is { } text ? scope.Length("Width", text, part.Path + ".width")
            : material.Width is { } own ? Workings.Working.Given("Width of the board", own)
            : null;
        if (length is null)
            return;
        if (width is null)
        {
            if (part.Width is null)
                faults.Add(Fault.Of(part.Path + ".width", "", "is missing, and a sheet has no width of its own"));
            return;
        }

        for (var i = 0; i < part.At.Length; i++)
        {
            var at = part.At[i]
                .Select((one, n) => scope.Length("Position", one, FormattableString.Invariant($"{part.Path}.at.{i}.{n}")))
                .ToImmutableArray();
            if (at.Any(one => one is null))
                return;
            var draft = new Draft(part.Name, "Free parts", material, default, part.Along, part.Flat);
            var box = new Box(at[0]!.Value, at[1]!.Value, at[2]!.Value, Side(Axis.X), Side(Axis.Y), Side(Axis.Z));
            builder.Add(draft with { Box = box, Length = length, Width = width });

            Length Side(Axis axis) =>
                axis == part.Along ? length.Value
                : axis == part.Flat ? material.Thickness
                : width.Value;
        }
    }
}
