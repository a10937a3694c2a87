using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Ordering;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Staleness;

/// <summary>Tells in plain words what changed since a plan was made: parts, what is sold, the saw, materials.</summary>
internal sealed class PlanChanges
{
    private readonly PlanRecord record;
    private readonly Snapshot now;
    private readonly IReadOnlySet<string> bought;
    private readonly List<string> changes = [];

    private PlanChanges(PlanRecord record, Snapshot now, IReadOnlySet<string> bought) =>
        (this.record, this.now, this.bought) = (record, now, bought);

    private CutRequest Request => record.Draft.Request;

    private PlanBasis Basis => record.Draft.Basis;

    /// <summary>Whether a plan is cut or given up: nothing that changes concerns it.</summary>
    public static bool IsHistory(PlanRecord record) => record.Stored.State is PlanState.Cut or PlanState.Withdrawn;

    /// <summary>Empty for a plan that is history.</summary>
    /// <param name="record">The plan.</param>
    /// <param name="now">The shop as it stands.</param>
    /// <param name="cutPieces">Pieces of rack and bin that the plan has cut up.</param>
    /// <param name="bought">Materials of which it needs nothing bought any more.</param>
    public static ImmutableArray<string> Find(
        PlanRecord record,
        Snapshot now,
        IReadOnlySet<Guid> cutPieces,
        IReadOnlySet<string> bought
    )
    {
        if (IsHistory(record))
            return [];
        var found = new PlanChanges(record, now, bought);
        found.Parts();
        found.Materials();
        found.Prices();
        found.changes.AddRange(PieceChanges.Find(record, now, cutPieces));
        found.changes.AddRange(LimitChanges.Find(record, now));
        return [.. found.changes];
    }

    private void Parts()
    {
        foreach (var id in record.Draft.Order.Projects.Distinct())
        {
            if (now.Projects.GetValueOrDefault(id) is not { } project)
            {
                changes.Add($"{NameOf(id)} was deleted: plan again to leave its parts out");
                continue;
            }

            var rows = now.Rows(project).ToDictionary(row => row.Texts.Id);
            foreach (var part in Request.Parts.Where(part => IsCompared(part) && Basis.Parts[part.Id].ProjectId == id))
                Compare(part, Basis.Parts[part.Id], rows.GetValueOrDefault(Basis.PartOrigins[part.Id].Row), project.Unit);
            if (record.Draft.Order.Parts is null)
                NewRows(project.Name, rows.Values);
        }
    }

    // As many spare pieces as found room are in the plan: a row that asks for more changes nothing.
    private bool IsCompared(CutPart part) => part.PracticeFor is null && !record.Draft.IsSpare(part.Id);

    private string NameOf(Guid project) =>
        Basis.Parts.Values.FirstOrDefault(part => part.ProjectId == project)?.Project ?? "A project";

    private void NewRows(string project, IEnumerable<PartRow> rows)
    {
        var known = Basis.Rows.Values.ToHashSet();
        foreach (var row in rows.Where(row => row.Part is not null && !known.Contains(row.Texts.Id) && !IsCut(row)))
            changes.Add($"{project}: part {row.Part!.Id} is new");
    }

    private bool IsCut(PartRow row) =>
        !record.Draft.Order.CutAgain && now.Cut.Of(row.Texts.Id, row.Part!, isPractice: false) >= row.Part!.Quantity;

    private void Compare(CutPart was, PlanPartName name, PartRow? row, LengthUnit unit)
    {
        var mark = Basis.PartOrigins[was.Id].Mark;
        void Say(bool changed, string what)
        {
            if (changed)
                changes.Add($"{name.Project}: part {mark} {what}");
        }

        Say(row is null, "was removed");
        Say(row is { Part: null }, "needs fixing" + (row is { Part: null } ? $": {row.Faults[0]}" : ""));
        if (row?.Part is not { } part)
            return;
        if (Sized("long", was.Length, was.FinishedLength, part.Length, part.FinishedLength, unit) is { } longer)
            Say(true, longer);
        if (Sized("wide", was.Width, was.FinishedWidth, part.Width, part.FinishedWidth, unit) is { } wider)
            Say(true, wider);
        var before = Basis.CutBefore.GetValueOrDefault(was.Id);
        Say(part.Quantity != was.Quantity + before, $"is now needed {Times(part.Quantity)}, not {Times(was.Quantity + before)}");
        if (!record.Draft.Order.CutAgain)
            CutElsewhere(before, now.Cut.Of(row.Texts.Id, part, isPractice: false, except: record.Stored.Id), Say);
        Say(part.Material != was.Material, $"is now {row.MaterialName}");
        Say(part.Grain != was.Grain, part.Grain == Grain.Any ? "can now rotate" : "can no longer rotate");
        Say(part.Id != mark, $"is now marked {part.Id}");
        var practised = Request.Parts.FirstOrDefault(one => one.PracticeFor == was.Id) is { } practice
            ? practice.Quantity + Basis.CutBefore.GetValueOrDefault(practice.Id)
            : 0;
        Say(
            row.Practice != practised,
            $"now has {Practice(row.Practice)}" + (practised > 0 ? $", not {Practice(practised)}" : "")
        );
    }

    private static void CutElsewhere(int before, int elsewhere, Action<bool, string> say)
    {
        say(elsewhere > before, $"was cut {Times(elsewhere - before)} in another plan since");
        say(elsewhere < before, $"was counted as cut {Times(before)}, now {Times(elsewhere)}");
    }

    // Null where neither the finished size nor what is cut changed.
    private static string? Sized(string how, Length was, Length? wasFinished, Length cut, Length? finished, LengthUnit unit)
    {
        if ((finished ?? cut) != (wasFinished ?? was))
            return $"is now {StockWords.Say(finished ?? cut, unit)} {how}";
        if (cut == was)
            return null;
        return finished is null ? $"is no longer cut too {how}" : $"is now cut {StockWords.Say(cut, unit)} {how}";
    }

    private static string Practice(int pieces) =>
        pieces switch
        {
            0 => "no test pieces",
            1 => "1 test piece",
            _ => $"{pieces} test pieces",
        };

    private static string Times(int quantity) =>
        quantity switch
        {
            0 => "never",
            1 => "once",
            2 => "twice",
            _ => $"{quantity} times",
        };

    private void Materials()
    {
        foreach (var was in Request.Materials)
        {
            if (!now.Materials.TryFind(was.Id, out var material))
                continue;
            if (material!.Thickness != was.Thickness)
                changes.Add($"{material.Name} is now {StockWords.Say(material.Thickness, Request.Unit)} thick");
            if (material.Width != was.Width && material.Width is { } width)
                changes.Add($"{material.Name} is now {StockWords.Say(width, Request.Unit)} wide");
        }
    }

    private void Prices()
    {
        var known = new HashSet<Guid>();
        foreach (var stock in Request.Stock)
            if (Basis.StockOrigins[stock.Id] is StockOrigin.PriceOrigin sold && known.Add(sold.Price) && IsToBuy(stock.Material))
                ComparePrice(stock, now.Prices.GetValueOrDefault(sold.Price), Basis.Stocks[stock.Id]);
        foreach (
            var price in RequestStock
                .ForSale(record.Draft.Order, now, Basis.Materials.Keys.ToHashSet())
                .Where(price => !known.Contains(price.Id) && IsToBuy(price.MaterialId))
        )
        {
            var name = RequestStock.NameOf(price, now, Request.Unit);
            changes.Add($"{name.Store} now has {name.Name} at {price.Price}");
        }
    }

    // What is bought is paid for, whatever it costs today.
    private bool IsToBuy(string material) => !bought.Contains(material);

    private void ComparePrice(CutStock was, StoredPrice? price, PlanStockName name)
    {
        if (price is null || price.MaterialId != was.Material)
            changes.Add($"{name.Store} no longer lists {name.Name}");
        else if (!price.InStock)
            changes.Add($"{name.Store} has no {name.Name} now");
        else
        {
            if (price.Price != was.Price)
                changes.Add($"price of {name.Name} went from {was.Price} to {price.Price} at {name.Store}");
            if (price.Length != was.Length || (price.Width.IsPositive && price.Width != was.Width))
                changes.Add($"{name.Name} of {name.Store} is now {RequestStock.NameOf(price, now, Request.Unit).Name}");
        }
    }
}
