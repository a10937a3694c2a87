namespace ShopPlanner.Web.Features.Welcome;

/// <summary>A card of the first setup.</summary>
/// <param name="Key">In the address.</param>
/// <param name="Name">Its heading.</param>
internal sealed record WelcomeCard(string Key, string Name)
{
    /// <summary>The cards in order. What is asked on one is stored as it is left, so that nothing is lost when the setup is
    /// broken off.</summary>
    public static IReadOnlyList<WelcomeCard> All { get; } =
    [
        new("units", "Units and currency"),
        new("saws", "Saws and car"),
        new("store", "Your store"),
        new("offcuts", "Offcuts you have"),
    ];

    /// <summary>Key of the last page, which asks nothing.</summary>
    public const string Start = "start";

    /// <summary>Returns the key of what comes after so many cards.</summary>
    public static string KeyAt(int cards) => cards < All.Count ? All[cards].Key : Start;

    /// <summary>Returns the card's place from 0; as many as there are for the last page, −1 for a key that is none.</summary>
    public static int PlaceOf(string key) => key == Start ? All.Count : All.ToList().FindIndex(card => card.Key == key);
}
