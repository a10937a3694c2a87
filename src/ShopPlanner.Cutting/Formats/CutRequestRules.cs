using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>
/// What must hold between the members of a cut request. A part that is larger than its stock is no fault: the planner says that
/// it has no place.
/// </summary>
internal sealed class CutRequestRules(CutRequestDraft draft, DocumentObject root)
{
    private readonly HashSet<string> refused = [];

    public void Check()
    {
        Ids();
        if (root["materials"].Present && draft.Materials.Length == 0)
            root["materials"].Refuse("names no material: there is nothing to cut from");
        foreach (var material in draft.Materials)
            Material(material);
        foreach (var stock in draft.Stock)
            Stock(stock);
        foreach (var part in draft.Parts)
            Part(part);
        Practice();
        Carry();
        Pieces();
    }

    private void Ids()
    {
        foreach (var material in draft.Materials)
            if (material.Id is not null)
                draft.MaterialOf.TryAdd(material.Id, material);
        Once(draft.Materials.Select(material => (material.Id, material.Source)));
        Once(draft.Stock.Select(stock => (stock.Id, stock.Source)));
        Once(draft.Parts.Select(part => (part.Id, part.Source)));
    }

    private static void Once(IEnumerable<(string? Id, DocumentObject Source)> entries)
    {
        var first = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (id, source) in entries)
            if (id is not null && !first.TryAdd(id, source.Path))
                source["id"].Refuse($"is the id of {first[id]} already: write another");
    }

    private static void Material(MaterialDraft material)
    {
        if (material.Form == StockForm.Board)
            material.Source["width"].Required("a board has one width, write it");
    }

    private void Stock(StockDraft stock)
    {
        var material = draft.Find(stock.Source["material"], stock.Material);
        if (material?.Form == StockForm.Sheet)
            stock.Source["width"].Required("a sheet has a width, write it");
        if (material?.Form == StockForm.Board && stock.Width > material.Width)
            stock
                .Source["width"]
                .Refuse($"is wider than its material, {Text(material.Width!.Value)}: a board is ripped narrower, never wider");
        if (material?.Form is { } form && stock.Length is { } length && (stock.Width ?? material.Width) is { } width)
            Saw(stock, form, length, width);
    }

    private void Saw(StockDraft stock, StockForm form, Length length, Length width)
    {
        if (draft.Saw.Kerf > Length.Min(length, width))
            Refuse("kerf", "is wider than", stock, length, width);
        if (stock.Offcut)
            return;
        if (form == StockForm.Board && draft.Saw.BoardEndTrim >= length)
            Refuse("boardEndTrim", "leaves nothing of", stock, length, width);
        if (form == StockForm.Sheet && draft.Saw.SheetEdgeTrim * 2 >= Length.Min(length, width))
            Refuse("sheetEdgeTrim", "on every edge leaves nothing of", stock, length, width);
    }

    // One stock is enough to show that a member of the saw is wrong.
    private void Refuse(string member, string message, StockDraft stock, Length length, Length width)
    {
        if (!refused.Add(member))
            return;
        draft
            .Saw.Source[member]
            .Refuse($"{message} {stock.Source.Path} '{stock.Id}', {Text(length)} long and {Text(width)} wide");
    }

    private void Part(PartDraft part)
    {
        var material = draft.Find(part.Source["material"], part.Material);
        if (material?.Form == StockForm.Sheet)
            part.Source["width"].Required("a part of a sheet has a width, write it");
        Finished(part, part.Width ?? material?.Width);
    }

    private void Finished(PartDraft part, Length? width)
    {
        if (part.FinishedLength > part.Length)
            part.Source["finishedLength"]
                .Refuse($"is more than its length, {Text(part.Length!.Value)}: a part is trimmed, never grown");
        if (part.FinishedWidth > width)
            part.Source["finishedWidth"].Refuse($"is more than its width, {Text(width!.Value)}: a part is trimmed, never grown");
    }

    private void Practice()
    {
        var ids = draft.Parts.Select(part => part.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var part in draft.Parts.Where(part => part.PracticeFor is not null))
        {
            var practice = part.Source["practiceFor"];
            if (part.PracticeFor == part.Id)
                practice.Refuse("is the part itself: write the id of the part that it is practice for");
            else if (!ids.Contains(part.PracticeFor!))
                practice.Refuse("is not the id of a part of this request");
        }
    }

    // Where a side could not be read, it stands as nothing and its own fault is noted already.
    private void Carry()
    {
        if (draft.Carry is not { Longest.IsPositive: true } carry || carry.Widest <= carry.Longest)
            return;
        root["carry"].Object()["widest"].Refuse($"is more than carry.longest, {Text(carry.Longest)}: exchange the two");
    }

    private void Pieces()
    {
        var pieces = draft.Parts.Sum(part => (long)(part.Quantity ?? 0));
        if (pieces <= CutRequestReader.MostPieces)
            return;
        root["parts"]
            .Faults.Add(
                "parts",
                pieces.ToString(CultureInfo.InvariantCulture),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"pieces are too many: at most {CutRequestReader.MostPieces:N0} in one request"
                )
            );
    }

    private string Text(Length length) => LengthFormat.Exact(length, draft.Unit) + " " + Words.Of(Words.Units, draft.Unit);
}
