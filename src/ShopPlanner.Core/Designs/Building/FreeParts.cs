using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Parts and hardware that the document names itself.</summary>
internal static class FreeParts
{
    /// <summary>Puts the parts where they belong, and says which copies are whose; they are not joined yet.</summary>
    public static IReadOnlyDictionary<FreePart, IReadOnlyList<Draft>> Place(
        DesignDocument document,
        Scope scope,
        Builder builder,
        List<Fault> faults
    )
    {
        var drafts = new Dictionary<FreePart, IReadOnlyList<Draft>>(ReferenceEqualityComparer.Instance);
        foreach (var part in document.Parts.TakeWhile(_ => builder.FullAt is null))
            Add(part, document, scope, builder, faults, drafts);
        return drafts;
    }

    /// <summary>Adds hardware that the document names.</summary>
    public static void Buy(DesignDocument document, Scope scope, Builder builder)
    {
        foreach (var entry in document.Hardware)
            if (scope.Count(entry.Quantity, entry.Path + ".quantity") is { } quantity)
                builder.Buy(entry.Name, quantity);
    }

    private static void Add(
        FreePart part,
        DesignDocument document,
        Scope scope,
        Builder builder,
        List<Fault> faults,
        Dictionary<FreePart, IReadOnlyList<Draft>> drafts
    )
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

        Place(part, material, scope, builder, faults, drafts);
    }

    private static void Place(
        FreePart part,
        RoleMaterial material,
        Scope scope,
        Builder builder,
        List<Fault> faults,
        Dictionary<FreePart, IReadOnlyList<Draft>> drafts
    )
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

        var copies = new List<Draft>();
        foreach (var at in Corners(part, scope))
        {
            if (builder.FullAt is not null)
                return;
            var draft = new Draft(part.Name, "Free parts", material, default, part.Along, part.Flat);
            var box = new Box(at[0], at[1], at[2], Side(Axis.X), Side(Axis.Y), Side(Axis.Z));
            copies.Add(builder.Add(draft with { Box = box, Length = length, Width = width, GrainMatters = !part.AnyGrain }));
        }

        drafts[part] = copies;

        Length Side(Axis axis) =>
            axis == part.Along ? length.Value
            : axis == part.Flat ? material.Thickness
            : width.Value;
    }

    // Of every copy; those of a corner that cannot be read are left out, and the fault says so.
    private static IEnumerable<Length[]> Corners(FreePart part, Scope scope)
    {
        var (count, step) = Repeat(part, scope);
        for (var i = 0; i < part.At.Length; i++)
            if (Point(part.At[i], FormattableString.Invariant($"{part.Path}.at.{i}"), scope) is { } corner)
                for (var n = 0; n < count; n++)
                    yield return [.. corner.Zip(step, (from, by) => from + (by * n))];
    }

    private static (int Count, Length[] Step) Repeat(FreePart part, Scope scope)
    {
        Length[] nowhere = [Length.Zero, Length.Zero, Length.Zero];
        if (part.Repeat is not { } repeat)
            return (1, nowhere);
        var count = scope.Count(repeat.Count, part.Path + ".repeat.count");
        var step = Point(repeat.Step, part.Path + ".repeat.step", scope);
        return (count ?? 0, step ?? nowhere);
    }

    private static Length[]? Point(ImmutableArray<string> texts, string path, Scope scope)
    {
        var read = texts
            .Select((text, n) => scope.Length("Position", text, FormattableString.Invariant($"{path}.{n}"))?.Value)
            .ToList();
        return read.Contains(null) ? null : [.. read.Select(one => one!.Value)];
    }
}
