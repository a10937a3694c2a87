using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Sections;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Services.Packets;

/// <summary>The work of a project, as its builder has it, for the packet.</summary>
internal static class PacketSteps
{
    /// <summary>Steps that are skipped are left out. What is finished before assembly is printed once, where it is
    /// done.</summary>
    public static PacketWork Of(string name, WorkView view, PaperSize paper)
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

    /// <summary>What a project takes, with the time of its work and the outside size of its piece.</summary>
    public static PacketTakes Timed(PacketTakes takes, Piece? piece, WorkView? view)
    {
        var steps = view?.Steps.Where(one => one.Mark != StepMark.Skipped).Select(one => one.Step).ToList() ?? [];
        return takes with
        {
            Outside = piece is null ? "" : PieceSheets.Outside(piece),
            WorkMinutes = steps.Sum(step => step.Minutes),
            WaitMinutes = steps.Sum(step => step.Wait?.Minutes ?? 0),
        };
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
