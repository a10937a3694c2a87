using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The sections of a packet in the order in which they are printed, with what each of them prints.</summary>
internal static class SectionList
{
    private const string NoPlan = "no cut plan yet",
        NoDesign = "no design",
        NoWork = "no order of work: it comes from a design or a parts list";

    /// <summary>All that were asked for, without the cover.</summary>
    public static List<Printed> Of(PacketModel model) =>
        [.. PacketSections.All.Where(one => model.Sections.Contains(one.Section)).SelectMany(one => Of(one, model))];

    private static IEnumerable<Printed> Of(SectionChoice choice, PacketModel model) =>
        choice.Section switch
        {
            PacketSection.Cover => [],
            PacketSection.Shopping => [Shopping(choice.Name, model)],
            PacketSection.StoreCuts => [StoreCuts(choice.Name, model)],
            PacketSection.Overview => [WithPlan("All boards and sheets", model, flow => OverviewSection.Add(flow, model))],
            PacketSection.Drawings => [WithPieces(choice.Name, model, flow => PieceSection.Add(flow, model))],
            PacketSection.CutList => CutList(model),
            PacketSection.Layouts => [WithPlan(LayoutSection.Title, model, flow => LayoutSection.Add(flow, model))],
            PacketSection.CutsBySetting => [Settings(choice.Name, model)],
            PacketSection.Machines => [Machines(choice.Name, model)],
            PacketSection.Joints => [Joints(choice.Name, model)],
            PacketSection.Order => PerWork("Order of work", model, OrderSection.Has, OrderSection.Add),
            PacketSection.Steps => PerWork("Build", model, StepSection.Has, StepSection.Add),
            PacketSection.Finish => PerWork("Finish", model, FinishSection.Has, FinishSection.Add),
            PacketSection.Cost => [Cost(choice.Name, model)],
            _ => [Workings(choice.Name, model)],
        };

    private static Printed Shopping(string title, PacketModel model) =>
        ShoppingSection.Has(model)
            ? Printed.Of(title, flow => ShoppingSection.Add(flow, model, title))
            : Printed.None(title, model.Plan is null ? NoPlan : "nothing to buy");

    private static Printed StoreCuts(string title, PacketModel model) =>
        model.Layouts.Any(layout => layout.Cuts.Any(cut => cut.ByStore))
            ? Printed.Of(title, flow => StoreSawSection.Add(flow, model))
            : Printed.None(title, model.Plan is null ? NoPlan : "this plan has none");

    private static Printed WithPlan(string title, PacketModel model, Action<Flow.PageFlow> add) =>
        model.Layouts.IsEmpty ? Printed.None(title, model.Plan is null ? NoPlan : "nothing to cut") : Printed.Of(title, add);

    private static Printed WithPieces(string title, PacketModel model, Action<Flow.PageFlow> add) =>
        model.Pieces.IsEmpty ? Printed.None(title, NoDesign) : Printed.Of(title, add);

    private static IEnumerable<Printed> CutList(PacketModel model)
    {
        if (CutListSection.Has(model))
            yield return Printed.Of(CutListSection.Title, flow => CutListSection.Add(flow, model));
        else
            yield return Printed.None(CutListSection.Title, "no parts");
        if (!model.Unplaced.IsEmpty)
            yield return Printed.Of(CutListSection.LeftOut, flow => CutListSection.AddUnplaced(flow, model));
    }

    private static Printed Settings(string title, PacketModel model) =>
        model.Settings.Any(group => group.Runs.Any(run => run.Shared))
            ? Printed.Of(title, flow => SettingSection.Add(flow, model))
            : Printed.None(title, model.Plan is null ? NoPlan : "every setting serves one cut");

    private static Printed Machines(string title, PacketModel model) =>
        model.Work.Any(MachineSection.Has)
            ? Printed.Of(title, flow => MachineSection.Add(flow, model, title))
            : Printed.None(title, NoWork);

    private static Printed Joints(string title, PacketModel model) =>
        JointSection.Has(model) ? Printed.Of(title, flow => JointSection.Add(flow, model, title)) : Printed.None(title, NoDesign);

    private static Printed Cost(string title, PacketModel model) =>
        CostSection.Has(model) ? Printed.Of(title, flow => CostSection.Add(flow, model, title)) : Printed.None(title, NoPlan);

    private static Printed Workings(string title, PacketModel model) =>
        model.Pieces.Any(piece => !piece.Workings.IsEmpty)
            ? Printed.Of(title, flow => WorkingsSection.Add(flow, model, title))
            : Printed.None(title, NoDesign);

    private static IEnumerable<Printed> PerWork(
        string words,
        PacketModel model,
        Func<PacketWork, bool> has,
        Action<Flow.PageFlow, PacketModel, PacketWork, string> add
    )
    {
        var works = model.Work.Where(has).ToList();
        if (works.Count == 0)
            yield return Printed.None(words, NoWork);
        foreach (var work in works)
        {
            var title = Words.Title($"{words}: {work.Name}");
            yield return Printed.Of(title, flow => add(flow, model, work, title));
        }
    }
}
