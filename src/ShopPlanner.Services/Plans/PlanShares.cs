using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;

namespace ShopPlanner.Services.Plans;

/// <summary>What a project bears of a plan.</summary>
/// <param name="Project">The project.</param>
/// <param name="Name">Its name when the plan was made.</param>
/// <param name="Cost">Of the boards and sheets cut, shared by <see cref="CostShares"/>.</param>
/// <param name="Wood">Of their wood, shared by <see cref="WoodShares"/>.</param>
public sealed record ProjectShare(Guid Project, string Name, Money Cost, WoodUse Wood);

/// <summary>Boards or sheets of a plan that are cut alike, and for whom.</summary>
/// <param name="First">Number of the first, from 1.</param>
/// <param name="Last">Number of the last.</param>
/// <param name="Stock">What they are.</param>
/// <param name="For">The projects whose parts are cut from them, with the pieces of all of them.</param>
public sealed record TakenStock(int First, int Last, PlanStockName Stock, ImmutableArray<(string Name, int Pieces)> For);

/// <summary>What a plan of several projects is to each of them.</summary>
public static class PlanShares
{
    /// <summary>Returns each project's share, as ordered; the shares add up to the plan's cost and wood exactly.</summary>
    public static ImmutableArray<ProjectShare> Of(PlanView plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var names = plan.Parts.Values.GroupBy(part => part.ProjectId).ToDictionary(own => own.Key, own => own.First().Project);
        List<Guid> projects = [.. names.Keys.OrderBy(project => plan.Order.Projects.IndexOf(project))];
        Guid OwnerOf(string part) => plan.Parts[part].ProjectId;
        var costs = CostShares.Of(plan.Request, plan.Plan, projects, OwnerOf);
        var wood = WoodShares.Of(plan.Request, plan.Plan, projects, OwnerOf);
        return [.. projects.Select((project, i) => new ProjectShare(project, names[project], costs[i].Cost, wood[i]))];
    }

    /// <summary>Returns for whom each board and sheet is cut, in the order to cut.</summary>
    public static ImmutableArray<TakenStock> Taken(PlanView plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (taken, first) = (ImmutableArray.CreateBuilder<TakenStock>(), 1);
        foreach (var layout in plan.Plan.Layouts)
        {
            var owners = layout.Pieces.GroupBy(piece => plan.Parts[piece.Part].ProjectId);
            taken.Add(
                new(
                    first,
                    first + layout.Copies - 1,
                    plan.Stocks[layout.Stock],
                    [.. owners.Select(own => (plan.Parts[own.First().Part].Project, own.Count() * layout.Copies))]
                )
            );
            first += layout.Copies;
        }

        return taken.ToImmutable();
    }
}
