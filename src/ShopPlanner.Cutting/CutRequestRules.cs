using System.Globalization;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

/// <summary>
/// The rules of a cut request: what its members may be, and what must hold between them. A part that is larger than its stock is
/// no fault: the planner says that it has no place.
/// </summary>
internal sealed class CutRequestRules
{
    private readonly CutRequestDraft draft;
    private readonly Action<Fault> note;
    private readonly Dictionary<string, MaterialDraft> materials = new(StringComparer.Ordinal);
    private readonly HashSet<string> refused = [];

    private CutRequestRules(CutRequestDraft draft, Action<Fault> note)
    {
        (this.draft, this.note) = (draft, note);
        foreach (var material in draft.Materials)
            if (material.Id is not null)
                materials.TryAdd(material.Id, material);
    }

    /// <summary>Notes every breach.</summary>
    /// <param name="draft">What is known of the request.</param>
    /// <param name="note">Called with each fault: the member's path, the value and what would be right.</param>
    public static void Check(CutRequestDraft draft, Action<Fault> note)
    {
        new CutRequestMembers(draft, note).Check();
        new CutRequestRules(draft.InRange(), note).Check();
    }

    private void Check()
    {
        Once("materials", draft.Materials.Select(material => material.Id));
        Once("stock", draft.Stock.Select(stock => stock.Id));
        Once("parts", draft.Parts.Select(part => part.Id));
        if (draft.Materials.Length == 0)
            Refuse("materials", "", "is empty: name at least one material to cut from");
        for (var i = 0; i < draft.Materials.Length; i++)
            if (draft.Materials[i] is { Form: StockForm.Board, Width: null })
                Missing($"materials[{i}].width", "write the board's width");
        for (var i = 0; i < draft.Stock.Length; i++)
            Stock($"stock[{i}]", draft.Stock[i]);
        for (var i = 0; i < draft.Parts.Length; i++)
            Part($"parts[{i}]", draft.Parts[i]);
        Practice();
        Carry();
        Pieces();
    }

    private void Once(string list, IEnumerable<string?> ids)
    {
        var first = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (id, path) in ids.Select((id, i) => (id, $"{list}[{i}]")))
            if (id is not null && !first.TryAdd(id, path))
                Refuse(path + ".id", id, $"is already the id of {first[id]}: write another");
    }

    private MaterialDraft? Find(string path, string? id)
    {
        if (id is null)
            return null;
        if (materials.TryGetValue(id, out var found))
            return found;
        Refuse(path + ".material", id, "is not the id of a material of this request");
        return null;
    }

    private void Stock(string path, StockDraft stock)
    {
        var material = Find(path, stock.Material);
        if (material?.Form == StockForm.Sheet && stock.Width is null)
            Missing(path + ".width", "write the sheet's width");
        if (material?.Form == StockForm.Board && stock.Width > material.Width)
            Refuse(
                path + ".width",
                stock.Width.Value,
                $"is wider than its material, {Text(material.Width!.Value)}: a board can only be ripped narrower"
            );
        if (material?.Form is { } form && stock.Length is { } length && (stock.Width ?? material.Width) is { } width)
            Saw(new(path, stock, length, width), form);
        new StockPlaceRules(draft.Unit, note).Check(path, stock, material?.Form, stock.Width ?? material?.Width);
    }

    private void Saw(Wood wood, StockForm form)
    {
        var (narrower, offcut) = (Length.Min(wood.Length, wood.Width), wood.Stock.Offcut);
        if (draft.Saw.Kerf > narrower)
            Refuse("kerf", draft.Saw.Kerf, "is wider than", wood);
        var (along, across) = StockPlaceRules.Trims(wood.Stock, form);
        if (form == StockForm.Board && !offcut && along > 0 && draft.Saw.BoardEndTrim * along >= wood.Length)
            Refuse("boardEndTrim", draft.Saw.BoardEndTrim, "leaves nothing of", wood);
        if (form == StockForm.Sheet && !offcut && (Uses(along, wood.Length) || Uses(across, wood.Width)))
            Refuse("sheetEdgeTrim", draft.Saw.SheetEdgeTrim, "on every edge leaves nothing of", wood);
    }

    private bool Uses(int edges, Length side) => edges > 0 && draft.Saw.SheetEdgeTrim * edges >= side;

    // One stock is enough to show that a member of the saw is wrong.
    private void Refuse(string member, Length? value, string message, Wood wood)
    {
        if (refused.Add(member))
            Refuse(
                "saw." + member,
                value!.Value,
                $"{message} {wood.Path} '{wood.Stock.Id}', {Text(wood.Length)} long and {Text(wood.Width)} wide"
            );
    }

    private void Part(string path, PartDraft part)
    {
        var material = Find(path, part.Material);
        if (material?.Form == StockForm.Sheet && part.Width is null)
            Missing(path + ".width", "write the part's width");
        if (part.FinishedLength > part.Length)
            Refuse(
                path + ".finishedLength",
                part.FinishedLength.Value,
                $"is more than its length, {Text(part.Length!.Value)}: write a size no larger"
            );
        if ((part.Width ?? material?.Width) is { } width && part.FinishedWidth > width)
            Refuse(
                path + ".finishedWidth",
                part.FinishedWidth.Value,
                $"is more than its width, {Text(width)}: write a size no larger"
            );
    }

    private void Practice()
    {
        var ids = draft.Parts.Select(part => part.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < draft.Parts.Length; i++)
        {
            if (draft.Parts[i] is not { PracticeFor: { } other } part)
                continue;
            if (other == part.Id)
                Refuse($"parts[{i}].practiceFor", other, "is the part itself: write the id of the part it is a test piece for");
            else if (!ids.Contains(other))
                Refuse($"parts[{i}].practiceFor", other, "is not the id of a part of this request");
        }
    }

    // Where a side could not be read, it stands as nothing and its own fault is noted already.
    private void Carry()
    {
        if (draft.Carry is { Longest.IsPositive: true } carry && carry.Widest > carry.Longest)
            Refuse("carry.widest", carry.Widest, $"is more than carry.longest, {Text(carry.Longest)}: swap the two");
    }

    private void Pieces()
    {
        var pieces = draft.Parts.Sum(part => (long)(part.Quantity ?? 0));
        if (pieces > CutRequestRanges.MostPieces)
            Refuse(
                "parts",
                pieces.ToString(CultureInfo.InvariantCulture),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"pieces are too many: at most {CutRequestRanges.MostPieces:N0} in one request"
                )
            );
    }

    private void Missing(string path, string wanted) => Refuse(path, "", "is missing: " + wanted);

    private void Refuse(string path, Length value, string message) => Refuse(path, JsonOutput.Number(value, draft.Unit), message);

    private void Refuse(string path, string value, string message) => note(Fault.Of(path, value, message));

    private string Text(Length length) =>
        LengthFormat.Exact(length, draft.Unit) + (draft.Unit == LengthUnit.Inch ? " in" : " mm");

    // A stock with its sides.
    private sealed record Wood(string Path, StockDraft Stock, Length Length, Length Width);
}
