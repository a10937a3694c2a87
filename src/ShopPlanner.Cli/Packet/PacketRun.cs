using System.Text.Json;
using ShopPlanner.Cli.Cut;
using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Verification;
using ShopPlanner.Packets;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Packets;

namespace ShopPlanner.Cli.Packet;

/// <summary>One run of the command: read, plan or work out, print.</summary>
internal static class PacketRun
{
    private const int MostBytes = 64 << 20;
    private const string RequestFormat = "shop-planner/cut-request",
        PlanFormat = "shop-planner/cut-plan";

    /// <summary>The exit status.</summary>
    public static int Run(string from, string to, string? planFrom, PaperSize paper, IReadOnlyList<PacketSection>? sections)
    {
        var target = TextOutput.At(to, "packet", from, "document");
        var document = DocumentInput.Read(from, "document", stream => CappedReading.Take(stream, MostBytes));
        return FormatOf(document) switch
        {
            PlanFormat => throw new Complaint(
                $"'{from}' is a cut plan, which doesn't have its parts' names: give the request, and the plan with --plan"
            ),
            RequestFormat => OfRequest(document, planFrom, (Name(from), paper, sections), target),
            _ when planFrom is not null => throw new Complaint("--plan goes with a cut request, not with a design: leave it out"),
            _ => OfDesign(document, paper, sections, target),
        };
    }

    private static int OfDesign(
        ReadOnlyMemory<byte> document,
        PaperSize paper,
        IReadOnlyList<PacketSection>? sections,
        TextOutput target
    )
    {
        var (design, faults) = DesignJson.Read(document);
        if (design is null)
            return DesignInput.Refused(faults, []);
        var evaluation = DesignEvaluator.Evaluate(design, new Dictionary<string, string>());
        if (evaluation.Piece is not { } piece)
            return DesignInput.Refused(evaluation.Faults, []);
        var work = WorkPlanner.Of(piece, WorkChoices.Usual);
        Print(LoosePacket.Of(piece, work, paper, Today), sections, target);
        return DesignInput.Told(work.Findings.Select(one => (one.Severity, one.Text)));
    }

    private static int OfRequest(
        ReadOnlyMemory<byte> document,
        string? planFrom,
        (string Name, PaperSize Paper, IReadOnlyList<PacketSection>? Sections) asked,
        TextOutput target
    )
    {
        var (request, faults) = CutRequestJson.Read(document);
        if (request is null)
            return Refused(faults);
        var (plan, wrong) = planFrom is null ? (CutRun.Plan(request), []) : Plan(request, planFrom);
        if (plan is null)
            return Refused(wrong);
        Print(LoosePacket.Of(request, plan, asked.Name, asked.Paper, Today), asked.Sections, target);
        return plan.Status == PlanStatus.Incomplete ? ExitStatus.Incomplete : ExitStatus.Done;
    }

    // Nobody is to cut by a plan that does not answer the request.
    private static (CutPlan? Plan, IEnumerable<Fault> Faults) Plan(CutRequest request, string from)
    {
        var (plan, faults) = DocumentInput.Read(from, "plan", CutPlanJson.Read);
        if (plan is null)
            return (null, faults);
        var wrong = PlanVerifier.Check(request, plan);
        return wrong.IsEmpty ? (plan, []) : (null, wrong);
    }

    private static int Refused(IEnumerable<Fault> faults)
    {
        foreach (var fault in faults)
            Complaint.Print(fault.ToString());
        return ExitStatus.Refused;
    }

    private static void Print(PacketModel model, IReadOnlyList<PacketSection>? sections, TextOutput target)
    {
        using var file = new MemoryStream();
        PacketWriter.Write(sections is null ? model : model with { Sections = [.. sections] }, file);
        target.Write(file.ToArray());
    }

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    private static string Name(string from) =>
        from == DocumentInput.StandardInput ? "Cut request" : Path.GetFileNameWithoutExtension(from);

    // What is no JSON is told by the reader of designs.
    private static string FormatOf(ReadOnlyMemory<byte> document)
    {
        try
        {
            using var json = JsonDocument.Parse(document);
            return
                json.RootElement.ValueKind == JsonValueKind.Object
                && json.RootElement.TryGetProperty("format", out var format)
                && format.ValueKind == JsonValueKind.String
                ? format.GetString()!
                : "";
        }
        catch (JsonException)
        {
            return "";
        }
    }
}
