using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs;

/// <summary>What working a design out gave.</summary>
/// <param name="Piece">The piece; null where there are faults.</param>
/// <param name="Faults">Each names its place in the document.</param>
public sealed record Evaluation(Piece? Piece, ImmutableArray<Fault> Faults);

/// <summary>Works a design out: from named dimensions to every part, where it is, and what joins it.</summary>
public sealed class DesignEvaluator
{
    private static readonly string[] OutsideNames = ["width", "depth", "height"];
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    private readonly DesignDocument document;
    private readonly List<Fault> faults = [];
    private readonly Builder builder = new();
    private readonly Scope scope;

    private DesignEvaluator(DesignDocument document, IReadOnlyDictionary<string, string> changed)
    {
        this.document = document;
        scope = new Scope(document, changed, faults);
    }

    /// <summary>Works it out.</summary>
    /// <param name="document">The design.</param>
    /// <param name="changed">Texts for named dimensions, in place of the document's.</param>
    public static Evaluation Evaluate(DesignDocument document, IReadOnlyDictionary<string, string> changed)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(changed);
        var evaluator = new DesignEvaluator(document, changed);
        var piece = evaluator.Run();
        return evaluator.faults.Count == 0 ? new(piece, []) : new(null, [.. evaluator.faults]);
    }

    private Piece? Run()
    {
        foreach (var dimension in document.Dimensions) scope.Find(dimension.Name, "dimensions." + dimension.Name);
        if (faults.Count > 0 || Size() is not { } outside) return null;
        var top = document.Top is { } node ? Find(Kinds.Tops, one => one.Info, node) : null;
        var height = top is null ? outside.Height : Lower(outside.Height, top.Thickness(Reader(document.Top!, top.Info)));
        var frame = Find(Kinds.Frames, one => one.Info, document.Frame);
        var bay = frame?.Build(Reader(document.Frame, frame.Info), outside with { Height = height }, At(document.Frame.Path));
        if (document.Bays is { } bays && bay is not null) Fill(bays, bay);
        top?.Build(Reader(document.Top!, top.Info), outside, At(document.Top!.Path));
        FreeParts.Add(document, scope, builder, faults);
        return faults.Count > 0 || !SizesHold() ? null : Finish(outside);
    }

    private Outside? Size()
    {
        var sides = OutsideNames.Select(name => scope.Find(name, "dimensions." + name) as Working<Length>).ToArray();
        if (Array.TrueForAll(sides, one => one is { Value.IsPositive: true })) return new(sides[0]!, sides[1]!, sides[2]!);
        faults.Add(Fault.Of("dimensions", "", "must have width, depth and height, each a length of more than nothing: the outside size"));
        return null;
    }

    private static Working<Length> Lower(Working<Length> height, Length top) => Working.Of(
        "Height under the top", height.Value - top, "{height} − {top}", Working.Geometry, ("height", height), ("top", Working.Given("top", top)));

    private void Fill(BayNode node, Bay bay)
    {
        foreach (var fill in node.Fills)
            if (Find(Kinds.Fills, one => one.Info, fill) is { } kind) kind.Build(Reader(fill, kind.Info), bay, At(fill.Path));
        builder.Openings.Add(new(node.Path, bay.Box, [.. node.Fills.Select(one => one.Kind)]));
        if (node.Split is not { } split || Find(Kinds.Splits, one => one.Info, split) is not { } splitter) return;
        var sizes = node.Sizes.Select(text => text == "*" ? null : scope.Length("Clear size", text, node.Path + ".sizes")).ToImmutableArray();
        var bays = splitter.Build(Reader(split, splitter.Info), bay, sizes, At(split.Path));
        foreach (var (child, part) in node.Bays.Zip(bays)) Fill(child, part);
    }

    private T? Find<T>(ImmutableArray<T> kinds, Func<T, KindInfo> info, DesignNode node)
        where T : class
    {
        var kind = kinds.FirstOrDefault(one => info(one).Name == node.Kind);
        if (kind is null) faults.Add(Fault.Of(node.Path + ".kind", node.Kind, "is not known here: one of " + string.Join(", ", kinds.Select(one => info(one).Name))));
        return kind;
    }

    private NodeReader Reader(DesignNode node, KindInfo kind) => new(node, kind, scope, document.Materials, faults);

    private Builder At(string path)
    {
        builder.Path = path;
        return builder;
    }

    private bool SizesHold()
    {
        foreach (var draft in builder.Drafts)
            if (Axes.Any(axis => !draft.Box.Extent(axis).IsPositive)) faults.Add(TooSmall(draft));
        return faults.Count == 0;
    }

    private Fault TooSmall(Draft draft)
    {
        var sides = string.Join(" × ", new[] { draft.Along, draft.Across, draft.Flat }.Select(axis => LengthFormat.Plain(draft.Box.Extent(axis), document.Unit).Text));
        return Fault.Of(draft.Path, sides, $"is what {draft.Name.ToLowerInvariant()} comes to, less than nothing in one direction: there is no room for it");
    }

    private Piece Finish(Outside outside)
    {
        var marking = new Marking(builder.Drafts);
        var box = new Box(Length.Zero, Length.Zero, Length.Zero, outside.Width.Value, outside.Depth.Value, outside.Height.Value);
        return new(
            document.Name, document.Unit, box, marking.Parts,
            [.. builder.Joints.Select(one => new Joint(one.Kind, marking.Mark(one.From), marking.Mark(one.Into), one.Along, one.Depth))],
            [.. builder.Hardware.Select(one => new HardwareItem(one.Key, one.Value))], [.. builder.Openings],
            [.. builder.Warnings.Select(one => new PieceWarning(one.Gravity, one.Text, one.About is { } draft ? marking.Id(draft) : null, one.Working))],
            [.. document.Steps, .. builder.Steps]);
    }
}
