using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>Requests and plans as they are stored: documents of the open cut formats, or the records of programs before
/// those.</summary>
internal static class CutDocuments
{
    /// <summary>The request of a stored text.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static CutRequest ReadRequest(string text) =>
        IsOpen(text)
            ? Sure("shop-planner/cut-request", CutRequestJson.Read(Encoding.UTF8.GetBytes(text)))
            : First(text, FirstRequest.Read);

    /// <summary>The plan of a stored text.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static CutPlan ReadPlan(string text) =>
        IsOpen(text)
            ? Sure("shop-planner/cut-plan", CutPlanJson.Read(Encoding.UTF8.GetBytes(text)))
            : First(text, FirstPlan.Read);

    /// <summary>Whether a text is a document of the open formats.</summary>
    public static bool IsOpen(string text) =>
        text.AsSpan(0, Math.Min(text.Length, 60)).Contains("\"format\"", StringComparison.Ordinal);

    /// <summary>SHA-256 of a request's document, hexadecimal: the same for the same request, whatever the names of the
    /// code.</summary>
    public static string Hash(string document) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(document)));

    private static T Sure<T>(string format, (T? Value, ImmutableArray<Fault> Faults) read)
        where T : class =>
        read.Value ?? throw new StoredDocumentException(format, $"is damaged: {string.Join("; ", read.Faults.Take(3))}");

    private static T First<T>(string text, Func<string, T> read)
    {
        try
        {
            return read(text);
        }
        catch (JsonException problem)
        {
            throw new StoredDocumentException("of a former program", $"is damaged: {problem.Message.TrimEnd('.')}", problem);
        }
    }
}
