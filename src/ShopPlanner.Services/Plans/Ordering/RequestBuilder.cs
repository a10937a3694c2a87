using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Together;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>Makes the request that an order comes to, from what stands in the shop now.</summary>
internal sealed class RequestBuilder
{
    private readonly PlanOrder order;
    private readonly Snapshot shop;
    private readonly List<Fault> faults = [];
    private readonly List<Fault> leftOut = [];
    private readonly List<CutPart> parts = [];
    private readonly List<SparePart> spares = [];
    private readonly ImmutableSortedDictionary<string, PlanPartName>.Builder partNames = ImmutableSortedDictionary.CreateBuilder<
        string,
        PlanPartName
    >(StringComparer.Ordinal);
    private readonly ImmutableSortedDictionary<string, Guid>.Builder rowIds = ImmutableSortedDictionary.CreateBuilder<
        string,
        Guid
    >(StringComparer.Ordinal);

    private readonly ImmutableSortedDictionary<string, int>.Builder cutBefore = ImmutableSortedDictionary.CreateBuilder<
        string,
        int
    >(StringComparer.Ordinal);
    private readonly List<HeldRow> cutWhole = [];
    private int cutAlready;

    private RequestBuilder(PlanOrder order, Snapshot shop) => (this.order, this.shop) = (order, shop);

    public static Outcome<PlanDraft> Build(PlanOrder order, Snapshot shop) => new RequestBuilder(order, shop).Build();

    private Outcome<PlanDraft> Build()
    {
        if (order.Seconds is < 1 or > SawReader.MostSeconds)
            faults.Add(Fault.Of(nameof(order.Seconds), $"{order.Seconds}", $"is not from 1 to {SawReader.MostSeconds} seconds"));
        var projects = Projects();
        foreach (var project in projects)
            AddParts(project);
        foreach (var first in order.FromHand.Where(first => !order.Projects.Contains(first)))
            faults.Add(Fault.Of(nameof(order.FromHand), $"{first}", "isn't one of the projects to plan"));
        foreach (var store in order.Stores.Where(store => !shop.Stores.ContainsKey(store)))
            faults.Add(Fault.Of(nameof(order.Stores), $"{store}", "is no longer a store"));
        var taken = SawReader.Read(shop.Shop, faults);
        if (parts.Count == 0)
            faults.Add(
                new Fault(
                    nameof(order.Parts),
                    "",
                    spares.Count > 0 ? "are all spare parts: a plan needs a part to cut wood for"
                        : cutAlready > 0 ? "are all cut already: choose to cut the pieces again, or add parts"
                        : "are missing: add parts, or fix the rows that need it"
                )
            );
        if (faults.Count > 0)
            return Outcome.Faulty<PlanDraft>(faults);
        return Finish(projects, taken);
    }

    private Outcome<PlanDraft> Finish(List<StoredProject> projects, (SawSettings Saw, KeepRule Keep, CarryLimit? Carry) taken)
    {
        var materials = parts
            .Select(part => part.Material)
            .Distinct()
            .Order(StringComparer.Ordinal)
            .Select(id => shop.Materials[id])
            .ToList();
        var unit = projects.Select(project => project.Unit).Distinct().Count() == 1 ? projects[0].Unit : shop.Shop.Unit;
        var stock = new RequestStock(order, shop, materials, taken.Saw.Kerf, unit);
        if (stock.Stocks.Count == 0)
            return Outcome.Faulty<PlanDraft>(
                new Fault(
                    nameof(order.Stores),
                    "",
                    "leave nothing to cut from: choose a store that sells the materials, the rack or the bin"
                )
            );
        var request = Request(taken, unit, materials, stock);
        var wrong = request.Check();
        return wrong.Length > 0
            ? Outcome.Faulty<PlanDraft>(wrong.Select(fault => fault.At(Named(fault.Field))))
            : new PlanDraft(order, request, Basis(projects, materials, stock), [.. leftOut])
            {
                CutAlready = cutAlready,
                CutWhole = [.. cutWhole],
                Builds = shop.Builds,
                Trips = RequestStock.Trips(order, shop, request),
                Spares = [.. spares],
            };
    }

    private CutRequest Request(
        (SawSettings Saw, KeepRule Keep, CarryLimit? Carry) taken,
        LengthUnit unit,
        List<StoredMaterial> materials,
        RequestStock stock
    ) =>
        new(
            unit,
            taken.Saw,
            taken.Keep,
            [.. materials.Select(m => new CutMaterial(m.Id, m.Form, m.Thickness, m.Width))],
            [.. stock.Stocks],
            [.. parts],
            new CutLimits(order.Seconds)
        )
        {
            Store = RequestStock.StoreCuts(order, shop, materials.Select(material => material.Id).ToHashSet()),
            Carry = taken.Carry,
        };

    private PlanBasis Basis(List<StoredProject> projects, List<StoredMaterial> materials, RequestStock stock) =>
        new(
            string.Join(", ", projects.Select(project => project.Name)),
            stock.Names,
            partNames.ToImmutable(),
            rowIds.ToImmutable(),
            stock.Pieces,
            stock.Seen,
            materials.ToImmutableSortedDictionary(m => m.Id, m => m.Name, StringComparer.Ordinal),
            projects.ToImmutableSortedDictionary(p => p.Id, p => p.Unit)
        )
        {
            CutBefore = cutBefore.ToImmutable(),
        };

    // The rules count parts from nought; people know them by their marks.
    private string Named(string field) =>
        Enumerable
            .Range(0, parts.Count)
            .Where(i => field.StartsWith($"parts[{i}]", StringComparison.Ordinal))
            .Select(i => parts[i].Id + field[$"parts[{i}]".Length..])
            .FirstOrDefault(field);

    private List<StoredProject> Projects()
    {
        var found = new List<StoredProject>();
        foreach (var id in order.Projects.Distinct())
            if (shop.Projects.TryGetValue(id, out var project))
                found.Add(project);
            else
                faults.Add(Fault.Of(nameof(order.Projects), $"{id}", "is no longer a project"));
        return found;
    }

    private void AddParts(StoredProject project)
    {
        var wanted = order.Parts is { } ids ? ids.ToHashSet() : null;
        foreach (var row in shop.Rows(project).Where(row => wanted is null || wanted.Contains(row.Texts.Id)))
            if (row.Part is { } part)
                Add(project, row, part);
            else
                leftOut.Add(Describe(project, row));
    }

    private void Add(StoredProject project, PartRow row, CutPart part)
    {
        var id = IdOf(project, part.Id);
        var mark = order.Projects.Distinct().Count() == 1 ? part.Id : id;
        var wanted = part with { Id = id, Quantity = Wanted(id, row, part, part.Quantity, isPractice: false) };
        if (order.Spares.TryGetValue(row.Texts.Id, out var worth) && wanted.Quantity > 0)
        {
            AddSpare(new(wanted, Money.From(worth)), row, new PlanPartName(id, mark, part.Name, project.Id, project.Name));
            return;
        }

        if (wanted.Quantity == 0)
            cutWhole.Add(new HeldRow(row.Texts.Id, part.Material, part.Length, part.Width, part.Quantity));
        Add(wanted, row, new PlanPartName(id, mark, part.Name, project.Id, project.Name));
        if (row.Practice > 0 && wanted.Quantity > 0)
            AddPractice(project, row, wanted, mark);
    }

    // Filled in from what the plan leaves; it has neither practice pieces nor a place in the request before.
    private void AddSpare(SparePart spare, PartRow row, PlanPartName name)
    {
        if (spare.Worth < Money.Zero || spare.Worth > MoneyText.Largest)
            faults.Add(Fault.Of(nameof(order.Spares), $"{spare.Worth}", $"isn't a worth from nothing to {MoneyText.Largest}"));
        spares.Add(spare);
        rowIds.Add(spare.Part.Id, row.Texts.Id);
        partNames.Add(spare.Part.Id, name);
    }

    // Cut like the part, so that it passes every setting that the part will; what is learned on it is not trimmed.
    private void AddPractice(StoredProject project, PartRow row, CutPart part, string mark)
    {
        var practice = PartMarks.Practice(row.Part!.Id);
        var (id, name) = (IdOf(project, practice), $"Test piece for {mark}");
        var wanted = part with
        {
            Id = id,
            Name = name,
            Quantity = Wanted(id, row, part, row.Practice, isPractice: true),
            FinishedLength = null,
            FinishedWidth = null,
            PracticeFor = part.Id,
        };
        Add(wanted, row, new PlanPartName(id, mark == row.Part.Id ? practice : id, name, project.Id, project.Name));
    }

    private void Add(CutPart part, PartRow row, PlanPartName name)
    {
        if (part.Quantity == 0)
            return;
        parts.Add(part);
        rowIds.Add(part.Id, row.Texts.Id);
        partNames.Add(part.Id, name);
    }

    // What is cut already is left out, unless it is to be cut once more.
    private int Wanted(string id, PartRow row, CutPart part, int quantity, bool isPractice)
    {
        var cut = Math.Min(quantity, shop.Cut.Of(row.Texts.Id, part, isPractice));
        cutAlready += isPractice ? 0 : cut;
        if (order.CutAgain || cut == 0)
            return quantity;
        cutBefore.Add(id, cut);
        return quantity - cut;
    }

    private static string IdOf(StoredProject project, string mark) => PartIds.Of(project.Code, mark);

    private static Fault Describe(StoredProject project, PartRow row)
    {
        var first = row.Faults[0];
        return new Fault(IdOf(project, PartMarks.Plain(row.Texts.Mark)), first.Value, $"({Column(first.Field)}) {first.Message}");
    }

    // As the column of the parts list is headed.
    private static string Column(string field) =>
        field switch
        {
            nameof(PartTexts.LongBy) => "cut long by",
            nameof(PartTexts.WideBy) => "cut wide by",
            _ => field.ToLowerInvariant(),
        };
}
