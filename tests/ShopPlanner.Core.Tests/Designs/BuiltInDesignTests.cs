using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>What must hold for every built-in design at any value within its limits.</summary>
public sealed class BuiltInDesignTests
{
    private const int Trials = 300;

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void It_is_worked_out_as_it_stands(string name)
    {
        var evaluation = DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>());
        Assert.Empty(evaluation.Faults);
        Holds(evaluation.Piece!, name);
    }

    [Theory, MemberData(nameof(Names))]
    public void It_holds_at_every_value_within_its_limits(string name)
    {
        var document = DesignFiles.Read(name);
        foreach (var values in DesignValues.Of(document, Trials, 20261125))
        {
            var said = name + ": " + string.Join(", ", values.Select(one => one.Key + "=" + one.Value));
            var evaluation = DesignEvaluator.Evaluate(document, values);
            Assert.True(
                evaluation.Faults.IsEmpty,
                said + Environment.NewLine + string.Join(Environment.NewLine, evaluation.Faults)
            );
            Holds(evaluation.Piece!, said);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void It_reads_back_equal(string name)
    {
        var document = DesignFiles.Read(name);
        var again = DesignJson.Read(System.Text.Encoding.UTF8.GetBytes(DesignJson.Write(document)));
        Assert.Empty(again.Faults);
        Assert.Equal(DesignJson.Write(document), DesignJson.Write(again.Document!));
    }

    // One place says how thick a sheet and a board are: the list of materials.
    [Theory, MemberData(nameof(Names))]
    public void Its_materials_have_the_names_and_sizes_of_the_list(string name)
    {
        foreach (var role in DesignFiles.Read(name).Materials)
        {
            var listed = MaterialCatalogue.StoreMaterials.Single(one => one.Id == role.Id);
            Assert.Equal(
                (listed.Name, listed.Form, listed.Thickness, listed.Width),
                (role.Name, role.Form, role.Thickness, role.Width)
            );
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Built_as_said_it_has_nothing_to_fix(string name)
    {
        var piece = DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>()).Piece!;
        Assert.DoesNotContain(
            PieceJudge.Of(piece, new Dictionary<string, LargestStock>()),
            warning => warning.Severity == Severity.Fails
        );
    }

    private static void Holds(Piece piece, string said)
    {
        FillsTheOutside(piece, said);
        OverlapsOnlyInJoints(piece, said);
        var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToList();
        Assert.True(marks.Count == marks.Distinct().Count(), said + ": a mark stands twice");
        Assert.DoesNotContain(
            piece.Warnings,
            warning =>
                warning.Text.Contains("same place", StringComparison.Ordinal)
                || warning.Text.Contains("in the air", StringComparison.Ordinal)
        );
    }

    private static void FillsTheOutside(Piece piece, string said)
    {
        var around = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Box).Aggregate((a, b) => a.Around(b));
        Assert.True(around == piece.Outside, $"{said}: the parts fill {around}, the outside is {piece.Outside}");
    }

    private static void OverlapsOnlyInJoints(Piece piece, string said)
    {
        var copies = piece.Parts.SelectMany(part => part.Copies).ToList();
        var joints = piece.Joints.ToLookup(joint => Pair(joint.From, joint.Into));
        foreach (var (a, i) in copies.Select((copy, i) => (copy, i)))
        foreach (var b in copies.Skip(i + 1))
            if (a.Box.Shared(b.Box) is { } shared)
                Assert.True(
                    joints[Pair(a.Mark, b.Mark)].Any(joint => shared.Extent(joint.Along) == joint.Depth),
                    $"{said}: {a.Mark} and {b.Mark} share {shared}, which no joint explains"
                );
    }

    private static (string, string) Pair(string a, string b) => string.CompareOrdinal(a, b) < 0 ? (a, b) : (b, a);
}
