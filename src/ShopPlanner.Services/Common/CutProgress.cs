namespace ShopPlanner.Services.Common;

/// <summary>How far the cutting of a plan, or of all plans of a project, is.</summary>
/// <param name="CutsMade">Cuts that are ticked.</param>
/// <param name="Cuts">Cuts in all, those at the store with them.</param>
/// <param name="StocksFinished">Boards and sheets that nothing more is cut from.</param>
/// <param name="Stocks">Boards and sheets in all.</param>
public sealed record CutProgress(int CutsMade, int Cuts, int StocksFinished, int Stocks)
{
    /// <summary>Nothing to cut.</summary>
    public static CutProgress None { get; } = new(0, 0, 0, 0);

    /// <summary>Whether a cut is made or a board finished.</summary>
    public bool IsBegun => CutsMade > 0 || StocksFinished > 0;

    /// <summary>Whether every board and sheet is finished.</summary>
    public bool IsFinished => Stocks > 0 && StocksFinished == Stocks;

    /// <summary>Whether boards and sheets are finished with cuts left out: pieces may be missing.</summary>
    public bool HasLeftOut => IsFinished && CutsMade < Cuts;

    /// <summary>Adds two up.</summary>
    public static CutProgress operator +(CutProgress one, CutProgress other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return new(
            one.CutsMade + other.CutsMade,
            one.Cuts + other.Cuts,
            one.StocksFinished + other.StocksFinished,
            one.Stocks + other.Stocks
        );
    }

    /// <summary>The same as the operator.</summary>
    public static CutProgress Add(CutProgress left, CutProgress right) => left + right;

    /// <summary>What is done alone: of a plan that was given up, only that counts.</summary>
    public CutProgress Done() => new(CutsMade, CutsMade, StocksFinished, StocksFinished);
}
