using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Operations;

/// <summary>Operations worked out for pieces, and ways to ask them.</summary>
internal static class Worked
{
    /// <summary>What is cut into the part that takes another.</summary>
    public static readonly WorkAction[] Taking =
    [
        WorkAction.Groove,
        WorkAction.Dado,
        WorkAction.Rabbet,
        WorkAction.Mortise,
        WorkAction.Lap,
        WorkAction.Shape,
    ];

    public static ImmutableArray<WorkStep> Steps(Piece piece) => OperationList.Of(piece, WorkChoices.Usual);

    /// <summary>A built-in design as it stands, and at values within its limits.</summary>
    /// <param name="name">Of the design.</param>
    /// <param name="trials">How many values at random, beside corners.</param>
    /// <param name="withCounts">Whether counts change too.</param>
    public static IEnumerable<(string Said, Piece Piece)> BuiltIn(string name, int trials, bool withCounts = true)
    {
        var document = DesignFiles.Read(name);
        var counts = document.Dimensions.Where(one => one.IsCount).Select(one => one.Name).ToHashSet();
        var values = DesignValues.Of(document, trials, 20261128).TakeLast(trials + 16).Prepend(new Dictionary<string, string>());
        foreach (var chosen in values)
        {
            var set = chosen.Where(one => withCounts || !counts.Contains(one.Key)).ToDictionary();
            var evaluation = DesignEvaluator.Evaluate(document, set);
            if (evaluation.Piece is { } piece)
                yield return (name + ": " + string.Join(", ", set.Select(one => one.Key + "=" + one.Value)), piece);
            else
                Assert.False(withCounts, "a built-in design is worked out at every value within its limits");
        }
    }

    /// <summary>Pieces of any frame, as a hand might make them up.</summary>
    public static IEnumerable<(string Said, Piece Piece)> MadeUp(string frame, int trials)
    {
        var chance = new Random(20261128);
        for (var i = 0; i < trials; i++)
        {
            var json = RandomDesigns.Next(frame, chance);
            if (Made.Evaluate(json).Piece is { } piece && AreHeld(piece))
                yield return (json, piece);
        }
    }

    // A drawer made up so low that its bottom lies above its sides can't be built.
    private static bool AreHeld(Piece piece)
    {
        var copies = Copies(piece);
        return Enumerable
            .Range(0, piece.Joints.Length)
            .Select(i => Recut.Of(piece, copies, i))
            .All(one => !one.Joint.Depth.IsPositive || one.Joint.Along == one.From.Flat || (one.Near >= 0 && one.Far >= 0));
    }

    public static WorkStep Step(this ImmutableArray<WorkStep> steps, string id) =>
        steps.FirstOrDefault(one => one.Id == id)
        ?? throw new Xunit.Sdk.XunitException($"no {id} among " + string.Join(", ", steps.Select(one => one.Id)));

    /// <summary>The one figure of a name.</summary>
    public static Length Figure(this WorkStep step, string name) => Assert.Single(step.Settings, one => one.Name == name).Value;

    /// <summary>All figures whose names begin so.</summary>
    public static IEnumerable<long> Figures(this WorkStep step, string name) =>
        step.Settings.Where(one => one.Name.StartsWith(name, StringComparison.Ordinal)).Select(one => one.Value.Ticks);

    public static Dictionary<string, PartCopy> Copies(Piece piece) =>
        piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark);
}

/// <summary>Where one joint is in the wood, worked out from the two boxes alone, in ticks.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="From">What is let in.</param>
/// <param name="Into">What takes it.</param>
internal sealed record Recut(Joint Joint, PartCopy From, PartCopy Into)
{
    /// <summary>Thickness of what is let in.</summary>
    public long Thick => Size(From.Box, From.Flat);

    /// <summary>Extent of what takes it, across the trench.</summary>
    public long Stock => Size(Into.Box, From.Flat);

    /// <summary>Wood before the trench.</summary>
    public long Near => At(From.Box, From.Flat) - At(Into.Box, From.Flat);

    /// <summary>Wood beyond it.</summary>
    public long Far => Stock - Near - Thick;

    /// <summary>How deep it must be.</summary>
    public long Depth => Joint.Depth.Ticks + Joint.Clearance.Ticks;

    /// <summary>Extent of what takes it, in the direction of the depth.</summary>
    public long Room => Size(Into.Box, Joint.Along);

    /// <summary>Whether what goes in is as thick as what takes it, so that only a tongue can go in.</summary>
    public bool IsWhole => Near == 0 && Far == 0;

    public static Recut Of(Piece piece, Dictionary<string, PartCopy> copies, int joint) =>
        new(piece.Joints[joint], copies[piece.Joints[joint].From], copies[piece.Joints[joint].Into]);

    public static long At(Box box, Axis axis) =>
        axis switch
        {
            Axis.X => box.X.Ticks,
            Axis.Y => box.Y.Ticks,
            _ => box.Z.Ticks,
        };

    public static long Size(Box box, Axis axis) =>
        axis switch
        {
            Axis.X => box.Dx.Ticks,
            Axis.Y => box.Dy.Ticks,
            _ => box.Dz.Ticks,
        };
}
