using System.Collections.Immutable;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Scheduling.Formats;

/// <summary>
/// The open schedule request format, version 1 (<c>shop-planner/weekends-request</c>): JSON (RFC 8259) in UTF-8. Unknown
/// members
/// are ignored; a later version is refused. Every fault names the member's path and the value that stands there.
/// </summary>
public static class ScheduleRequestJson
{
    /// <summary>Reads a request from a stream, of which no more than 64 MB are taken.</summary>
    /// <inheritdoc cref="Read(ReadOnlyMemory{byte})" path="/returns"/>
    public static (ScheduleRequest? Request, ImmutableArray<Fault> Faults) Read(Stream stream) =>
        Read(DocumentText.ReadAll(stream));

    /// <summary>Reads a request from UTF-8 text.</summary>
    /// <returns>The request and no fault; or null and every fault, of which the first hundred are listed and the rest counted
    /// in
    /// one more.</returns>
    public static (ScheduleRequest? Request, ImmutableArray<Fault> Faults) Read(ReadOnlyMemory<byte> utf8)
    {
        var faults = new FaultList();
        using var document = DocumentText.Open(utf8, faults, "schedule");
        if (document is null)
            return (null, faults.ToImmutable());
        var root = new DocumentValue(document.RootElement, "", faults).Required("write an object {…}").Object();
        if (faults.Count > 0 || DocumentHeader.VersionOf(root, Words.Request, Words.Version) is null)
            return (null, faults.ToImmutable());
        var request = new ScheduleRequestReader(root).Read();
        return faults.Count > 0 ? (null, faults.ToImmutable()) : (request, []);
    }

    /// <summary>Returns the request as an indented document.</summary>
    public static string Write(ScheduleRequest request) => ScheduleRequestWriter.Write(request);
}
