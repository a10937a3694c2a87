using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Shapes at random on the parts of built-in designs: each is refused with its place, or lies inside the wood and leaves
/// what is let in whole.</summary>
public sealed class ShapePropertyTests
{
    private const int Each = 60;

    private static readonly Dictionary<string, string> Nothing = [];
    private static readonly string[] Sides = ["left", "right", "front", "back", "bottom", "top"];
    private static readonly string[] Axes = ["x", "y", "z"];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void It_is_refused_or_spoils_nothing(string name)
    {
        var plain = DesignFiles.Read(name);
        var parts = DesignEvaluator.Evaluate(plain, Nothing).Piece!.Parts.Select(part => part.Name).Distinct().ToList();
        var chance = new Random(20261128);
        var taken = 0;
        for (var i = 0; i < Each; i++)
        {
            var shape = new AppliedShape(parts[chance.Next(parts.Count)], Shape(chance));
            var said = $"{name}: {shape.Of}, {shape.Shape.Kind} {string.Join(", ", shape.Shape.Members)}";
            var evaluation = DesignEvaluator.Evaluate(plain with { Shapes = [shape] }, Nothing);
            if (evaluation.Piece is not { } piece)
            {
                Assert.All(evaluation.Faults, fault => Assert.StartsWith("shapes.0", fault.Field, StringComparison.Ordinal));
                continue;
            }

            taken++;
            Assert.False(PieceJudge.Of(piece).IsDefault, said);
            Holds(piece, said);
        }

        Assert.True(taken > 0, name + ": none was taken");
    }

    private static void Holds(Piece piece, string said)
    {
        var copies = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark);
        foreach (var copy in copies.Values)
        foreach (var feature in copy.Features)
            Assert.True(copy.Box.Around(feature.Room(copy.Box)) == copy.Box, said + ": outside " + feature);
        foreach (var joint in piece.Joints.Where(joint => joint.Depth.IsPositive))
        {
            var shared = copies[joint.From].Box.Shared(copies[joint.Into].Box)!.Value;
            foreach (var copy in new[] { copies[joint.From], copies[joint.Into] })
                Assert.DoesNotContain(
                    copy.Features,
                    feature =>
                        (feature.IsSquare || feature is Taper)
                        && feature.Room(copy.Box).Shared(shared) is not null
                        && !IsToe(feature)
                );
        }
    }

    // The toe space of a case was there before.
    private static bool IsToe(PartFeature feature) => feature is Notch { IsToe: true };

    private static DesignNode Shape(Random chance)
    {
        var kind = DesignKinds.Shapes[chance.Next(DesignKinds.Shapes.Length)];
        var members = kind
            .Members.Where(member => member.Default is null || (member.Type == MemberType.Length && chance.Next(3) == 0))
            .ToDictionary(member => member.Name, member => Value(member, chance));
        return new(kind.Name, System.Collections.Immutable.ImmutableDictionary.CreateRange(members), "shapes.0");
    }

    private static string Value(MemberInfo member, Random chance) =>
        member.Type switch
        {
            MemberType.Length => FormattableString.Invariant($"{chance.Next(1, 48)}/16 in"),
            MemberType.Angle => FormattableString.Invariant($"{chance.Next(5, 60)}"),
            MemberType.Count => FormattableString.Invariant($"{chance.Next(1, 4)}"),
            _ when member.Choices.Contains("z") => Axes[chance.Next(3)],
            _ => Sides[chance.Next(6)],
        };
}
