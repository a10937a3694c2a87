using System.Collections.Immutable;
using System.Text.Json.Serialization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Stock;

/// <summary>A bad place as it is stored.</summary>
/// <param name="X">From the left end, in ticks of 1/320 mm, as all that follow.</param>
/// <param name="Y">From the top edge.</param>
/// <param name="Dx">Along the piece.</param>
/// <param name="Dy">Across it.</param>
internal sealed record StoredPlace(
    [property: JsonPropertyName("x")] long X,
    [property: JsonPropertyName("y")] long Y,
    [property: JsonPropertyName("dx")] long Dx,
    [property: JsonPropertyName("dy")] long Dy
);

/// <summary>The bad places of a line of the ledger. A line of a sound piece has no document at all.</summary>
internal sealed record BadPlacesDocument([property: JsonPropertyName("places")] ImmutableArray<StoredPlace> Places)
{
    private static readonly StoredFormat<BadPlacesDocument> Format = new("shop-planner/bad-places", node => node.AsObject());

    /// <summary>The places of a stored text.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static BadPlaces Read(string text) =>
        text.Length == 0
            ? BadPlaces.None
            : BadPlaces.Of([
                .. Format
                    .Read(text)
                    .Places.Select(place => new BadPlace(
                        Length.FromTicks(place.X),
                        Length.FromTicks(place.Y),
                        Length.FromTicks(place.Dx),
                        Length.FromTicks(place.Dy)
                    )),
            ]);

    /// <summary>The text of these places.</summary>
    public static string Write(BadPlaces places) =>
        places.IsEmpty
            ? ""
            : Format.Write(
                new([.. places.Select(place => new StoredPlace(place.X.Ticks, place.Y.Ticks, place.Dx.Ticks, place.Dy.Ticks))])
            );
}
