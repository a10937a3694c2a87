using System.Collections.Immutable;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>
/// The open cut plan format, version 1 (<c>shop-planner/cut-plan</c>): JSON (RFC 8259) in UTF-8. Unknown members are ignored; a
/// later version is refused. Beside the members of the format a cut may name the <c>parts</c> that it finishes, and says
/// <c>"by": "store"</c> where the store makes it.
/// </summary>
public static class CutPlanJson
{
    /// <summary>Reads a plan from a stream, of which no more than 64 MB are taken.</summary>
    /// <inheritdoc cref="Read(ReadOnlyMemory{byte})" path="/returns"/>
    public static (CutPlan? Plan, ImmutableArray<Fault> Faults) Read(Stream stream) => Read(DocumentText.ReadAll(stream));

    /// <summary>Reads a plan from UTF-8 text.</summary>
    /// <returns>The plan and no fault; or null and every fault, of which the first hundred are listed and the rest counted in
    /// one
    /// more.</returns>
    public static (CutPlan? Plan, ImmutableArray<Fault> Faults) Read(ReadOnlyMemory<byte> utf8)
    {
        var faults = new FaultList();
        using var document = DocumentText.Open(utf8, faults, "cutting job");
        if (document is null)
            return (null, faults.ToImmutable());
        var plan = ReadPlan(new DocumentValue(document.RootElement, "", faults));
        return faults.Count > 0 ? (null, faults.ToImmutable()) : (plan, []);
    }

    /// <summary>The plan as an indented document; lengths are numbers of the plan's unit with up to six decimals.</summary>
    public static string Write(CutPlan plan) => CutPlanWriter.Write(plan);

    private static CutPlan? ReadPlan(DocumentValue value)
    {
        var root = value.Required("write an object {…}").Object();
        if (value.Faults.Count > 0 || Words.VersionOf(root, Words.Plan) is null)
            return null;
        return new CutPlanReader(root, Words.ReadUnit(root)).Read();
    }
}
