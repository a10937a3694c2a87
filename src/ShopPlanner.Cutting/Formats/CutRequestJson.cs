using System.Collections.Immutable;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>
/// The open cut request format, versions 1 and 2 (<c>shop-planner/cut-request</c>): JSON (RFC 8259) in UTF-8. Unknown members
/// are
/// ignored; a later version is refused. Version 2 is written only where stock has <c>badPlaces</c> or says what is
/// <c>untrimmed</c>. Every fault names the member's path and the value that stands there. What a shop's limits
/// are may be absent: <c>saw.widestRip </c>, <c>saw.longestCrosscut </c>, <c>store </c> (<c>cuts</c>, <c>tolerance </c>),
/// <c>carry </c> (<c>longest</c>, <c>widest</c>); and of a part <c>finishedLength</c>, <c>finishedWidth</c>,
/// <c>practiceFor</c>.
/// </summary>
public static class CutRequestJson
{
    /// <summary>Reads a request from a stream, of which no more than 64 MB are taken.</summary>
    /// <inheritdoc cref="Read(ReadOnlyMemory{byte})" path="/returns"/>
    public static (CutRequest? Request, ImmutableArray<Fault> Faults) Read(Stream stream) => Read(DocumentText.ReadAll(stream));

    /// <summary>Reads a request from UTF-8 text.</summary>
    /// <returns>The request and no fault; or null and every fault, of which the first hundred are listed and the rest counted
    /// in
    /// one more.</returns>
    public static (CutRequest? Request, ImmutableArray<Fault> Faults) Read(ReadOnlyMemory<byte> utf8)
    {
        var faults = new FaultList();
        using var document = DocumentText.Open(utf8, faults, "cutting job");
        if (document is null)
            return (null, faults.ToImmutable());
        var draft = ReadDraft(new DocumentValue(document.RootElement, "", faults));
        return faults.Count > 0 ? (null, faults.ToImmutable()) : (Build(draft!), []);
    }

    /// <summary>The request as an indented document; lengths are numbers of the request's unit with up to six decimals, which
    /// hold every length exactly.</summary>
    public static string Write(CutRequest request) => CutRequestWriter.Write(request);

    private static CutRequestDraft? ReadDraft(DocumentValue value)
    {
        var root = value.Required("write an object {…}").Object();
        if (value.Faults.Count > 0 || Words.VersionOf(root, Words.Request) is not { } version)
            return null;
        var draft = new CutRequestReader(root, Words.ReadUnit(root), version).Read();
        CutRequestRules.Check(draft, fault => Note(value, fault));
        return draft;
    }

    // What could not be read has its fault already. A value is shown as it stands in the document.
    private static void Note(DocumentValue root, Fault fault)
    {
        if (root.Faults.Names(fault.Field))
            return;
        var value = fault.Value.Length > 0 && root.ScalarAt(fault.Field) is { } written ? written : fault.Value;
        root.Faults.Add(fault.Field, value, fault.Message);
    }

    private static CutRequest Build(CutRequestDraft draft)
    {
        var materials = draft.Materials.ToDictionary(material => material.Id!, StringComparer.Ordinal);
        return new(
            draft.Unit,
            new SawSettings(
                draft.Saw.Kerf ?? Length.Zero,
                draft.Saw.BoardEndTrim ?? Length.Zero,
                draft.Saw.SheetEdgeTrim ?? Length.Zero
            )
            {
                WidestRip = draft.Saw.WidestRip,
                LongestCrosscut = draft.Saw.LongestCrosscut,
            },
            draft.Keep,
            [.. draft.Materials.Select(Build)],
            [.. draft.Stock.Select(stock => Build(stock, materials[stock.Material!]))],
            [.. draft.Parts.Select(part => Build(part, materials[part.Material!]))],
            new CutLimits(draft.Seconds!.Value)
        )
        {
            Store = draft.Store,
            Carry = draft.Carry,
        };
    }

    // A sheet's width is that of its stock; one given with the material says nothing.
    private static CutMaterial Build(MaterialDraft material) =>
        new(material.Id!, material.Form!.Value, material.Thickness, material.Form == StockForm.Board ? material.Width : null);

    private static CutStock Build(StockDraft stock, MaterialDraft material) =>
        new(
            stock.Id!,
            stock.Material!,
            stock.Length!.Value,
            (stock.Width ?? material.Width)!.Value,
            stock.Price!.Value,
            stock.Quantity,
            stock.Offcut
        )
        {
            SoldUncut = !stock.StoreCuts,
            Untrimmed = stock.Untrimmed,
            BadPlaces = [.. stock.BadPlaces.Select(place => Build(place, (stock.Width ?? material.Width)!.Value))],
        };

    // A bad place goes across the whole stock where nothing else is said.
    private static BadPlace Build(PlaceDraft place, Length width)
    {
        var y = place.Y ?? Length.Zero;
        return new(place.X ?? Length.Zero, y, place.Dx!.Value, place.Dy ?? width - y);
    }

    private static CutPart Build(PartDraft part, MaterialDraft material) =>
        new(
            part.Id!,
            part.Name ?? part.Id!,
            part.Material!,
            part.Length!.Value,
            (part.Width ?? material.Width)!.Value,
            part.Grain!.Value,
            part.Quantity!.Value
        )
        {
            FinishedLength = part.FinishedLength,
            FinishedWidth = part.FinishedWidth,
            PracticeFor = part.PracticeFor,
        };
}
