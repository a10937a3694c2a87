using System.Globalization;
using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services.Tests.Golden;

/// <summary>Everything that a builder would miss, one fact a line: two programs that open the same shop must tell the same.</summary>
internal sealed class ShopFacts(TestShop shop)
{
    private readonly StringBuilder text = new();

    public static async Task<string> TellAsync(TestShop shop)
    {
        var facts = new ShopFacts(shop);
        foreach (var project in (await shop.Projects.ListAsync(true, TestShop.Cancel)).OrderBy(project => project.Id))
            await facts.TellAsync(project);
        foreach (var plan in (await shop.Plans.ListAsync(true, TestShop.Cancel)).OrderBy(plan => plan.Id))
            await facts.TellAsync(plan);
        await facts.TellStockAsync();
        return facts.text.ToString();
    }

    private void Line(string subject, params object?[] facts) =>
        text.Append(subject).Append(": ").AppendJoin(" | ", facts.Select(Word)).Append('\n');

    private static string Word(object? fact) =>
        fact switch
        {
            null => "-",
            Length length => length.Ticks.ToString(CultureInfo.InvariantCulture),
            Money money => money.Count.ToString(CultureInfo.InvariantCulture),
            DateTime time => time.ToString("O", CultureInfo.InvariantCulture),
            _ => Convert.ToString(fact, CultureInfo.InvariantCulture)!,
        };

    private async Task TellAsync(ProjectView project)
    {
        Line("project", project.Id, project.Name, project.Code, project.Unit, project.State, project.Note);
        var sheet = (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!;
        Line("steps", sheet.Undo, sheet.UndoStep, sheet.Redo, sheet.RedoStep);
        foreach (var row in sheet.Rows)
            TellRow(row);
        if (await shop.Get<IIdeaService>().GetAsync(project.Id, TestShop.Cancel) is { } idea)
            Line(
                "idea",
                idea.Idea.Document.Name,
                string.Join(", ", idea.Idea.Changed.Select(pair => $"{pair.Key}={pair.Value}")),
                idea.Version,
                idea.Undo,
                idea.Redo
            );
        foreach (var kept in await shop.Get<IWorkingService>().ListAsync(project.Id, TestShop.Cancel))
            Line("working", kept.Form, string.Join(", ", kept.Given), kept.Unit, kept.Result, kept.KeptUtc);
    }

    private void TellRow(PartRow row)
    {
        var texts = row.Texts;
        Line("row", texts.Id, texts.Mark, texts.Name, texts.Material, texts.Length, texts.Width, texts.Quantity, texts.CanTurn);
        Line("more", texts.Note, texts.LongBy, texts.WideBy, texts.Practice, row.Version, row.Faults.Length);
    }

    private async Task TellAsync(PlanSummary summary)
    {
        Line("plan", summary.Id, summary.Name, summary.MadeUtc, summary.State, summary.Status, summary.Cost, summary.Stocks);
        var plan = (await shop.Plans.GetAsync(summary.Id, TestShop.Cancel))!;
        Line("changes", plan.OutOfDate, plan.Changes.Length);
        var order = plan.Order;
        Line("projects", string.Join(", ", order.Projects), string.Join(", ", order.Stores), order.Parts?.Length);
        Line("order", order.UseRack, order.UseBin, order.Seconds, Replaced(order), order.CutAgain);
        foreach (var name in plan.Stocks.Values.OrderBy(name => (name.Name, name.Tag, name.Store)))
            Line("stock", name.Name, name.Tag, name.Store, name.Tint, name.Note);
        foreach (var name in plan.Parts.Values.OrderBy(name => (name.ProjectId, name.Mark)))
            Line("part", name.Mark, name.Name, name.ProjectId, name.Project);
        Line("cut before", string.Join(", ", plan.CutBefore.OrderBy(pair => pair.Key, StringComparer.Ordinal)));
        Line("units", string.Join(", ", plan.Units.OrderBy(pair => pair.Key)));
        Line("request file", await shop.Plans.ExportAsync(plan.Summary.Id, false, TestShop.Cancel));
        Line("plan file", await shop.Plans.ExportAsync(plan.Summary.Id, true, TestShop.Cancel));
        await TellBenchAsync(plan);
    }

    private static string? Replaced(PlanOrder order) => order.Replaces.IsEmpty ? null : string.Join(", ", order.Replaces);

    private async Task TellBenchAsync(PlanView plan)
    {
        foreach (var stock in (await shop.Bench.GetAsync(plan.Summary.Id, TestShop.Cancel))!.Stocks)
            Line(
                "bench",
                stock.Number,
                stock.Layout,
                stock.Copy,
                stock.Stock.Name,
                string.Concat(stock.Cuts.Select(cut => cut.Made ? 'x' : '.')),
                stock.Finished,
                string.Join(", ", stock.Binned.Select(piece => $"{piece.Tag} {piece.Length.Ticks} {piece.Width.Ticks}"))
            );
    }

    private async Task TellStockAsync()
    {
        foreach (var piece in (await shop.Stock.ListAsync(TestShop.Cancel)).OrderBy(piece => piece.Id))
            Line(
                "piece",
                piece.Tag,
                piece.Place,
                piece.MaterialId,
                piece.Length,
                piece.Width,
                piece.Note,
                piece.PromisedPlanId,
                piece.PromisedTo,
                piece.Version
            );
        foreach (var entry in await shop.Stock.HistoryAsync(null, 10_000, TestShop.Cancel))
            Line("entry", entry.Tag, entry.WhenUtc, entry.Kind, entry.Length, entry.Width, entry.Reason, entry.Device);
    }
}
