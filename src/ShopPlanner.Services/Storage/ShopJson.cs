using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Storage;

/// <summary>Records as text inside the database: whole numbers for lengths and amounts, members in the order they are declared,
/// so that equal records give equal text.</summary>
internal static class ShopJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        Converters = { new LengthTicks(), new MoneyCount(), new JsonStringEnumConverter() },
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    public static T Read<T>(string text) =>
        JsonSerializer.Deserialize<T>(text, Options) ?? throw new InvalidDataException("the database holds an empty document");

    /// <summary>SHA-256 of the text of a record, hexadecimal.</summary>
    public static string Hash<T>(T value) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Write(value))));

    private sealed class LengthTicks : JsonConverter<Length>
    {
        public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Length.FromTicks(reader.GetInt64());

        public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Ticks);
    }

    private sealed class MoneyCount : JsonConverter<Money>
    {
        public override Money Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Money.FromCount(reader.GetInt64());

        public override void Write(Utf8JsonWriter writer, Money value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Count);
    }
}
