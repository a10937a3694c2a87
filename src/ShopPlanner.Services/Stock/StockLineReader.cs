using System.Globalization;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stock;

/// <summary>Reads the lines of one table of stock.</summary>
internal sealed class StockLineReader(
    TableColumns<StockCell> table,
    TableNumbers numbers,
    LengthUnit unit,
    MaterialIndex materials,
    FaultList faults
)
{
    private readonly HashSet<string> tags = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Returns what a line says; null where something is wrong with it, with a fault for each cell.</summary>
    public StockLineRead? Read(TableLine line)
    {
        var found = new List<Fault>();
        string Cell(StockCell cell) => table.Cell(cell, line);
        if (table.CheckEnd(line) is { } end)
            found.Add(end);
        if (TextRules.Line("note", Cell(StockCell.Note), TextRules.CellCharacters) is { } wrong)
            found.Add(wrong);
        var material = materials.FindTyped(Cell(StockCell.Material));
        if (material is null)
            found.Add(materials.FaultOf("material", Cell(StockCell.Material)));
        var (length, width) = PieceReader.Sizes(material, Size(StockCell.Length, line), Size(StockCell.Width, line), unit, found);
        var pieces = Pieces(numbers.Whole(Cell(StockCell.Pieces)), found);
        var (place, tag) = Place(Cell(StockCell.Where), Cell(StockCell.Tag), found);
        if (tag.Length > 0 && pieces > 1)
            found.Add(Fault.Of("pieces", Cell(StockCell.Pieces), "is more than 1 beside a tag: one piece has one tag"));
        var condition = Condition(line, material, (length, width), place, found);
        foreach (var fault in found)
            faults.Add(fault.At($"line {line.Number.ToString(CultureInfo.InvariantCulture)}, {fault.Field.ToLowerInvariant()}"));
        return found.Count > 0
            ? null
            : new(line.Number, tag, place, material!, length, width, condition, pieces, Cell(StockCell.Note));
    }

    private static int Pieces(string text, List<Fault> found)
    {
        var wrong = new List<Fault>();
        var pieces = PieceReader.Quantity(text, wrong);
        found.AddRange(wrong.Select(fault => fault.At("pieces")));
        return pieces;
    }

    private string Size(StockCell cell, TableLine line)
    {
        var size = TableSizes.Typed(numbers.Plain(table.Cell(cell, line)));
        return
            table.UnitOf(cell) is not { } named || size.Length == 0 || size.Any(c => char.IsLetter(c) || c is '"' or '″' or '\'')
            ? size
            : $"{size} {named}";
    }

    // A tag's letter says where the piece is, unless the column does.
    private (StockPlace Place, string Tag) Place(string where, string tag, List<Fault> found)
    {
        var isTag = StockTags.NumberOf(tag) is not null;
        if (tag.Length > 0 && !isTag)
            found.Add(
                Fault.Of("tag", tag, "isn't a tag: write B and a number for the bin, R and a number for the rack, or nothing")
            );
        else if (isTag && !tags.Add(tag))
            found.Add(Fault.Of("tag", tag, "is in this file twice: one piece has one tag"));
        StockPlace? place = where.ToLowerInvariant() switch
        {
            "rack" => StockPlace.Rack,
            "bin" => StockPlace.Bin,
            "" => isTag ? StockTags.PlaceOf(tag.ToUpperInvariant()) : StockPlace.Bin,
            _ => null,
        };
        if (place is null)
            found.Add(Fault.Of("where", where, "isn't rack or bin: write one of them"));
        return (place ?? StockPlace.Bin, isTag ? tag.ToUpperInvariant() : "");
    }

    private StockCondition Condition(
        TableLine line,
        StoredMaterial? material,
        (Length Length, Length Width) size,
        StockPlace place,
        List<Fault> found
    )
    {
        var (edges, wrong) = ConditionText.ReadEdges(table.Cell(StockCell.Edges, line));
        var named = table.UnitOf(StockCell.BadPlaces);
        var of = named switch
        {
            "in" => LengthUnit.Inch,
            "mm" => LengthUnit.Millimetre,
            _ => unit,
        };
        var (places, bad) = ConditionText.ReadPlaces(table.Cell(StockCell.BadPlaces, line), size.Length, size.Width, of);
        found.AddRange(new[] { wrong, bad }.OfType<Fault>());
        var isSaid = table.Cell(StockCell.Edges, line).Length > 0;
        var usual = place == StockPlace.Rack && material is not null ? CutStock.EdgesAsBought(material.Form) : StockEdges.None;
        return new(isSaid ? edges : usual, places);
    }
}
