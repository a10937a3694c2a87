using System.Text.Json;

namespace ShopPlanner.Benchmarks;

/// <summary>Results for a program to read: one JSON object a line, written as soon as it is known.</summary>
public sealed class JsonLines : IDisposable
{
    private static readonly JsonSerializerOptions CamelCase = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };
    private readonly StreamWriter? file;

    /// <param name="path">Where to write; null to write nothing.</param>
    public JsonLines(string? path) => file = path is null ? null : new StreamWriter(path) { AutoFlush = true };

    /// <summary>Writes one object with its members' names in camel case; null members are written too.</summary>
    public void Write<T>(T line) => file?.WriteLine(JsonSerializer.Serialize(line, CamelCase));

    public void Dispose() => file?.Dispose();
}
