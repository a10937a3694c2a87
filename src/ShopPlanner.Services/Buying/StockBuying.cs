using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Bought;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Buying;

/// <summary>Buys boards and sheets of a plan, and takes them back.</summary>
internal sealed class StockBuying(ShopContext db, PlanRecord record, string device, TimeProvider clock, CancellationToken cancel)
{
    /// <summary>Most pieces of one line that are bought and not taken back.</summary>
    public const int Most = PieceReader.MostAlike;

    private readonly Booking booking = new(db, record, device, clock, cancel);

    /// <summary>Null when it was done.</summary>
    public async Task<Outcome<ShoppingList>?> BuyAsync(PiecesBought asked)
    {
        if (RefuseState() is { } over)
            return Outcome.Faulty<ShoppingList>(over);
        var faults = Check(asked.Places);
        var price = Price(asked.Price, faults);
        if (TextRules.Line(nameof(asked.Store), asked.Store, TextRules.NameCharacters) is { } wrong)
            faults.Add(wrong);
        var line = await FindAsync(asked.Stock, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<ShoppingList>(faults);
        var bought = line!.Pieces.ToDictionary(piece => piece.Purchase.Place);
        var contested = asked.Places.Where(bought.ContainsKey).Where(place => Differs(bought[place], price)).ToList();
        if (contested.Count > 0)
            return Outcome.Conflict<ShoppingList>(contested.Distinct().Select(place => AtAnotherPrice(bought[place])));
        var places = asked.Places.Where(place => !bought.ContainsKey(place)).Distinct().Order().ToList();
        if (line.Pieces.Length + places.Count > Most)
            return Outcome.Faulty<ShoppingList>(TooMany(line.Pieces.Length + places.Count));
        var names = record.Draft.Basis.Stocks[asked.Stock];
        var store = asked.Store.Length > 0 ? TextRules.Tidy(asked.Store) : names.Store ?? "";
        foreach (var place in places)
            await booking.BuyAsync(line.Stock, new Booked(place, price ?? line.Stock.Price, store));
        return null;
    }

    /// <summary>Null when it was done.</summary>
    public async Task<Outcome<ShoppingList>?> BuyRestAsync(ShoppingList list, string store)
    {
        if (RefuseState() is { } over)
            return Outcome.Faulty<ShoppingList>(over);
        var rest = list.Stores.Where(one => one.Name == store).SelectMany(one => one.Rest).ToList();
        if (rest.Count == 0)
            return Outcome.Faulty<ShoppingList>(
                Fault.Of("store", store, "has nothing on this list that is still to be bought and in stock: open the list again")
            );
        foreach (var line in rest)
            if (await BuyAsync(new PiecesBought(line.Stock, line.FreePlaces(line.Left), line.PriceText)) is { } refusal)
                return refusal;
        return null;
    }

    /// <summary>Null when it was done.</summary>
    public async Task<Outcome<ShoppingList>?> ReturnAsync(PiecesReturned asked)
    {
        var faults = Check(asked.Places);
        var line = await FindAsync(asked.Stock, faults);
        if (faults.Count > 0)
            return Outcome.Faulty<ShoppingList>(faults);
        var wanted = line!.Pieces.Where(piece => asked.Places.Contains(piece.Purchase.Place)).ToList();
        var kept = wanted.Select(Hindrance).OfType<Fault>().ToList();
        if (kept.Count > 0)
            return Outcome.Conflict<ShoppingList>(kept);
        foreach (var piece in wanted)
            await booking.ReturnAsync(piece);
        return null;
    }

    private Fault? RefuseState() =>
        record.Stored.State switch
        {
            PlanState.Withdrawn => Fault.Of(
                "plan",
                record.Stored.Name,
                "is canceled or replaced: buy from the list of the plan you cut by, or restore this one"
            ),
            PlanState.Cut => Fault.Of("plan", record.Stored.Name, "is all cut: add what you bought on the Rack & bin page"),
            _ => null,
        };

    private List<Fault> Check(IReadOnlyCollection<int> places)
    {
        var faults = new List<Fault>();
        if (TextRules.Line("device", device, TextRules.NameCharacters) is { } fault)
            faults.Add(fault);
        if (places.Count == 0)
            faults.Add(new Fault("pieces", "", "are missing: say which pieces of the line"));
        if (places.Count > Most)
            faults.Add(TooMany(places.Count));
        foreach (var place in places.Where(place => place is < 1 or > 2 * Most).Take(1))
            faults.Add(new Fault("pieces", Text(place), $"is not the number of a piece: they go from 1 to {2 * Most}"));
        return faults;
    }

    private async Task<BoughtLine?> FindAsync(string stock, List<Fault> faults)
    {
        var line = (await BoughtLines.LoadAsync(db, record, cancel)).FirstOrDefault(one => one.Stock.Id == stock);
        if (line is null)
            faults.Add(Fault.Of("line", stock, "is not on this list: open the list again"));
        return line;
    }

    private static Money? Price(string text, List<Fault> faults)
    {
        if (text.Trim().Length == 0)
            return null;
        var read = MoneyText.Parse(text);
        if (!read.Ok)
            faults.Add(read.Fault.At("price"));
        return read.Ok ? read.Value : null;
    }

    private static bool Differs(BoughtPiece piece, Money? price) => price is { } given && given != piece.Purchase.Price;

    private static Fault AtAnotherPrice(BoughtPiece piece) =>
        Fault.Of(
            $"piece {Text(piece.Purchase.Place)}",
            piece.Purchase.Price.ToString(),
            $"was already paid for it on {piece.Purchase.Device}: undo that purchase first, or correct its price"
        );

    private static Fault? Hindrance(BoughtPiece piece) =>
        piece.State switch
        {
            BoughtState.Cut => new Fault(piece.Now.Piece.Tag, "", "is cut already: reopen it at the bench first"),
            BoughtState.Gone => new Fault(piece.Now.Piece.Tag, "", "was thrown away: undo that on the Rack & bin page first"),
            BoughtState.Promised => Fault.Of(
                piece.Now.Piece.Tag,
                piece.Now.PromisedTo,
                "is going to cut it: cancel that plan first"
            ),
            _ => null,
        };

    private static Fault TooMany(int pieces) =>
        new(
            "pieces",
            Text(pieces),
            $"are more than {Most} of one line: check the number, or add the rest on the Rack & bin page"
        );

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
