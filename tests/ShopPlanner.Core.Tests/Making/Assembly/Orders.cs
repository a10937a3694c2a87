using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>What must hold of every order of assembly.</summary>
internal static class Orders
{
    public static void Hold(Piece piece, AssemblyPlan plan, string said)
    {
        Assert.DoesNotContain(plan.Findings, finding => finding.Severity == Severity.Fails);
        Precede(plan, said);
        JoinOnce(piece, plan, said);
        MoveOnce(piece, plan, said);
        Come(piece, plan, said);
        UseUp(piece, plan, said);
        Wait(plan, said);
    }

    /// <summary>Each step comes after all that it names, and all that it names is there.</summary>
    public static void Precede(AssemblyPlan plan, string said)
    {
        var done = new HashSet<string>();
        foreach (var step in plan.Steps)
        {
            Assert.All(step.After, before => Assert.True(done.Contains(before), $"{step.Id} before {before}: {said}"));
            Assert.True(done.Add(step.Id), $"{step.Id} twice: {said}");
            Assert.NotEmpty(step.Title);
            Assert.NotEmpty(step.Says);
        }
    }

    private static void JoinOnce(Piece piece, AssemblyPlan plan, string said)
    {
        var made = plan.Steps.SelectMany(step => step.Joints).Order().ToList();
        Assert.True(made.SequenceEqual(Enumerable.Range(0, piece.Joints.Length)), $"joints {string.Join(",", made)}: {said}");
    }

    // Each copy goes once into the piece and once into each subassembly that it is in.
    private static void MoveOnce(Piece piece, AssemblyPlan plan, string said)
    {
        var all = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).Order(StringComparer.Ordinal).ToList();
        Assert.True(all.SequenceEqual(Moved(plan, null)), $"{string.Join(",", Moved(plan, null))}: {said}");
        foreach (var unit in plan.Subassemblies)
        {
            Assert.True(unit.Marks.Order(StringComparer.Ordinal).SequenceEqual(Moved(plan, unit.Id)), $"{unit.Id}: {said}");
            Assert.True(
                unit.Units.SelectMany(one => one).Order(StringComparer.Ordinal).SequenceEqual(Moved(plan, unit.Id)),
                unit.Id
            );
        }
    }

    private static List<string> Moved(AssemblyPlan plan, string? unit) =>
        [
            .. plan
                .Steps.Where(step => step.Subassembly == unit)
                .SelectMany(step => step.Moves)
                .SelectMany(move => move.Marks)
                .Order(StringComparer.Ordinal),
        ];

    // Every move is free, and what moves as one was put together before.
    private static void Come(Piece piece, AssemblyPlan plan, string said)
    {
        var straight = new Straight(piece);
        var swinging = plan.Steps.Where(step => step.Action == WorkAction.Hang).SelectMany(step => step.Handles).ToHashSet();
        var placed = new Dictionary<string, List<string>>();
        var together = new HashSet<string>();
        foreach (var step in plan.Steps)
        foreach (var move in step.Moves)
        {
            var place = Place(plan, step, move);
            var there = placed.TryGetValue(place, out var known) ? known : placed[place] = [];
            Assert.True(move.Along is not null || there.Count == 0, $"{step.Id} is shut in: {said}");
            if (move.Along is { } along)
                foreach (var mover in move.Marks)
                foreach (var stands in there.Where(one => !swinging.Contains(one)))
                    Assert.True(straight.Comes(mover, stands, along, move.Forward), $"{step.Id}: {mover} hits {stands}, {said}");
            Assert.True(
                move.Marks.Length == 1 || together.Contains(Key(move.Marks)),
                $"{step.Id}: {Key(move.Marks)} isn't together: {said}"
            );
            there.AddRange(move.Marks);
            together.Add(Key(there));
        }
    }

    private static string Place(AssemblyPlan plan, WorkStep step, WorkMove move)
    {
        if (step.Subassembly is null)
            return "";
        var units = plan.Subassemblies.Single(unit => unit.Id == step.Subassembly).Units;
        return step.Subassembly + " " + Enumerable.Range(0, units.Length).Single(i => units[i].Contains(move.Marks[0]));
    }

    private static string Key(IEnumerable<string> marks) => string.Join(' ', marks.Order(StringComparer.Ordinal));

    private static void UseUp(Piece piece, AssemblyPlan plan, string said)
    {
        static List<(string, int)> Sums(IEnumerable<(string Name, int Quantity)> items) =>
            [
                .. items
                    .GroupBy(item => item.Name)
                    .Select(same => (same.Key, same.Sum(item => item.Quantity)))
                    .OrderBy(one => one.Key, StringComparer.Ordinal),
            ];

        var bought = Sums(piece.Hardware.Select(item => (item.Name, item.Quantity)));
        var used = Sums(plan.Steps.SelectMany(step => step.Fasteners).Select(item => (item.Name, item.Quantity)));
        Assert.True(bought.SequenceEqual(used), $"{string.Join("; ", used)} of {string.Join("; ", bought)}: {said}");
    }

    private static void Wait(AssemblyPlan plan, string said)
    {
        foreach (var step in plan.Steps.Where(step => step.Wait is not null))
        {
            Assert.Equal(WorkGlue.Pva.SetMinutes, step.Wait!.Minutes);
            Assert.Equal(WorkGlue.Pva.ClampMinutes, step.Wait.ClampMinutes);
            Assert.True(step.Wait.Clamps >= 2, said);
            Assert.Contains(step.Says, sentence => sentence.Contains("glue", StringComparison.OrdinalIgnoreCase));
        }
    }
}
