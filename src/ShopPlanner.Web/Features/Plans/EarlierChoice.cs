using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Features.Plans;

/// <summary>An open plan that holds parts of a new order, and what becomes of it.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="IsKept">Whether it is kept beside the new one.</param>
/// <param name="Missing">Projects that it holds too, and that are not chosen.</param>
/// <param name="LeftOut">Rows of the chosen projects that it holds, and that are not chosen: <c>A Leg</c>.</param>
public sealed record EarlierChoice(
    OpenPlanView Plan,
    bool IsKept,
    IReadOnlyList<ProjectView> Missing,
    IReadOnlyList<string> LeftOut
)
{
    /// <summary>Whether the new plan can take its place.</summary>
    public bool CanBeReplaced => Plan.Refusal is null && Missing.Count == 0;

    /// <summary>Whether the new plan takes its place: that is so unless it is kept.</summary>
    public bool IsReplaced => CanBeReplaced && !IsKept;

    /// <summary>Whether the person has to decide first: it cannot be replaced, and keeping it doubles parts.</summary>
    public bool IsUndecided => !CanBeReplaced && !IsKept;

    /// <summary>Returns the open plans that hold something of a draft.</summary>
    /// <param name="open">The open plans.</param>
    /// <param name="draft">What is chosen.</param>
    /// <param name="projects">The projects that can be chosen.</param>
    /// <param name="sheets">Their parts lists.</param>
    public static IReadOnlyList<EarlierChoice> Of(
        IEnumerable<OpenPlanView> open,
        OrderDraft draft,
        IReadOnlyList<ProjectView> projects,
        IReadOnlyDictionary<Guid, PartSheet> sheets
    )
    {
        ArgumentNullException.ThrowIfNull(draft);
        var found = new List<EarlierChoice>();
        foreach (var plan in open.Where(plan => plan.Summary.Projects.Any(draft.HasProject)))
        {
            var own = plan.Summary.Projects.ToHashSet();
            var held = Held(plan, draft, sheets);
            // What holds other rows alone doubles nothing. A plan whose rows are all gone is out of date: it gives way.
            if (held.Count > 0 && !held.Exists(row => draft.HasRow(row.Texts.Id)))
                continue;
            found.Add(
                new(
                    plan,
                    draft.IsKept(plan.Summary.Id),
                    [.. projects.Where(one => own.Contains(one.Id) && !draft.HasProject(one.Id))],
                    [.. held.Where(row => !draft.HasRow(row.Texts.Id)).Select(row => $"{row.Texts.Mark} {row.Texts.Name}".Trim())]
                )
            );
        }

        return found;
    }

    // Where it is not known which rows a plan holds, all of its projects.
    private static List<PartRow> Held(OpenPlanView plan, OrderDraft draft, IReadOnlyDictionary<Guid, PartSheet> sheets)
    {
        var known = plan.Rows.ToHashSet();
        return
        [
            .. plan
                .Summary.Projects.Where(id => draft.HasProject(id) && sheets.ContainsKey(id))
                .SelectMany(id => sheets[id].Rows)
                .Where(row => known.Count == 0 || known.Contains(row.Texts.Id)),
        ];
    }
}
