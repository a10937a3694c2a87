using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Book;

/// <summary>What is entered in the shop's book.</summary>
public enum BookFigure
{
    /// <summary>Money paid, for wood and for supplies.</summary>
    Spent,

    /// <summary>Wood that came in, measured on the face.</summary>
    Bought,

    /// <summary>Wood that became parts, as cut.</summary>
    Used,

    /// <summary>Wood that was put in the bin after cutting.</summary>
    Kept,

    /// <summary>Wood that was cut up and became neither a part nor an offcut: sawdust, trims and scrap.</summary>
    Wasted,

    /// <summary>Time at work, as it was logged.</summary>
    Hours,
}

/// <summary>One line of the book: what one thing came to for one project.</summary>
/// <param name="Day">When, by the shop's clock.</param>
/// <param name="Figure">What it counts towards.</param>
/// <param name="Project">For whom; null where that is not known.</param>
/// <param name="ProjectName">The project's name; empty where it is for none.</param>
/// <param name="Store">Where the wood or the thing was bought; empty where that is not known.</param>
/// <param name="Material">The material's name; empty for supplies.</param>
/// <param name="What">What was bought or cut: <c>R3, Pine 1×3, 8 ft</c>.</param>
public sealed record BookEntry(
    DateOnly Day,
    BookFigure Figure,
    Guid? Project,
    string ProjectName,
    string Store,
    string Material,
    string What
)
{
    /// <summary>The amount of <see cref="BookFigure.Spent"/>; nothing for wood and time.</summary>
    public Money Money { get; init; }

    /// <summary>The face of the wood; nothing for money and time.</summary>
    public Area Area { get; init; }

    /// <summary>The time of <see cref="BookFigure.Hours"/>, in minutes.</summary>
    public int Minutes { get; init; }

    /// <summary>The piece of rack or bin that it is about; null for supplies.</summary>
    public Guid? Piece { get; init; }

    /// <summary>The plan that it was bought or cut for; null where there is none.</summary>
    public Guid? Plan { get; init; }
}

/// <summary>A price that was paid or seen.</summary>
/// <param name="Stock">The board or sheet: <c>Pine 1×3, 8 ft</c>.</param>
/// <param name="Store">Where; may be empty.</param>
/// <param name="Day">When.</param>
/// <param name="Price">Of one.</param>
/// <param name="WasPaid">Whether it was paid; else it stands in the store's price list.</param>
public sealed record PriceSeen(string Stock, string Store, DateOnly Day, Money Price, bool WasPaid);

/// <summary>An offcut in the bin.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Tag">Written on it.</param>
/// <param name="Name">Its material and size.</param>
/// <param name="Since">The day it came into the bin.</param>
/// <param name="Days">Since then.</param>
/// <param name="Area">Its face.</param>
public sealed record OffcutAge(Guid Piece, string Tag, string Name, DateOnly Since, int Days, Area Area);

/// <summary>The shop's book: what the ledger, the purchases, the finished boards and the logged times tell, line by line. What
/// was taken back is not in it.</summary>
/// <param name="Entries">Oldest first. The lines of one purchase, or of one board, add up to it exactly.</param>
/// <param name="Prices">By board or sheet, oldest first.</param>
/// <param name="Offcuts">On hand in the bin, oldest first.</param>
public sealed record ShopBook(
    ImmutableArray<BookEntry> Entries,
    ImmutableArray<PriceSeen> Prices,
    ImmutableArray<OffcutAge> Offcuts
);

/// <summary>Reads the shop's book.</summary>
public interface IBookService
{
    /// <summary>The book as it stands.</summary>
    Task<ShopBook> GetAsync(CancellationToken cancel = default);

    /// <summary>The entries as CSV (RFC 4180) with a heading row: money with a period, areas in square feet or square meters by
    /// the shop's unit, time in whole minutes.</summary>
    Task<string> ExportCsvAsync(CancellationToken cancel = default);
}
