using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Packings;

/// <summary>Sheets in work and pieces not placed: a state of the search. Trees are changed only through a search that owns
/// them.</summary>
internal sealed class Packing
{
    public Packing(SheetModel model)
    {
        Model = model;
        Left = [.. model.Types.Select(t => t.Demand)];
        StockUsed = new int[model.Stocks.Length];
        LeftArea = model.TotalArea;
        LeftPieces = model.Pieces;
    }

    public SheetModel Model { get; }

    public List<CutTree> Trees { get; } = [];

    /// <summary>Pieces of each type that have no place.</summary>
    public int[] Left { get; }

    public int[] StockUsed { get; }

    public long LeftArea { get; private set; }

    public int LeftPieces { get; private set; }

    /// <summary>Of all sheets in work, in the search's measure.</summary>
    public long Price { get; private set; }

    /// <summary>Of all sheets in work, as in the problem.</summary>
    public long Cost => Model.Stocks.Sum(s => s.Cost * StockUsed[s.Index]);

    public bool IsComplete => LeftPieces == 0;

    public void CopyFrom(Packing other)
    {
        Trees.Clear();
        Trees.AddRange(other.Trees);
        CopyFiguresFrom(other);
    }

    public void CopyFiguresFrom(Packing other)
    {
        other.Left.CopyTo(Left, 0);
        other.StockUsed.CopyTo(StockUsed, 0);
        (LeftArea, LeftPieces, Price) = (other.LeftArea, other.LeftPieces, other.Price);
    }

    /// <summary>A copy that shares nothing.</summary>
    public Packing Clone()
    {
        var copy = new Packing(Model);
        copy.CopyFiguresFrom(this);
        foreach (var tree in Trees)
        {
            var own = new CutTree();
            own.CopyFrom(tree);
            copy.Trees.Add(own);
        }
        return copy;
    }

    /// <summary>The same sheets as a packing of another model, which wants exactly what they hold.</summary>
    public Packing MovedTo(SheetModel model)
    {
        var moved = new Packing(model);
        moved.Trees.AddRange(Trees);
        StockUsed.CopyTo(moved.StockUsed, 0);
        Array.Clear(moved.Left);
        (moved.LeftArea, moved.LeftPieces, moved.Price) = (0, 0, Price);
        return moved;
    }

    /// <summary>Pieces of each type that have a place.</summary>
    public int[] Placed() => [.. Model.Types.Select((t, i) => t.Demand - Left[i])];

    public void NotePlaced(int type) => Count(type, -1);

    public void NoteTakenOut(int type) => Count(type, 1);

    public void NoteOpened(int stock)
    {
        StockUsed[stock]++;
        Price += Model.Stocks[stock].Price;
    }

    public void NoteClosed(int stock)
    {
        StockUsed[stock]--;
        Price -= Model.Stocks[stock].Price;
    }

    public bool CanOpen(int stock, long mostPrice) =>
        StockUsed[stock] < Model.Stocks[stock].Limit && Price + Model.Stocks[stock].Price <= mostPrice;

    private void Count(int type, int pieces)
    {
        Left[type] += pieces;
        LeftPieces += pieces;
        LeftArea += pieces * Model.Types[type].Area;
    }
}
