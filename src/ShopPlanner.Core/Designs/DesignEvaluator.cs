using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Designs.Shaping;
using ShopPlanner.Core.Documents;
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
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];
    private static readonly string TooMany = FormattableString.Invariant(
        $"asks for more than {Builder.MostCopies} pieces of wood: use fewer"
    );

    private readonly DesignDocument document;
    private readonly List<Fault> faults = [];
    private readonly Builder builder;
    private readonly Scope scope;

    private DesignEvaluator(DesignDocument document, IReadOnlyDictionary<string, string> changed)
    {
        this.document = document;
        builder = new Builder { Unit = document.Unit };
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
        return evaluator.faults.Count == 0 ? new(piece, []) : new(null, FaultList.Cap(evaluator.faults));
    }

    private Piece? Run()
    {
        foreach (var dimension in document.Dimensions)
            scope.Find(dimension.Name, "dimensions." + dimension.Name);
        if (faults.Count > 0 || Size() is not { } outside)
            return null;
        var top = document.Top is { } node ? Find(Kinds.Tops, one => one.Info, node) : null;
        var overhang = top?.Overhang(Reader(document.Top!, top.Info)) ?? Overhang.None;
        Build(Within(outside, top?.Thickness(Reader(document.Top!, top.Info)) ?? Length.Zero, overhang), overhang);
        top?.Build(Reader(document.Top!, top.Info), outside, At(document.Top!.Path));
        AddParts(outside);
        if (faults.Count == 0 && builder.Drafts.Count == 0)
            faults.Add(Fault.Of("parts", "", "are missing: a design without a frame is made of its extra parts alone"));
        if (builder.FullAt is { } place)
            faults.Add(Fault.Of(place, "", TooMany));
        return faults.Count > 0 || !SizesHold() ? null : Finish(outside);
    }

    // A part is shaped and edged before it is joined: what is cut out of it is where another one may be.
    private void AddParts(Outside outside)
    {
        var parts = FreeParts.Place(document, scope, builder, faults);
        FreeParts.Buy(document, scope, builder);
        if (faults.Count > 0 || builder.Drafts.Any(IsFlawed))
            return;
        FreeEdges.Add(parts, Reader, builder, faults);
        if (builder.Drafts.Any(IsFlawed))
            return;
        var shaper = new Shaper(Reader, builder, Whole(outside), faults);
        shaper.Shape(parts, document.Shapes);
        if (faults.Count == 0)
            FreeJoints.Add(parts, scope, builder, faults);
        if (faults.Count == 0)
            shaper.Check();
    }

    private static Box Whole(Outside outside) =>
        new(Length.Zero, Length.Zero, Length.Zero, outside.Width.Value, outside.Depth.Value, outside.Height.Value);

    // The frame is built under the top, within its overhang, and behind what stands out in front.
    private Outside Within(Outside outside, Length top, Overhang overhang)
    {
        builder.StandsOut = document.Bays is { } bays ? StandsOut(bays) : Length.Zero;
        return new(
            Less("Width of the frame", outside.Width, "width", overhang.Ends * 2, "overhang of the top"),
            Less(
                "Depth of the frame",
                outside.Depth,
                "depth",
                overhang.Front + overhang.Back + builder.StandsOut,
                "overhang and fronts"
            ),
            Less("Height of the frame", outside.Height, "height", top, "top")
        );
    }

    private void Build(Outside within, Overhang overhang)
    {
        if (Find(Kinds.Frames, one => one.Info, document.Frame) is not { } frame)
            return;
        var reader = Reader(document.Frame, frame.Info);
        var lift = frame.Lift(reader);
        var above = within with { Height = Less("Height above the base", within.Height, "height", lift, "base") };
        var bay = frame.Build(reader, above, At(document.Frame.Path));
        if (document.Bays is { } bays && bay is not null)
            Fill(bays, bay);
        builder.Move(overhang.Ends, overhang.Front + builder.StandsOut, lift);
    }

    private Length StandsOut(BayNode node)
    {
        var own = node.Fills.Select(fill =>
            Kinds.Fills.FirstOrDefault(one => one.Info.Name == fill.Kind) is { } kind
                ? kind.StandsOut(Reader(fill, kind.Info))
                : Length.Zero
        );
        return own.Concat(node.Bays.Select(StandsOut)).Aggregate(Length.Zero, Length.Max);
    }

    private Outside? Size()
    {
        var sides = DesignSizes.Outside.Select(name => scope.Find(name, "dimensions." + name) as Working<Length>).ToArray();
        if (Array.TrueForAll(sides, one => one is { Value.IsPositive: true }))
            return new(sides[0]!, sides[1]!, sides[2]!);
        faults.Add(
            Fault.Of("dimensions", "", "must have width, depth and height, each more than zero: they are the outside size")
        );
        return null;
    }

    private static Working<Length> Less(string name, Working<Length> whole, string key, Length less, string what) =>
        less == Length.Zero
            ? whole
            : Working.Of(
                name,
                whole.Value - less,
                $"{{{key}}} − {{less}}",
                Working.Geometry,
                (key, whole),
                ("less", Working.Given(what, less))
            );

    private void Fill(BayNode node, Bay bay)
    {
        if (builder.FullAt is not null)
            return;
        builder.Openings.Add(new(node.Path, bay.Box, [.. node.Fills.Select(one => one.Kind)]));
        var fills = node
            .Fills.Select(fill => (Node: fill, Kind: Find(Kinds.Fills, one => one.Info, fill)))
            .Where(one => one.Kind is not null);
        foreach (var (fill, kind) in fills.OrderBy(one => one.Kind!.Closes ? 0 : 1).TakeWhile(_ => builder.FullAt is null))
            bay = kind!.Build(Reader(fill, kind.Info), bay, At(fill.Path));
        if (node.Split is not { } split || Find(Kinds.Splits, one => one.Info, split) is not { } splitter)
            return;
        var sizes = node
            .Sizes.Select(text => text == "*" ? null : scope.Length("Clear size", text, node.Path + ".sizes"))
            .ToImmutableArray();
        bay = bay with { Fronts = [.. node.Bays.Select(HasFront)] };
        var bays = splitter.Build(Reader(split, splitter.Info), bay, sizes, At(split.Path));
        if (bays.IsEmpty || !Share(node, bay, bays))
            return;
        foreach (var (child, part) in node.Bays.Zip(bays))
            Fill(child, part);
    }

    private static bool HasFront(BayNode node) =>
        node.Fills.Any(fill => Kinds.Fills.FirstOrDefault(one => one.Info.Name == fill.Kind) is { HasFront: true })
        || node.Bays.Any(HasFront);

    // Clear sizes that are given may be more than there is, or less with no bay to take the rest.
    private bool Share(BayNode node, Bay bay, ImmutableArray<Bay> bays)
    {
        var axis = bays[0].Box.Dx == bay.Box.Dx ? Axis.Z : Axis.X;
        var over = bay.Box.End(axis) - bays[^1].Box.End(axis);
        if (bays.FirstOrDefault(one => !one.Box.Extent(axis).IsPositive) is { } none)
            Refuse($"leave a bay of {Text(none.Box.Extent(axis))}: there is no room for it");
        else if (over < Length.Zero)
            Refuse($"come to {Text(-over)} more than the bay has: make them smaller");
        else if (over.IsPositive)
            Refuse($"leave {Text(over)} of the bay unused: write * for one of them to take the rest");
        return faults.Count == 0;

        void Refuse(string message) => faults.Add(Fault.Of(node.Path + ".sizes", string.Join(", ", node.Sizes), message));
    }

    private string Text(Length length) =>
        LengthFormat.Plain(length, document.Unit).Text + (document.Unit == LengthUnit.Inch ? " in" : " mm");

    private T? Find<T>(ImmutableArray<T> kinds, Func<T, KindInfo> info, DesignNode node)
        where T : class => KindChoice.Find(kinds, info, node, faults);

    private NodeReader Reader(DesignNode node, KindInfo kind) => new(node, kind, scope, document.Materials, faults);

    private Builder At(string path)
    {
        builder.Path = path;
        return builder;
    }

    private bool SizesHold()
    {
        faults.AddRange(builder.Drafts.Where(IsFlawed).Select(TooSmall));
        return faults.Count == 0;
    }

    private static bool IsFlawed(Draft draft) => Axes.Any(axis => !draft.Box.Extent(axis).IsPositive);

    private Fault TooSmall(Draft draft)
    {
        var sides = string.Join(
            " × ",
            new[] { draft.Along, draft.Across, draft.Flat }.Select(axis =>
                LengthFormat.Plain(draft.Box.Extent(axis), document.Unit).Text
            )
        );
        return Fault.Of(
            draft.Path,
            sides,
            $"is what the {draft.Name.ToLowerInvariant()} comes to, less than zero in one direction: there is no room for it"
        );
    }

    private Piece Finish(Outside outside)
    {
        var box = Whole(outside);
        new Findings(builder, box, document.Unit).Note();
        EdgeSummary.Note(builder);
        var marking = new Marking(builder.Drafts, builder.Joints);
        var piece = new Piece(
            document.Name,
            document.Unit,
            box,
            marking.Parts,
            [
                .. builder.Joints.Select(one => new Joint(
                    one.Kind,
                    marking.Mark(one.From),
                    marking.Mark(one.Into),
                    one.Along,
                    one.Depth
                )
                {
                    Clearance = one.Clearance,
                }),
            ],
            [.. builder.Hardware.Select(one => new HardwareItem(one.Key, one.Value))],
            [.. builder.Openings],
            [
                .. builder.Warnings.Select(one => new PieceWarning(
                    one.Severity,
                    one.Text,
                    one.About is { } draft ? marking.Id(draft) : null,
                    one.Working
                )
                {
                    Place = one.Path.Length == 0 ? null : one.Path,
                }),
            ],
            [.. document.Steps, .. builder.Steps]
        )
        {
            IsFixedToWall = builder.IsFixedToWall,
        };
        var fastenings = Fastenings.Of(piece).Select(one => new HardwareItem(one.Name, one.Quantity));
        return piece with { Hardware = [.. piece.Hardware, .. fastenings] };
    }
}
