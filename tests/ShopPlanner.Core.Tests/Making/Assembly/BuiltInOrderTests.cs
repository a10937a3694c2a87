using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>The order of assembly of every built-in design, at values within its limits, and of designs of any kind.</summary>
public sealed class BuiltInOrderTests
{
    private const int Trials = 12;
    private const int MadeUp = 60;

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    public static TheoryData<string> Frames => [.. DesignKinds.Frames.Select(one => one.Name)];

    [Theory, MemberData(nameof(Names))]
    public void The_order_can_be_followed_at_any_size(string name)
    {
        var document = DesignFiles.Read(name);
        var corners = 1 << Math.Min(6, document.Dimensions.Length);
        foreach (var values in DesignValues.Of(document, Trials, 20261128).Where((_, i) => i < corners || i % 7 == 0))
        {
            if (DesignEvaluator.Evaluate(document, values).Piece is not { } piece)
                continue;
            var said = name + " " + string.Join(", ", values.Select(one => $"{one.Key} {one.Value}"));
            Orders.Hold(piece, AssemblyOrder.Of(piece, WorkChoices.Usual), said);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Ids_stay_while_sizes_change(string name)
    {
        var document = DesignFiles.Read(name);
        var first = DesignEvaluator.Evaluate(document, new Dictionary<string, string>()).Piece!;
        var ids = Ids(first);
        foreach (var values in DesignValues.Of(document, Trials, 7).Where((_, i) => i % 5 == 0))
            if (DesignEvaluator.Evaluate(document, values).Piece is { } piece && Structure(piece) == Structure(first))
                Assert.Equal(ids.Order(StringComparer.Ordinal), Ids(piece).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Frames))]
    public void Whatever_a_design_names_the_order_keeps_its_precedence(string frame)
    {
        var chance = new Random(20261201);
        for (var i = 0; i < MadeUp; i++)
        {
            var json = RandomDesigns.Next(frame, chance);
            if (Made.Evaluate(json).Piece is not { } piece)
                continue;
            var plan = AssemblyOrder.Of(piece, WorkChoices.Usual);
            Orders.Precede(plan, json);
            Assert.Equal(Enumerable.Range(0, piece.Joints.Length), plan.Steps.SelectMany(step => step.Joints).Order());
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void The_same_piece_gives_the_same_plan(string name)
    {
        var document = DesignFiles.Read(name);
        var nothing = new Dictionary<string, string>();
        var (one, other) = (
            DesignEvaluator.Evaluate(document, nothing).Piece!,
            DesignEvaluator.Evaluate(document, nothing).Piece!
        );
        var (plan, again) = (WorkPlanner.Of(one, WorkChoices.Usual), WorkPlanner.Of(other, WorkChoices.Usual));
        Assert.Equal(plan.Steps.Select(Text), again.Steps.Select(Text));
    }

    private static List<string> Ids(Piece piece) => [.. AssemblyOrder.Of(piece, WorkChoices.Usual).Steps.Select(step => step.Id)];

    private static string Text(WorkStep step) =>
        string.Join(
            '|',
            [step.Id, step.Title, .. step.Says, .. step.Handles, .. step.After, .. step.Moves.SelectMany(one => one.Marks)]
        );

    // Names and how often, what is joined to what, and which way the piece is longer, since its shorter ends are made first.
    private static string Structure(Piece piece)
    {
        var names = piece.Parts.SelectMany(part => part.Copies.Select(copy => (copy.Mark, part.Name))).ToDictionary();
        var (wide, deep) = ((double)piece.Outside.Dx.Ticks, (double)piece.Outside.Dy.Ticks);
        return (
                deep < wide * 0.95 ? "wide "
                : deep > wide * 1.05 ? "deep "
                : "even "
            )
            + string.Join(';', names.Values.Order(StringComparer.Ordinal))
            + string.Join(
                ';',
                piece
                    .Joints.Select(one => $"{one.Kind} {names[one.From]} {names[one.Into]} {one.Along}")
                    .Order(StringComparer.Ordinal)
            );
    }
}
