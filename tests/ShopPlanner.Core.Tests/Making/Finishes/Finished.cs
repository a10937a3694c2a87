using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>Plans of a finish, asked for in few words.</summary>
internal static class Finished
{
    public static readonly WorkChoices Usual = WorkChoices.Usual;

    public static Piece Piece(string design) =>
        DesignEvaluator.Evaluate(DesignFiles.Read(design), new Dictionary<string, string>()).Piece!;

    public static FinishPlan Plan(string design, string finish) =>
        FinishPlanner.Of(Piece(design), Usual with { Finish = finish });

    /// <summary>Parts of one material: half a square of boards.</summary>
    public static FinishPlan Listed(string material, string finish, bool isSheet = false, string name = "Shelf") =>
        Listed(material, Usual with { Finish = finish }, isSheet, name);

    public static FinishPlan Listed(string material, WorkChoices choices, bool isSheet = false, string name = "Shelf") =>
        FinishPlanner.Of(name, LengthUnit.Inch, [Part("Board", 36, 11.25m, 0.75m, material, isSheet, 2)], choices);

    public static CountedPart Part(
        string name,
        decimal length,
        decimal width,
        decimal thickness,
        string material,
        bool isSheet = false,
        int quantity = 1
    ) =>
        new(
            name,
            quantity,
            Length.FromInches(length),
            Length.FromInches(width),
            Length.FromInches(thickness),
            new(material, null, !isSheet, null),
            FinishFaces.All
        );

    public static WorkStep Step(this FinishPlan plan, string id) =>
        plan.Steps.SingleOrDefault(step => step.Id == "finish:" + id)
        ?? throw new InvalidOperationException($"no {id} among " + string.Join(", ", plan.Steps.Select(step => step.Id)));

    public static bool Has(this FinishPlan plan, string id) => plan.Steps.Any(step => step.Id == "finish:" + id);

    /// <summary>Whether one step must be done before another, through all between them.</summary>
    public static bool IsBefore(this FinishPlan plan, string one, string other)
    {
        var byId = plan.Steps.ToImmutableDictionary(step => step.Id);
        var (open, seen) = (new Queue<string>([plan.Step(other).Id]), new HashSet<string>());
        while (open.TryDequeue(out var at))
            foreach (var before in byId[at].After.Where(seen.Add))
                open.Enqueue(before);
        return seen.Contains(plan.Step(one).Id);
    }

    /// <summary>All of them in this order.</summary>
    public static void InOrder(this FinishPlan plan, params string[] ids)
    {
        foreach (var (one, other) in ids.Zip(ids.Skip(1)))
            Assert.True(plan.IsBefore(one, other), $"{one} isn't before {other}");
    }
}
