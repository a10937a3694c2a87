using System.Text;
using System.Text.Json.Nodes;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs.Bad;

/// <summary>Built-in designs, changed at random: each is refused with its places, or gives a piece in which every joint touches,
/// or a finding that says why not.</summary>
public sealed class MutationTests
{
    private const int Each = 40;

    // A door's gap or a slide's thickness lies between what is hung or runs and what carries it.
    private static readonly Length Widest = Made.Inches(2);

    public static TheoryData<string> Names => [.. DesignFiles.Names, .. BadDesigns.Good.Keys];

    [Theory, MemberData(nameof(Names))]
    public void It_is_refused_or_holds_what_a_piece_promises(string name)
    {
        var good = BadDesigns.Good.GetValueOrDefault(name) ?? File.ReadAllText(DesignFiles.PathOf(name));
        var chance = new Random(20261128);
        var built = 0;
        for (var i = 0; i < Each; i++)
        {
            var root = JsonNode.Parse(good)!;
            var said = name + ": " + DesignMutation.Change(root, chance, 1 + (i % 3));
            try
            {
                built += Holds(root.ToJsonString(), said) ? 1 : 0;
            }
            catch (Exception crash) when (crash is not Xunit.Sdk.IAssertionException)
            {
                throw new InvalidOperationException(said, crash);
            }
        }

        Assert.True(built > 0, name + ": none was built");
    }

    private static bool Holds(string json, string said)
    {
        var evaluation = Made.Evaluate(json);
        if (evaluation.Piece is not { } piece)
        {
            Assert.NotEmpty(evaluation.Faults);
            Assert.All(evaluation.Faults, fault => Assert.True(fault.Field.Length > 0 && fault.Message.Length > 0, said));
            return false;
        }

        var findings = PieceJudge.Of(piece);
        Assert.NotEmpty(PartsJson.Write(piece));
        Joints(piece, findings, said);
        ReadsBackEqual(json, piece, said);
        return true;
    }

    private static void Joints(Piece piece, IReadOnlyList<PieceWarning> findings, string said)
    {
        var boxes = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, copy => copy.Box);
        var canBeBuilt = findings.All(one => one.Severity != Severity.Fails);
        foreach (var joint in piece.Joints)
        {
            var (from, into) = (boxes[joint.From], boxes[joint.Into]);
            if (joint.Kind is JointKind.Hinged or JointKind.Sliding)
                from = from.Grown(joint.Along, Widest, Widest);
            Assert.True(from.Meeting(into) is not null || !canBeBuilt, $"{said}: {joint} does not touch");
        }
    }

    private static void ReadsBackEqual(string json, Piece piece, string said)
    {
        var document = DesignJson.Read(Encoding.UTF8.GetBytes(json)).Document!;
        var again = Made.Evaluate(DesignJson.Write(document));
        Assert.True(again.Piece is not null, said + ": " + string.Join("; ", again.Faults));
        Assert.Equal(PartsJson.Write(piece), PartsJson.Write(again.Piece));
    }
}
