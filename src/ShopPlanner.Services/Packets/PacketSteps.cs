using System.Collections.Immutable;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Sections;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Packets;

/// <summary>The work of a plan's projects, as their builders have it, for the packet.</summary>
internal static class PacketSteps
{
    /// <summary>As it stands now. Steps that are skipped are left out; a project without steps is too.</summary>
    public static async Task<ImmutableArray<PacketWork>> ReadAsync(
        ShopContext db,
        WorkReading reading,
        PlanView plan,
        PaperSize paper,
        CancellationToken cancel
    )
    {
        var names = plan
            .Parts.Values.GroupBy(part => part.ProjectId)
            .ToDictionary(same => same.Key, same => same.First().Project);
        var works = ImmutableArray.CreateBuilder<PacketWork>();
        foreach (var project in plan.Order.Projects.Where(names.ContainsKey))
            if (await reading.ViewAsync(db, project, cancel) is { Steps.IsEmpty: false } view)
                works.Add(Work(names[project], view, paper));
        return works.ToImmutable();
    }

    // What is finished before assembly is printed once, where it is done.
    private static PacketWork Work(string name, WorkView view, PaperSize paper)
    {
        var finish = view.Steps.Where(one => one.Step.Phase == WorkPhase.Finish);
        return new(
            name,
            [
                .. InAnyOrder
                    .Of(view.Subassemblies, [.. view.Steps.Select(one => one.Step)])
                    .Select(group => InAnyOrder.Sentence(group)),
            ],
            Steps(view.On(WorkPage.Build), view, paper),
            Steps(finish, view, paper),
            [
                .. (view.Finish?.Areas ?? []).Select(area =>
                    WorkSheets.Area(area, view.Names.GetValueOrDefault(area.Part, ""), view.Unit)
                ),
            ],
            [.. (view.Finish?.Buy ?? []).Select(item => new PacketHardware(item.Name, item.Quantity))]
        );
    }

    private static ImmutableArray<PacketStep> Steps(IEnumerable<WorkStepView> steps, WorkView view, PaperSize paper) =>
        [
            .. steps
                .Where(one => one.Mark != StepMark.Skipped)
                .Select(
                    (one, i) =>
                        WorkSheets.Step(
                            view.Piece,
                            one.Step with
                            {
                                Title = one.Title,
                                Says = one.Says,
                            },
                            view.Unit,
                            i + 1,
                            one.Note,
                            paper
                        )
                ),
        ];
}
